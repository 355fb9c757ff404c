#pragma once

#include "core/loads/loads.h"
#include "core/loads/net_pressure.h"

#include <vector>

namespace lobewright::loads {

/// Everything that is asked again and again during one solve.
struct Engine {
    const Inputs& inputs;
    PerEnd<PistonSetup> setup;
    std::vector<double> psi, lags;

    explicit Engine(const Inputs& given)
        : inputs(given), psi(mechanism::cylinderAngles(given.pair.mechanism())),
          lags(mechanism::cylinderLags(given.pair.mechanism())) {
        for (const End end : given.pair.pistons()) {
            setup[end] = pistonSetup(given.pair, end, given.friction, given.omega,
                                     given.underPistonPressure);
        }
    }

    /// Whether a piston runs there, not a head stands.
    bool isPiston(End end) const { return inputs.pair.uncovers(end) == end; }
    Samples pressure(const Samples& theta, int cylinder) const {
        return inputs.trace ? inputs.trace->sample(theta, cylinder).pressure
                            : Samples::Constant(theta.size(), inputs.underPistonPressure);
    }
    /// What acts on the piston of this end, from the chamber pressure at these angles.
    Samples onPiston(End end, const Samples& pressures, const Samples& theta, int cylinder) const {
        return inputs.trace ? net(end, *inputs.trace).onPiston(pressures, theta, cylinder)
                            : pressures;
    }
    double onPiston(End end, double theta) const {
        return inputs.trace ? net(end, *inputs.trace).pressure(theta) : inputs.underPistonPressure;
    }
    NetPressure net(End end, const gas::GasTrace& trace) const {
        return {trace, inputs.pumpArea[end], inputs.underPistonPressure};
    }
    /// Without pressure angles.
    PistonLoads piston(End end, const PistonMotion& motion, const Samples& pressures) const {
        return isPiston(end) ? pistonLoads(setup[end], motion, pressures)
                             : standingLoads(pressures.size());
    }
    PistonLoads piston(End end, const Samples& theta, int cylinder,
                       const Samples& pressures) const {
        const double behind = lags[static_cast<std::size_t>(cylinder)];
        return isPiston(end)
                   ? pistonLoads(setup[end], inputs.pair.lift(end, theta - behind), pressures)
                   : standingLoads(pressures.size());
    }
    double demand(End end, double theta) const {
        return axialDemand(setup[end], inputs.pair.lift(end, theta), onPiston(end, theta));
    }
};

/// Fills what the samples tell of the whole engine; gives the pressure of cylinder 1 over one even
/// period.
Samples addSampled(Loads& loads, const Engine& engine, const Kinematics& kinematics);

/// `lift` at the even samples of one period.
Kinematics::Period motionOverPeriod(const mechanism::OpposedPair& pair, const Samples& even,
                                    const PerEnd<motion::LiftSamples>& lift);

} // namespace lobewright::loads
