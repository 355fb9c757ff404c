#include "core/balance/remedy.h"

#include "core/samples.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace lobewright::balance {

namespace {

constexpr Eigen::Index samplesPerPeriod = 180;

/// Accelerations of one cylinder over a period.
class Accelerations {
  public:
    explicit Accelerations(const mechanism::OpposedPair& pair)
        : pair_(pair), step_(pair.period() / samplesPerPeriod),
          theta_(Samples::LinSpaced(samplesPerPeriod, 0.0, step_ * (samplesPerPeriod - 1))),
          inlet_(pair.lift(End::inlet, theta_).y2), exhaust_(exhaust(0.0)),
          mass_(pair.mechanism().pistonMass) {}

    /// y'' of the exhaust piston with its track turned further forward [rad].
    Samples exhaust(double further) const { return pair_.lift(End::exhaust, theta_ + further).y2; }
    const Samples& exhaust() const { return exhaust_; }

    double residual(double exhaustMass, const Samples& exhaust) const {
        const double alone = mass_.inlet * std::sqrt(inlet_.square().sum());
        return std::sqrt((exhaustMass * exhaust - mass_.inlet * inlet_).square().sum()) / alone;
    }
    /// Least-squares mass against the inlet piston, not negative.
    double bestMass(const Samples& exhaust) const {
        return std::max(mass_.inlet * (inlet_ * exhaust).sum() / exhaust.square().sum(), 0.0);
    }
    /// Further turn that makes the accelerations most alike.
    double bestTurn() const;

  private:
    double likeness(double further) const { return (inlet_ * exhaust(further)).sum(); }

    const mechanism::OpposedPair& pair_;
    double step_;
    Samples theta_, inlet_, exhaust_;
    PerEnd<double> mass_;
};

double Accelerations::bestTurn() const {
    // Circular correlation on the samples, then between the neighbours of the best.
    Samples twice(2 * samplesPerPeriod);
    twice << exhaust_, exhaust_;
    Samples likenesses(samplesPerPeriod);
    for (Eigen::Index shift = 0; shift < samplesPerPeriod; ++shift) {
        likenesses(shift) = (inlet_ * twice.segment(shift, samplesPerPeriod)).sum();
    }
    const double best = likenesses.maxCoeff();
    const double equal = 1e-9 * std::abs(best);
    double nearest = pair_.period();
    for (Eigen::Index shift = 0; shift < samplesPerPeriod; ++shift) {
        const Eigen::Index turn = shift > samplesPerPeriod / 2 ? shift - samplesPerPeriod : shift;
        const double angle = step_ * static_cast<double>(turn);
        if (likenesses(shift) >= best - equal && std::abs(angle) < std::abs(nearest)) {
            nearest = angle;
        }
    }
    constexpr int digits = 26;
    return boost::math::tools::brent_find_minima(
               [this](double further) { return -likeness(further); }, nearest - step_,
               nearest + step_, digits)
        .first;
}

} // namespace

Remedy remedy(const mechanism::OpposedPair& pair) {
    if (pair.mechanism().isOneSided()) {
        return {}; // no piston to set against the other
    }
    const Accelerations accelerations(pair);
    const mechanism::Mechanism& mechanism = pair.mechanism();
    const double mass = mechanism.pistonMass.exhaust;

    Remedy result;
    result.residual = accelerations.residual(mass, accelerations.exhaust());
    result.exhaustMass = accelerations.bestMass(accelerations.exhaust());
    result.massResidual = accelerations.residual(result.exhaustMass, accelerations.exhaust());
    const double present = mechanism.exhaustLead + mechanism.adjuster.setting;
    double further = -present; // the best there is, if the tracks are alike
    Samples turned = accelerations.exhaust(further);
    if (accelerations.residual(accelerations.bestMass(turned), turned) > cancelled) {
        further = accelerations.bestTurn();
        turned = accelerations.exhaust(further);
    }
    result.exhaustLead = present + further;
    result.leadResidual = accelerations.residual(mass, turned);
    result.bothResidual = accelerations.residual(accelerations.bestMass(turned), turned);
    return result;
}

} // namespace lobewright::balance
