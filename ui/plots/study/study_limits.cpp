#include "ui/plots/study/study_limits.h"

#include "core/units.h"
#include "ui/base/core_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(StudyLimits)
};

} // namespace

QString beyondLimits(const solution::Solution& solution, const std::vector<std::string>& names,
                     const study::Point& point, double speedShare) {
    const auto value = [&](const std::string& name) -> std::optional<double> {
        const auto place = std::ranges::find(names, name);
        const auto index = static_cast<std::size_t>(place - names.begin());
        return index < point.values.size() ? point.values[index] : std::nullopt;
    };
    const auto figure = [&](const std::string& name) -> std::optional<double> {
        const auto* found = solution.figure(name);
        return found ? found->value : std::nullopt;
    };
    const design::Design& design = solution.design;
    const design::Limits& limits = design.limits;
    if (!point.failure.empty())
        return Words::tr("not solved: %1").arg(coreText(point.failure));
    if (value("keeps_contact") == 0.0)
        return Words::tr("a roller lifts off");
    if (value("peak_pressure_bar").value_or(0.0) * units::bar > limits.peakPressure.error)
        return Words::tr("peak pressure above its limit");
    if (value("knock_integral").value_or(0.0) > limits.knockIntegral.error)
        return Words::tr("knock");
    for (const End end : bothEnds) {
        const std::string side = name(end);
        const auto film = value("lowest_film_ratio_" + side);
        if (film && *film < limits.filmRatio.error)
            return Words::tr("oil film below its limit");
        const auto stress = value("peak_contact_pressure_" + side + "_MPa");
        const auto safety = figure("contact_safety_" + side);
        const auto stressNow = figure("peak_contact_pressure_" + side + "_MPa");
        if (stress && safety && stressNow && *stress > 0.0 &&
            *safety * *stressNow / *stress < limits.contactSafety.error)
            return Words::tr("contact stress above its limit");
        const auto speed = figure("mean_piston_speed_" + side + "_m_per_s");
        if (speed && *speed * speedShare > limits.meanPistonSpeed.error)
            return Words::tr("mean piston speed above its limit");
    }
    return {};
}

} // namespace lobewright::ui
