#include "core/loads/contact_speeds.h"

#include "core/units.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::loads {

namespace {

/// Accelerations nearer to zero than this share of the largest count as none.
constexpr double noAcceleration = 1e-9;
/// Forces of gas and rings nearer to zero than this share of the largest count as none.
constexpr double noForce = 1e-12;
constexpr double never = std::numeric_limits<double>::infinity();

motion::Lift liftAt(const motion::LiftSamples& lift, Eigen::Index i) {
    return {lift.y(i), lift.y1(i), lift.y2(i), lift.y3(i)};
}

/// Looks for the angle where the force of gas and rings, relative to the inertia force at ω = 1, is
/// lowest among those of one sign of acceleration.
class Search {
  public:
    Search(const mechanism::OpposedPair& pair, End end, const PistonSetup& setup,
           const Samples& theta, const PistonMotion& motion, const Samples& pressure,
           const gas::GasTrace* trace)
        : pair_(pair), end_(end), setup_(setup), theta_(theta), lift_(motion.lift),
          pressure_(pressure), trace_(trace),
          negligible_(noAcceleration * lift_.y2.abs().maxCoeff()) {
        const Samples gauge = pressure - setup.underPistonPressure;
        holding_ = pair.pistonArea() * gauge +
                   ringFriction(setup.friction, setup.bore, setup.omega * lift_.y1, gauge) *
                       motion.direction;
    }

    /// Where gas and rings pull the piston off its track without inertia to press it on; absent
    /// where they never do.
    std::optional<SpeedBound> pulledWithoutInertia() const {
        Eigen::Index at = 0;
        const double lowest = (lift_.y2 <= negligible_).select(holding_, never).minCoeff(&at);
        if (lowest >= -noForce * holding_.abs().maxCoeff()) {
            return std::nullopt;
        }
        return bound(0.0, theta_(at), liftAt(lift_, at), pressure_(at));
    }

    /// Lowest (gas + rings)/(m·|y''|) as ω, of angles with sign·y'' > 0. Absent where there are
    /// none. `squareToOmega`: ω from that quotient.
    template <class SquareToOmega>
    std::optional<SpeedBound> lowest(double sign, SquareToOmega&& squareToOmega) const {
        Eigen::Index at = 0;
        double best = never;
        for (Eigen::Index i = 0; i < theta_.size(); ++i) {
            const double acceleration = sign * lift_.y2(i);
            if (acceleration > negligible_ && holding_(i) < best * setup_.mass * acceleration) {
                best = holding_(i) / (setup_.mass * acceleration);
                at = i;
            }
        }
        if (!std::isfinite(best)) {
            return std::nullopt;
        }
        const double step = units::degree;
        constexpr int digits = 30; // a minimum cannot be placed better in double precision
        const auto [angle, refined] = boost::math::tools::brent_find_minima(
            [&](double theta) { return quotient(sign, theta); }, theta_(at) - step,
            theta_(at) + step, digits);
        if (refined < best) {
            return bound(squareToOmega(refined), angle, pair_.lift(end_, angle), pressureAt(angle));
        }
        return bound(squareToOmega(best), theta_(at), liftAt(lift_, at), pressure_(at));
    }

  private:
    double pressureAt(double theta) const {
        return trace_ ? trace_->pressure(theta, 0) : setup_.underPistonPressure;
    }
    double quotient(double sign, double theta) const {
        const motion::Lift lift = pair_.lift(end_, theta);
        if (sign * lift.y2 <= negligible_) {
            return std::numeric_limits<double>::max();
        }
        const AxialShares shares = axialShares(setup_, lift, pressureAt(theta));
        return (shares.gas + shares.ring) / (setup_.mass * sign * lift.y2);
    }
    SpeedBound bound(double omega, double theta, const motion::Lift& lift, double pressure) const {
        return {omega, theta, axialShares(setup_, lift, pressure)};
    }

    const mechanism::OpposedPair& pair_;
    End end_;
    const PistonSetup& setup_;
    const Samples& theta_;
    const motion::LiftSamples& lift_;
    const Samples& pressure_;
    const gas::GasTrace* trace_;
    double negligible_;
    Samples holding_;
};

} // namespace

ContactSpeeds contactSpeeds(const mechanism::OpposedPair& pair, End end, const PistonSetup& setup,
                            const Samples& theta, const PistonMotion& motion,
                            const Samples& pressure, const gas::GasTrace* trace) {
    const Search search(pair, end, setup, theta, motion, pressure, trace);
    ContactSpeeds result;
    result.high =
        search.lowest(-1.0, [](double square) { return std::sqrt(std::max(square, 0.0)); });
    if (const auto pulled = search.pulledWithoutInertia()) {
        result.high = pulled;
        return result;
    }
    result.low =
        search.lowest(1.0, [](double square) { return std::sqrt(std::max(-square, 0.0)); });
    if (!result.low) {
        result.low = SpeedBound{};
    }
    return result;
}

} // namespace lobewright::loads
