#include "ui/scene/base/shown_engine.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace lobewright::ui {

namespace {

double wrapped(double theta, double period) {
    const double reduced = theta - period * std::floor(theta / period);
    return reduced < period ? reduced : 0.0;
}

ports::CycleEvents shifted(ports::CycleEvents events, double by) {
    for (double* angle : {&events.centres.idc, &events.centres.odc, &events.exhaustOpens,
                          &events.inletOpens, &events.inletCloses, &events.exhaustCloses})
        *angle += by;
    return events;
}

} // namespace

void ShownEngine::setGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    solved_ = geometry_ && solution_ && solution_->design == geometry_->design;
}

void ShownEngine::setSolution(const SolutionPointer& solution) {
    solution_ = solution;
    solved_ = solution_ != nullptr;
    if (solution_)
        geometry_ = geometryOf(*solution_);
}

double ShownEngine::angleOfCylinder(int index, double theta) const {
    const auto angles = mechanism::cylinderAngles(design().mechanism);
    const auto k = static_cast<std::size_t>(
        std::clamp(index, 0, std::max(0, static_cast<int>(angles.size()) - 1)));
    return angles.empty() ? wrapped(theta, units::turn)
                          : wrapped(theta - angles[k] + angles.front(), units::turn);
}

ShownEngine::CycleMoment ShownEngine::cycleAt(double theta) const {
    const auto& cycles = timing().cycles();
    const double period = pair().period();
    const double perTurn = pair().cyclesPerTurn();
    CycleMoment best;
    double nearest = 1e300;
    for (std::size_t j = 0; j < cycles.size(); ++j) {
        const double offset = std::remainder(theta - cycles[j].centres.idc, period);
        if (std::abs(offset) < nearest) {
            nearest = std::abs(offset);
            best = {static_cast<int>(j), std::remainder(offset * perTurn, units::turn)};
        }
    }
    return best;
}

ports::CycleEvents ShownEngine::eventsSince(double theta) const {
    const double period = pair().period();
    const ports::CycleEvents* latest = nullptr;
    double since = 0.0, shift = 0.0;
    for (const auto& events : timing().cycles()) {
        const double turns = std::floor((theta - events.centres.idc) / period + 1e-12);
        const double elapsed = theta - events.centres.idc - turns * period;
        if (!latest || elapsed < since) {
            latest = &events;
            since = elapsed;
            shift = turns * period;
        }
    }
    return shifted(*latest, shift);
}

std::optional<double> ShownEngine::channel(std::string_view name, double theta) const {
    if (!solution_ || solution_->theta.size() < 2)
        return std::nullopt;
    const auto* found = solution_->channel(name);
    const Samples& angles = solution_->theta;
    if (!found || found->values.size() != angles.size())
        return std::nullopt;
    const double at = wrapped(theta, units::turn);
    const auto upper = std::upper_bound(angles.begin(), angles.end() - 1, at);
    const auto i = std::max<Eigen::Index>(1, upper - angles.begin());
    const double width = angles[i] - angles[i - 1];
    const double share = width > 0.0 ? std::clamp((at - angles[i - 1]) / width, 0.0, 1.0) : 0.0;
    const double value = (1.0 - share) * found->values[i - 1] + share * found->values[i];
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::optional<double> ShownEngine::channelPeak(std::string_view name) const {
    const auto* found = solution_ ? solution_->channel(name) : nullptr;
    if (!found)
        return std::nullopt;
    double peak = 0.0;
    for (const double value : found->values) {
        if (std::isfinite(value))
            peak = std::max(peak, std::abs(value));
    }
    return peak;
}

std::optional<double> ShownEngine::pressureOutside(End end) const {
    if (!solution_ || !solution_->gas)
        return std::nullopt;
    const auto& gas = *solution_->gas;
    return (end == End::inlet ? gas.plenumPressure
            : gas.turbine     ? gas.turbine->pressure
                              : solution_->design.gas.exhaustPressure) /
           units::bar;
}

std::optional<bool> ShownEngine::flowsIn(End end, double theta) const {
    const auto outside = pressureOutside(end);
    const auto inside = channel("pressure_bar", theta);
    return outside && inside ? std::optional(*outside > *inside) : std::nullopt;
}

std::optional<double> ShownEngine::sinceBurnStart(double theta) const {
    if (!solution_ || solution_->design.running.motored || !solution_->gas ||
        solution_->gas->cycles.empty())
        return std::nullopt;
    const auto moment = cycleAt(theta);
    const auto& cycles = solution_->gas->cycles;
    const auto j = std::min(static_cast<std::size_t>(moment.cycle), cycles.size() - 1);
    return moment.angle - cycles[j].burnStart;
}

std::optional<GasMoment> ShownEngine::gasAt(double theta) const {
    const auto pressure = channel("pressure_bar", theta);
    const auto temperature = channel("temperature_K", theta);
    const auto air = channel("air_mass_mg", theta);
    const auto products = channel("products_mass_mg", theta);
    if (!pressure || !temperature || !air || !products)
        return std::nullopt;
    GasMoment gas{*pressure, *temperature, 0.0, false};
    if (*air + *products > 0.0)
        gas.burntShare = std::clamp(*products / (*air + *products), 0.0, 1.0);
    if (const auto since = sinceBurnStart(theta))
        gas.burning = *since >= 0.0 && *since <= solution_->design.gas.burn.duration;
    return gas;
}

} // namespace lobewright::ui
