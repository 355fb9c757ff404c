#include "tests/gas/ordinary_engines.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

ports::Row row(double edge, double bore, double share, int count) {
    const double width = units::pi * bore * share / count;
    return {edge, edge, width, count, 0.1 * std::min(width, edge), 0.7};
}

} // namespace

double OrdinaryEngines::within(double from, double to) {
    return from + (to - from) * std::generate_canonical<double, 53>(random_);
}

double OrdinaryEngines::spread(double from, double to) {
    return std::exp(within(std::log(from), std::log(to)));
}

int OrdinaryEngines::pick(int count) {
    return std::min(count - 1, static_cast<int>(within(0.0, count)));
}

PairChamber OrdinaryEngines::chamber() {
    const double bore = within(45.0, 110.0) * units::millimetre;
    const double stroke = bore * within(0.5, 0.9);
    const int lobes = 1 + pick(3);
    const double period = units::turn / lobes;
    const double innerDwell = chance(0.3) ? within(0.01, 0.06) * period : 0.0;
    const double outerDwell = chance(0.3) ? within(0.01, 0.1) * period : 0.0;
    const double rise = (period - innerDwell - outerDwell) * within(0.45, 0.55);
    const motion::Law law = motion::allLaws[static_cast<std::size_t>(
        pick(static_cast<int>(std::size(motion::allLaws))))];
    std::vector<motion::Segment> segments{{motion::SegmentKind::rise, rise, law, std::nullopt}};
    if (innerDwell > 0.0) {
        segments.push_back({motion::SegmentKind::dwell, innerDwell, law, std::nullopt});
    }
    segments.push_back(
        {motion::SegmentKind::fall, period - rise - innerDwell - outerDwell, law, std::nullopt});
    if (outerDwell > 0.0) {
        segments.push_back({motion::SegmentKind::dwell, outerDwell, law, std::nullopt});
    }
    mechanism::Mechanism mechanism;
    mechanism.pitchRadius = 3.0 * bore;
    mechanism.bore = bore;
    mechanism.clearance = 2.0 * stroke / (within(10.0, 18.0) - 1.0);
    mechanism.exhaustLead = within(0.0, 0.04) * period;
    mechanism.roller.radius = 0.25 * bore;
    mechanism.roller.width = 0.2 * bore;
    const double inletEdge = stroke * within(0.16, 0.26);
    const double exhaustEdge = inletEdge * within(1.15, 1.5);
    return chamberOf(mechanism, {lobes, motion::SegmentShape{stroke, segments}},
                     {{row(inletEdge, bore, within(0.45, 0.7), 8 + pick(6))},
                      {row(exhaustEdge, bore, within(0.45, 0.7), 8 + pick(6))}});
}

RunConditions OrdinaryEngines::run(const PairChamber& chamber) {
    RunConditions run;
    const double meanPistonSpeed = within(6.0, 13.0);
    run.omega = units::turn * meanPistonSpeed / (chamber.meanStrokeSum() * chamber.cyclesPerTurn());
    run.cylinders = 1 + pick(16);
    const bool even = chance(0.7);
    for (int k = 0; k < run.cylinders; ++k) {
        const double shift = even ? 0.0 : within(-0.3, 0.3);
        run.cylinderAngles.push_back(units::turn * (k + shift) / run.cylinders);
    }
    return run;
}

Settings OrdinaryEngines::settings(const PairChamber& chamber, const RunConditions& run) {
    Settings s;
    s.fuel = static_cast<Fuel>(pick(5));
    s.lambda = within(1.0, 2.2);
    s.burn.bestTorque = chance(0.05);
    s.burn.start = within(-20.0, -4.0) * units::degree;
    s.burn.duration = within(30.0, 70.0) * units::degree;
    s.exhaustPressure = within(1.0, 1.15) * units::bar;
    s.scavenging = {static_cast<ScavengingModel>(pick(3)), within(0.2, 0.7),
                    chance(0.5) ? 0.0 : within(0.0, 0.2)};
    s.wallHeat.model = chance(0.8) ? WallHeatModel::woschni : static_cast<WallHeatModel>(pick(3));
    if (chance(0.4)) {
        s.supply.pressure = s.exhaustPressure * spread(1.03, 1.8);
        s.supply.temperature = within(290.0, 360.0);
        return s;
    }
    s.supply.kind = SupplyKind::blower;
    const double displacement = chamber.sweptVolume() * run.cylinders;
    s.supply.displacement =
        displacement * chamber.cyclesPerTurn() * within(0.7, 1.6) / s.supply.volumetricEfficiency;
    s.supply.plenumVolume = displacement * spread(0.1, 20.0);
    if (chance(0.5)) {
        s.supply.afterCoolerTemperature = within(305.0, 350.0);
    }
    return s;
}

Engine OrdinaryEngines::next() {
    const PairChamber made = chamber();
    const RunConditions runs = run(made);
    return {made, settings(made, runs), runs};
}

std::vector<double> OrdinaryEngines::speeds(const Engine& engine, int count) {
    std::vector<double> speeds;
    speeds.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        speeds.push_back(engine.run.omega * (i % 2 == 0 ? spread(0.05, 0.3) : within(0.3, 1.5)));
    }
    return speeds;
}

} // namespace lobewright::gas
