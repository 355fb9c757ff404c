#include "core/balance/speed_fluctuation.h"

#include "core/units.h"

#include <cassert>

namespace lobewright::balance {

EnergyFluctuation energyFluctuation(const Samples& evenTorque) {
    const Eigen::Index count = evenTorque.size();
    assert(count >= 4);
    const double step = units::turn / static_cast<double>(count);
    EnergyFluctuation result;
    result.meanTorque = evenTorque.mean();
    const auto excess = [&](Eigen::Index i) {
        return evenTorque((i + count) % count) - result.meanTorque;
    };
    double energy = 0.0;
    double most = 0.0;
    double least = 0.0;
    const auto note = [&](double value, double angle) {
        if (value > most) {
            most = value;
            result.fastestAngle = angle;
        }
        if (value < least) {
            least = value;
            result.slowestAngle = angle;
        }
    };
    for (Eigen::Index i = 0; i < count; ++i) {
        const double here = excess(i);
        const double next = excess(i + 1);
        const double angle = step * static_cast<double>(i);
        note(energy, angle);
        if (here * next < 0.0) { // the energy turns where the excess passes zero
            const double share = here / (here - next);
            note(energy + 0.5 * here * share * step, angle + share * step);
        }
        energy += step / 24.0 * (13.0 * (here + next) - excess(i - 1) - excess(i + 2));
    }
    result.energy = most - least;
    return result;
}

double fluctuation(double energy, double inertia, double omega) {
    return energy / (inertia * omega * omega);
}

double inertiaFor(double energy, double fluctuation, double omega) {
    return energy / (fluctuation * omega * omega);
}

SpeedRange speedRange(double energy, double inertia, double omega) {
    const double half = 0.5 * fluctuation(energy, inertia, omega);
    return {omega * (1.0 - half), omega * (1.0 + half)};
}

} // namespace lobewright::balance
