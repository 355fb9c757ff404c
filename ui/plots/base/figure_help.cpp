#include "ui/plots/base/figure_help.h"

#include "core/solution/workings/working.h"
#include "ui/base/core_text.h"

#include <QCoreApplication>
#include <QStringList>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FigureHelp)
};

} // namespace

QString figureHelp(const solution::Solution& solution, std::string_view figure) {
    const auto* found = solution.figure(figure);
    if (!found)
        return {};
    QStringList lines{coreText(found->note.empty() ? found->label : found->note)};
    if (const auto how = solution::working(solution, figure)) {
        lines << QString::fromStdString(how->symbol + " = " + how->formula)
              << Words::tr("Source: %1").arg(coreText(how->source));
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace lobewright::ui
