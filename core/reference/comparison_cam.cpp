#include "core/reference/compared_values.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

/// The design itself as a row of the comparison, from its solution.
namespace lobewright::study {

namespace {

double valueOf(const solution::Solution& solution, std::string_view name) {
    const solution::Figure* figure = solution.figure(name);
    return figure != nullptr && figure->value ? *figure->value : 0.0;
}

std::optional<double> optionalOf(const solution::Solution& solution, std::string_view name) {
    const solution::Figure* figure = solution.figure(name);
    return figure != nullptr ? figure->value : std::nullopt;
}

double larger(const solution::Solution& solution, const char* id, const Unit& unit) {
    const auto of = [&](End end) {
        return valueOf(solution, solution::QuantityId{id, &unit, end}.written());
    };
    return std::max(of(End::inlet), of(End::exhaust));
}

/// A channel of one turn read at other angles, linear between its samples.
Samples channelAt(const solution::Solution& solution, std::string_view name, const Samples& theta) {
    const solution::Channel* channel = solution.channel(name);
    Samples result = Samples::Zero(theta.size());
    if (channel == nullptr || channel->values.size() < 2) {
        return result;
    }
    const Samples& at = solution.theta;
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double wrapped = theta(i) - units::turn * std::floor(theta(i) / units::turn);
        const auto after = std::upper_bound(at.data(), at.data() + at.size(), wrapped);
        const Eigen::Index j = std::clamp<Eigen::Index>(after - at.data(), 1, at.size() - 1);
        const double share = std::clamp((wrapped - at(j - 1)) / (at(j) - at(j - 1)), 0.0, 1.0);
        result(i) = (1.0 - share) * channel->values(j - 1) + share * channel->values(j);
    }
    return result;
}

void addMotion(ComparedValues& values, const solution::Solution& solution) {
    const double omega = values.crankSpeed;
    for (const End end : solution.pair.pistons()) {
        const motion::LiftSamples lift = solution.pair.lift(end, solution.theta);
        const double slope = lift.y1.abs().maxCoeff();
        values.leverArm = std::max(values.leverArm, slope);
        values.peakPistonSpeed = std::max(values.peakPistonSpeed, omega * slope);
        values.peakAcceleration =
            std::max(values.peakAcceleration, omega * omega * lift.y2.abs().maxCoeff());
    }
}

void addFriction(ComparedValues& values, const solution::Solution& solution) {
    const auto pressure = [&](std::string_view name) {
        return valueOf(solution, name) * units::bar;
    };
    values.imep = pressure("imep_bar");
    values.fmepRing = pressure("fmep_ring_bar");
    values.fmepGuide = pressure("fmep_guide_bar");
    values.fmepDrive = pressure("fmep_roller_bar") + pressure("fmep_slip_bar") +
                       pressure("fmep_shaft_bearing_bar");
    values.fmepSupply = pressure("fmep_supply_bar");
    values.fmepAuxiliary = pressure("fmep_auxiliary_bar");
}

ComparedCurves curvesOf(const solution::Solution& solution, double omega) {
    const mechanism::OpposedPair& pair = solution.pair;
    ComparedCurves curves;
    curves.strokeAngle = strokeAngles();
    const Samples theta =
        pair.deadCentres().front().idc + curves.strokeAngle / pair.cyclesPerTurn();
    const motion::LiftSamples lift = pair.lift(End::inlet, theta);
    curves.lift = lift.y;
    curves.speed = omega * lift.y1;
    curves.acceleration = omega * omega * lift.y2;
    curves.leverArm = -lift.y1;
    curves.pressure = solution.gas->trace->sample(theta).pressure;
    curves.volume = pair.volume(theta);
    curves.turnAngle = twoTurns();
    curves.totalTorque = channelAt(solution, "torque_total_Nm", curves.turnAngle);
    return curves;
}

} // namespace

Result<ComparedResult> camTrackEngine(const solution::Solution& solution) {
    if (!solution.gas) {
        return Problem{"", LW_TEXT("the gas cycle of the design could not be solved")};
    }
    const mechanism::OpposedPair& pair = solution.pair;
    const double omega = solution.design.running.speed;
    ComparedValues values;
    values.outputSpeed = values.crankSpeed = omega;
    values.cyclesPerTurn = pair.cyclesPerTurn();
    values.cylinders = pair.mechanism().cylinders;
    values.sweptVolume = pair.sweptVolume();
    values.bore = pair.mechanism().bore;
    values.stroke = pair.curve(End::inlet).stroke();
    values.compressionRatio = valueOf(solution, "compression_ratio");
    values.trappedCompressionRatio = valueOf(solution, "trapped_compression_ratio");
    values.surfaceToVolume = valueOf(solution, "surface_to_volume_per_mm") / units::millimetre;
    values.meanPistonSpeed = larger(solution, "mean_piston_speed", in::metrePerSecond);
    addMotion(values, solution);
    addFriction(values, solution);
    values.supplyPower = solution.gas->supplyPower;
    values.supplyPaid = solution.gas->supplyPaid;
    values.cycles = solution.gas->cycles;
    if (!solution.design.running.motored) {
        values.burnStart = values.cycles.front().burnStart;
    }
    values.peakToPeakTorque = valueOf(solution, "peak_to_peak_torque_Nm");
    values.ripple = optionalOf(solution, "torque_ripple");
    values.shortestInterval = valueOf(solution, "shortest_firing_interval_deg") * units::degree;
    values.longestInterval = valueOf(solution, "longest_firing_interval_deg") * units::degree;
    values.together = static_cast<int>(valueOf(solution, "cylinders_firing_together"));
    values.sideForce = larger(solution, "highest_side_force", in::N);
    values.shakingForce = valueOf(solution, "shaking_force_peak_N");
    values.rockingMoment = optionalOf(solution, "rocking_moment_peak_Nm");
    return ComparedResult{values, curvesOf(solution, omega)};
}

} // namespace lobewright::study
