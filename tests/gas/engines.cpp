#include "tests/gas/engines.h"

#include "core/units.h"

#include <cstdlib>

namespace lobewright::gas {
namespace {

using motion::Law;
using motion::SegmentKind;

motion::Pattern lobePattern(int lobes, double stroke, double rise, double innerDwell, double fall,
                            double outerDwell, Law law) {
    const auto segment = [law](SegmentKind kind, double degrees) {
        return motion::Segment{kind, degrees * units::degree, law, std::nullopt};
    };
    std::vector<motion::Segment> segments{segment(SegmentKind::rise, rise)};
    if (innerDwell > 0.0) {
        segments.push_back(segment(SegmentKind::dwell, innerDwell));
    }
    segments.push_back(segment(SegmentKind::fall, fall));
    if (outerDwell > 0.0) {
        segments.push_back(segment(SegmentKind::dwell, outerDwell));
    }
    return {lobes, motion::SegmentShape{stroke * units::millimetre, segments}};
}

ports::Row row(double edge, double width, int count) {
    return {edge * units::millimetre,  edge * units::millimetre,
            width * units::millimetre, count,
            1.5 * units::millimetre,   0.7};
}

template <class T>
T required(const Result<T>& result) {
    if (!result) {
        std::abort(); // a fixture that cannot be built is a programming error
    }
    return *result;
}

mechanism::Mechanism mechanismOf(double bore, double clearance, double leadDegrees) {
    mechanism::Mechanism mechanism;
    mechanism.pitchRadius = 95.0 * units::millimetre;
    mechanism.bore = bore * units::millimetre;
    mechanism.clearance = clearance * units::millimetre;
    mechanism.exhaustLead = leadDegrees * units::degree;
    mechanism.roller.radius = 16.0 * units::millimetre;
    mechanism.roller.width = 14.0 * units::millimetre;
    return mechanism;
}

} // namespace

PairChamber chamberOf(const mechanism::Mechanism& mechanism, const motion::Pattern& pattern,
                      const ports::Rows& rows) {
    const motion::LiftCurve curve = required(motion::LiftCurve::make(pattern));
    const auto pair = required(mechanism::OpposedPair::make(mechanism, {curve, curve}));
    return PairChamber(required(ports::PortTiming::make(rows, pair)));
}

RunConditions running(double revPerMinute, int cylinders, bool motored) {
    RunConditions run;
    run.omega = revPerMinute * units::revPerMinute;
    run.motored = motored;
    run.cylinders = cylinders;
    for (int k = 0; k < cylinders; ++k) {
        run.cylinderAngles.push_back(units::turn * k / cylinders);
    }
    return run;
}

Engine pumpEngine() {
    Settings settings;
    settings.fuel = Fuel::methane;
    settings.lambda = 1.1;
    settings.supply.pressure = 1.3 * units::bar;
    settings.supply.temperature = 330.0;
    settings.exhaustPressure = 1.05 * units::bar;
    return {chamberOf(mechanismOf(64.0, 7.5, 6.0),
                      lobePattern(2, 36.0, 82.0, 4.0, 78.0, 16.0, Law::modifiedSine),
                      {{row(7.5, 12.0, 10)}, {row(10.5, 12.0, 9)}}),
            settings, running(1800.0, 3)};
}

Engine classroomEngine() {
    Settings settings;
    settings.fuel = Fuel::petrol;
    settings.supply.pressure = 1.0 * units::bar;
    settings.exhaustPressure = 1.0 * units::bar;
    settings.wallHeat.crownTemperature = settings.wallHeat.linerTemperature = 300.0;
    return {chamberOf(mechanismOf(50.0, 12.0, 10.0),
                      lobePattern(1, 40.0, 170.0, 10.0, 160.0, 20.0, Law::polynomial345),
                      {{row(12.0, 14.0, 8)}, {row(16.0, 14.0, 8)}}),
            settings, running(300.0, 1, true)};
}

Engine buoyEngine() {
    Settings settings;
    settings.fuel = Fuel::hydrogen;
    settings.lambda = 2.2;
    settings.burn.start = -6.0 * units::degree;
    settings.burn.duration = 35.0 * units::degree;
    settings.supply.pressure = 1.2 * units::bar;
    settings.supply.temperature = 310.0;
    settings.exhaustPressure = 1.02 * units::bar;
    return {chamberOf(mechanismOf(56.0, 6.0, 4.0),
                      lobePattern(3, 30.0, 60.0, 0.0, 60.0, 0.0, Law::cycloidal),
                      {{row(6.5, 10.0, 10)}, {row(9.0, 10.0, 9)}}),
            settings, running(900.0, 1)};
}

Engine craneEngine() {
    Settings settings;
    settings.fuel = Fuel::ethanol;
    settings.lambda = 1.1;
    settings.supply.kind = SupplyKind::underPiston;
    settings.supply.pump.deadVolume = 450e-6;
    settings.supply.pump.reed.area = 520e-6;
    settings.exhaustPressure = 1.01 * units::bar;
    mechanism::Mechanism mechanism = mechanismOf(70.0, 5.2, 0.0);
    mechanism.arrangement = mechanism::Arrangement::oneSided;
    ports::Rows rows{{row(13.0, 12.0, 8)}, {row(20.0, 16.0, 4)}};
    return {chamberOf(mechanism, lobePattern(1, 60.0, 172.0, 0.0, 172.0, 16.0, Law::modifiedSine),
                      rows),
            settings, running(2200.0)};
}

CycleSolution cycleOf(const Engine& engine, const CycleOptions& options) {
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor, options);
    if (!solution) {
        throw std::runtime_error(solution.problems().front().message.english());
    }
    return *solution;
}

} // namespace lobewright::gas
