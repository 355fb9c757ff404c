#include "ui/plots/study/phase_plot.h"

#include "core/units.h"
#include "ui/base/menus.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {
constexpr int pointCount = 31;
constexpr double rangeStep = 5.0; // ends of the range that follows the design [shaft °]
const QString adjusterMark = QStringLiteral("adjuster|");
} // namespace

PhasePlot::PhasePlot(QWidget* parent)
    : StudyPlot(tr("Results against phase"),
                {QStringLiteral("compression_ratio"), QStringLiteral("trapped_compression_ratio"),
                 QStringLiteral("brake_torque_Nm")},
                parent) {}

void PhasePlot::setParameter(study::PhaseParameter parameter) {
    parameter_ = parameter;
    setRange({});
}

StudyRunner::Work PhasePlot::work(const design::Design& design,
                                  std::pair<double, double> range) const {
    return [design, range, parameter = parameter_](Monitor& monitor, const study::PointSink& sink) {
        return study::phaseMap(design, parameter, range.first, range.second, pointCount, {},
                               monitor, sink);
    };
}

std::vector<std::string> PhasePlot::everyFigure(const design::Design&) const {
    return study::phaseMapFigures();
}

QString PhasePlot::axisLabel() const {
    return parameter_ == study::PhaseParameter::exhaustLead ? tr("exhaust lead as built, shaft °")
                                                            : tr("adjuster setting, shaft °");
}

double PhasePlot::parameterOf(const design::Design& design) const {
    const auto& mechanism = design.mechanism;
    return (parameter_ == study::PhaseParameter::exhaustLead ? mechanism.exhaustLead
                                                             : mechanism.adjuster.setting) /
           units::degree;
}

int PhasePlot::pointsWanted() const {
    return pointCount;
}

std::pair<double, double> PhasePlot::ownRange(const design::Design& design) const {
    // Fixed ends as long as the setting lies between them: the curve then stands still in a drag.
    const double at = parameterOf(design);
    const bool lead = parameter_ == study::PhaseParameter::exhaustLead;
    return {std::min(lead ? -5.0 : -10.0, rangeStep * std::floor(at / rangeStep)),
            std::max(lead ? 20.0 : 10.0, rangeStep * std::ceil(at / rangeStep))};
}

void PhasePlot::addChoices(QMenu& menu) {
    const std::pair<study::PhaseParameter, QString> listed[] = {
        {study::PhaseParameter::exhaustLead, tr("Over exhaust &lead")},
        {study::PhaseParameter::adjuster, tr("Over &adjuster setting")}};
    for (const auto& [parameter, text] : listed) {
        addChoice(menu, text, parameter == parameter_, this,
                  [this, parameter = parameter] { setParameter(parameter); });
    }
    menu.addSeparator();
}

QString PhasePlot::state() const {
    return (parameter_ == study::PhaseParameter::adjuster ? adjusterMark : QString()) +
           StudyPlot::state();
}

void PhasePlot::restoreState(const QString& state) {
    const bool adjuster = state.startsWith(adjusterMark);
    parameter_ = adjuster ? study::PhaseParameter::adjuster : study::PhaseParameter::exhaustLead;
    StudyPlot::restoreState(adjuster ? state.mid(adjusterMark.size()) : state);
}

} // namespace lobewright::ui
