#include "ui/libraries.h"

#include "ui/plots/custom_plot.h"

#include <QtGlobal>

namespace lobewright::ui {

std::vector<std::string> libraries() {
    return {std::string("Qt ") + qVersion(), "QCustomPlot " QCUSTOMPLOT_VERSION_STR};
}

} // namespace lobewright::ui
