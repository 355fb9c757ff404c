#include "ui/window/libraries.h"

#include "ui/plots/base/custom_plot.h"

#include <QtGlobal>

namespace lobewright::ui {

std::vector<std::string> libraries() {
    return {std::string("Qt ") + qVersion(), "QCustomPlot " QCUSTOMPLOT_VERSION_STR};
}

} // namespace lobewright::ui
