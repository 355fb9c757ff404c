#include "core/reference/crank_loads.h"

#include "core/loads/piston.h"
#include "core/loads/quadrature.h"
#include "core/loads/torque.h"
#include "core/mechanism/extremes.h"
#include "core/units.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::study {

namespace {

constexpr int samplesPerTurn = 720;

Samples pressureOf(const CrankEngine& engine, const Samples& theta) {
    return engine.trace ? engine.trace->sample(theta).pressure
                        : Samples::Constant(theta.size(), engine.underPistonPressure);
}

std::vector<CrankPistonLoads> cylinder(const CrankEngine& engine, const Samples& theta,
                                       const Samples& pressure) {
    std::vector<CrankPistonLoads> all;
    for (const CrankPiston& piston : engine.pistons) {
        all.push_back(crankPistonLoads(piston, engine.friction, engine.omega,
                                       engine.underPistonPressure, theta, pressure));
    }
    return all;
}

/// Axial force of one cylinder's pistons on the engine at theta [N].
Samples cylinderShaking(const CrankEngine& engine, const Samples& theta, bool opposed) {
    Samples sum = Samples::Zero(theta.size());
    double sign = -1.0;
    for (const CrankPiston& piston : engine.pistons) {
        sum += sign * piston.mass * engine.omega * engine.omega *
               piston.crank.at(theta + piston.phase).y2;
        sign = opposed ? -sign : sign;
    }
    return sum;
}

void addMeans(CrankEngineLoads& loads, const CrankEngine& engine) {
    std::vector<double> cuts = engine.breaks;
    for (const CrankPiston& piston : engine.pistons) {
        // Dead centres, where friction changes sign.
        for (double centre = -piston.phase; centre < engine.period - piston.phase;
             centre += units::pi) {
            cuts.push_back(centre);
        }
    }
    const loads::Quadrature nodes =
        loads::periodQuadrature(engine.period, cuts, 6.0 * units::degree);
    const Samples pressure = pressureOf(engine, nodes.theta);
    const double factor = static_cast<double>(engine.cylinderAngles.size()) / engine.period;
    const auto mean = [&](const Samples& f) { return factor * (nodes.weight * f).sum(); };
    const auto pistons = cylinder(engine, nodes.theta, pressure);
    for (std::size_t i = 0; i < pistons.size(); ++i) {
        const double bore = engine.pistons[i].bore;
        const double area = units::pi * bore * bore / 4.0;
        const CrankPistonLoads& one = pistons[i];
        loads.meanTorque += mean(one.torque);
        loads.gasTorque -= area * mean(pressure * one.lift.y1);
        loads.inertiaTorque -= mean(one.inertiaForce * one.lift.y1);
        loads.ringLoss += mean(one.ringLoss);
        loads.guideLoss += mean(one.guideLoss);
    }
}

void addFirings(CrankEngineLoads& loads, const CrankEngine& engine) {
    std::vector<double> angles;
    for (const double psi : engine.cylinderAngles) {
        for (const double firing : engine.firings) {
            angles.push_back(mechanism::wrapped(firing + psi, engine.period));
        }
    }
    std::sort(angles.begin(), angles.end());
    constexpr double sameAngle = 1e-9;
    loads.shortestInterval = engine.period;
    int together = 1;
    for (std::size_t i = 0; i < angles.size(); ++i) {
        const double next = i + 1 < angles.size() ? angles[i + 1] : angles.front() + engine.period;
        const double interval = next - angles[i];
        together = interval < sameAngle ? together + 1 : 1;
        loads.together = std::max(loads.together, together);
        if (interval >= sameAngle) {
            loads.shortestInterval = std::min(loads.shortestInterval, interval);
            loads.longestInterval = std::max(loads.longestInterval, interval);
        }
    }
}

void addExtremes(CrankEngineLoads& loads, const CrankEngine& engine, bool opposed) {
    for (const CrankPistonLoads& piston : loads.pistons) {
        const auto largest = [](double& so, const Samples& values) {
            so = std::max(so, values.abs().maxCoeff());
        };
        largest(loads.highestSideForce, piston.sideForce);
        largest(loads.highestLeverArm, piston.lift.y1);
        largest(loads.highestSpeed, engine.omega * piston.lift.y1);
        largest(loads.highestAcceleration, engine.omega * engine.omega * piston.lift.y2);
    }
    Samples shaking = Samples::Zero(loads.theta.size());
    for (const double psi : engine.cylinderAngles) {
        shaking += cylinderShaking(engine, loads.theta - psi, opposed);
    }
    loads.shakingForce = shaking.abs().maxCoeff();
    loads.highestTorque = loads.totalTorque.maxCoeff();
    loads.lowestTorque = loads.totalTorque.minCoeff();
    loads.ripple = loads::torqueRipple(loads.highestTorque, loads.lowestTorque, loads.meanTorque);
}

} // namespace

bool jams(const SliderCrank& crank, const loads::Friction& friction) {
    const double sine = crank.rodRatio();
    return std::sqrt(1.0 - sine * sine) <= friction.guide * sine;
}

CrankPistonLoads crankPistonLoads(const CrankPiston& piston, const loads::Friction* friction,
                                  double omega, double underPistonPressure, const Samples& theta,
                                  const Samples& pressure) {
    const Samples tau = theta + piston.phase;
    const Samples gauge = pressure - underPistonPressure;
    const double area = units::pi * piston.bore * piston.bore / 4.0;
    CrankPistonLoads loads;
    loads.lift = piston.crank.at(tau);
    const Samples sign = loads::motionSign(loads.lift.y1, loads.lift.y2, piston.crank.stroke());
    loads.inertiaForce = piston.mass * omega * omega * loads.lift.y2;
    loads.ringFriction = friction
                             ? Samples(sign * loads::ringFriction(*friction, piston.bore,
                                                                  omega * loads.lift.y1, gauge))
                             : Samples::Zero(theta.size());
    const Samples demand = loads.inertiaForce + area * gauge + loads.ringFriction;
    const Samples sine = piston.crank.rodSine(tau);
    const Samples cosine = (1.0 - sine.square()).sqrt();
    const double guide = friction ? friction->guide : 0.0;
    assert(!friction || !jams(piston.crank, *friction));
    const Samples bracket = cosine - guide * sine.abs() * demand.sign() * sign;
    loads.rodForce = demand / bracket;
    loads.sideForce = loads.rodForce * sine;
    loads.torque = -loads.rodForce * cosine * loads.lift.y1;
    loads.ringLoss = (loads.ringFriction * loads.lift.y1).abs();
    loads.guideLoss = guide * (loads.sideForce * loads.lift.y1).abs();
    return loads;
}

CrankEngineLoads crankEngineLoads(const CrankEngine& engine, bool opposed) {
    const auto count =
        static_cast<Eigen::Index>(std::lround(samplesPerTurn * engine.period / units::turn));
    CrankEngineLoads loads;
    loads.theta = Samples::LinSpaced(count + 1, 0.0, engine.period).head(count);
    loads.pressure = pressureOf(engine, loads.theta);
    loads.pistons = cylinder(engine, loads.theta, loads.pressure);
    loads.totalTorque = Samples::Zero(count);
    for (const double psi : engine.cylinderAngles) {
        const Samples theta = loads.theta - psi;
        const Samples pressure = pressureOf(engine, theta);
        Samples torque = Samples::Zero(count);
        for (const CrankPistonLoads& piston : cylinder(engine, theta, pressure)) {
            torque += piston.torque;
        }
        loads.totalTorque += torque;
    }
    loads.cylinderTorque = Samples::Zero(count);
    for (const CrankPistonLoads& piston : loads.pistons) {
        loads.cylinderTorque += piston.torque;
    }
    addMeans(loads, engine);
    addFirings(loads, engine);
    addExtremes(loads, engine, opposed);
    return loads;
}

} // namespace lobewright::study
