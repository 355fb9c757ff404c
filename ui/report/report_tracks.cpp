#include "core/track/undercut.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/side_words.h"
#include "ui/base/unit_words.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"
#include "ui/report/report_words.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

using Rows = std::vector<Sheet::Row>;

QString quantity(double metric, const QString& unit) {
    const Unit shown = unitFor(unit);
    return withUnit(figureText(shown.shown(metric)), shown.text);
}

/// The value that stands furthest from zero in a channel, and where.
void addExtreme(Rows& rows, const solution::Solution& solution, const QString& name,
                const solution::QuantityId& channel) {
    const auto* found = solution.channel(channel);
    if (!found)
        return;
    Eigen::Index at = 0;
    const double value = found->values.abs().maxCoeff(&at);
    rows.push_back({name, Words::tr("%1 at %2° shaft")
                              .arg(quantity(value, QString::fromStdString(found->symbolOfUnit())),
                                   figureText(solution.theta[at] / units::degree))});
}

void addUndercutMargin(Rows& rows, const solution::Solution& solution, End end,
                       track::Flank flank) {
    const auto& mechanism = solution.pair.mechanism();
    const auto& curve = solution.pair.curve(end);
    const QString millimetres = QStringLiteral("mm");
    const auto least =
        track::smallestRelativeRadius(curve, mechanism.pitchRadius, mechanism.roller, flank);
    const bool isPush = flank == track::Flank::push;
    rows.push_back({isPush ? Words::tr("Smallest relative radius of curvature over the width")
                           : Words::tr("Smallest relative radius of curvature, pull flank"),
                    quantity(least.value / units::millimetre, millimetres)});
    const auto largest =
        track::largestRollerRadius(curve, mechanism.pitchRadius, mechanism.roller.width, flank);
    rows.push_back(
        {isPush ? Words::tr("Undercut margin of the roller") : Words::tr("The same, pull flank"),
         largest
             ? quantity((largest->value - mechanism.roller.radius) / units::millimetre, millimetres)
             : Words::tr("none reached")});
}

} // namespace

std::vector<Sheet::Row> trackFigures(const solution::Solution& solution) {
    Rows rows;
    for (const End end : solution.pair.pistons()) {
        const auto& curve = solution.pair.curve(end);
        rows.push_back({trackTitle(end, solution.pair.mechanism().isOneSided()), {}, true});
        rows.push_back({Words::tr("Lobes"), QString::number(curve.lobes())});
        rows.push_back({Words::tr("Stroke"),
                        quantity(curve.stroke() / units::millimetre, QStringLiteral("mm"))});
        addExtreme(rows, solution, Words::tr("Largest acceleration"),
                   {"acceleration", &in::metrePerSecond2, end});
        addExtreme(rows, solution, Words::tr("Largest pressure angle"),
                   {"pressure_angle", &in::degrees, end});
        addUndercutMargin(rows, solution, end, track::Flank::push);
        if (solution.pair.mechanism().closedTrack)
            addUndercutMargin(rows, solution, end, track::Flank::pull);
    }
    return rows;
}

} // namespace lobewright::ui
