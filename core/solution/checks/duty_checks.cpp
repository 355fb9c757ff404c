#include "core/solution/checks/checks.h"
#include "core/solution/figures/thrust_bearing.h"
#include "core/solution/sides.h"
#include "core/track/speeds.h"
#include "core/units.h"

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using units::millimetre;

/// Between crowns, or crown and head, warm and worn parts need some tenths of a millimetre [common
/// practice of two-stroke squish gaps: 0.5 to 1.5 mm].
constexpr double narrowGap = 0.5 * millimetre;
/// Speed of a roller times its outside diameter; cage-guided track rollers with oil [common
/// practice of bearing catalogues, some 200,000 to 400,000 mm/min of the mean diameter].
constexpr double fastRoller = 400e3 * millimetre * units::revPerMinute; // m·rad/s

void addGap(CheckList& list, const StageResults& results) {
    const auto& pair = results.pair();
    Eigen::Index closest = 0;
    const auto& piston = results.loads.piston;
    (piston.inlet.lift.y + piston.exhaust.lift.y).maxCoeff(&closest);
    const double gap = pair.gap(results.theta[closest]);
    if (gap >= narrowGap) {
        return;
    }
    list.add({"narrow-gap", Severity::remark,
              pair.mechanism().isOneSided()
                  ? Message(LW_TEXT("Crown and head come within %1 of each other; expansion, play "
                                    "and deposits usually need %2 or more."),
                            Amount(gap, in::mm, 3), Amount(narrowGap, in::mm, 2))
                  : Message(LW_TEXT("The crowns come within %1 of each other; expansion, play and "
                                    "deposits usually need %2 or more."),
                            Amount(gap, in::mm, 3), Amount(narrowGap, in::mm, 2)),
              gap / millimetre, narrowGap / millimetre, &in::mm, "/mechanism/clearance_mm",
              results.theta[closest]});
}

void addRollerSpeed(CheckList& list, const StageResults& results, End end) {
    const auto& mechanism = results.pair().mechanism();
    const double radius = mechanism.roller.radius;
    Eigen::Index fastest = 0;
    const Samples spin = track::rollerSpin(results.loads.piston[end].lift, mechanism.pitchRadius,
                                           radius, results.omega());
    const double speed = spin.maxCoeff(&fastest);
    if (speed * 2.0 * radius <= fastRoller) {
        return;
    }
    list.add({"roller-speed", Severity::remark,
              Message(LW_TEXT("%1 turns at up to %2; speed times outside "
                              "diameter is %3 mm/min, above the %4 mm/min that bearings for track "
                              "rollers usually allow. A larger roller on the same track does not "
                              "help; less speed or a smaller pitch radius does."),
                      rollerWords(results.pair(), end), Amount(speed, in::turnsPerMinute, 3),
                      number(speed * 2.0 * radius / (millimetre * units::revPerMinute), 3),
                      number(fastRoller / (millimetre * units::revPerMinute), 3)),
              speed / units::revPerMinute, fastRoller / (2.0 * radius) / units::revPerMinute,
              &in::rpm, "/mechanism/pitch_radius_mm", results.theta[fastest], std::nullopt, end});
}

/// Only a one-sided engine has such a bearing to judge.
void addThrustLife(CheckList& list, const StageResults& results) {
    if (!results.pair().mechanism().isOneSided()) {
        return;
    }
    const auto life = thrustBearingDuty(results).life;
    const auto& limit = results.design.limits.rollerLife;
    if (life) {
        list.atLeast({"thrust-bearing-life", LW_TEXT("Rating life of the thrust bearing"),
                      &in::hours, "/thrust_bearing/dynamic_rating_kN",
                      LW_TEXT("use a larger bearing, or lower the load or the speed"), std::nullopt,
                      QuantityId{"thrust_bearing_life", &in::hours}},
                     *life / 3600.0, {limit.warning / 3600.0, limit.error / 3600.0});
    }
}

/// What escapes, or flashes back, is a danger of its own. Ranges: Zabetakis, Bureau of Mines
/// Bulletin 627, 1965; embrittlement: ISO/TR 15916.
void addFuelGas(CheckList& list, const design::Design& design) {
    if (design.running.motored) {
        return;
    }
    TextId danger;
    if (design.gas.fuel == gas::Fuel::hydrogen) {
        danger = LW_TEXT("Hydrogen ignites in air between 4 and 75 % by volume, burns with an "
                         "invisible flame and embrittles many steels. Ventilate the space under "
                         "the pistons and the room, detect leaks, guard the intake against "
                         "backfire and choose materials for hydrogen.");
    } else if (design.gas.fuel == gas::Fuel::methane) {
        danger = LW_TEXT("Methane ignites in air between 5 and 15 % by volume. Ventilate the space "
                         "under the pistons and the room, detect leaks and guard the intake "
                         "against backfire.");
    }
    if (!danger.empty()) {
        list.add({"fuel-gas", Severity::remark, danger, 0.0, 0.0, &in::pure, "/gas/fuel"});
    }
}

/// How fast the engine runs away without its load: constant torque on the inertia given.
void addOverspeed(CheckList& list, const StageResults& results) {
    const auto& running = results.design.running;
    const double torque = results.loads.meanTorque;
    if (running.motored || !(running.inertia > 0.0) || !(torque > 0.0)) {
        return;
    }
    constexpr double overspeed = 0.2; // trips are usually set below it [common practice]
    const double time = overspeed * running.speed * running.inertia / torque;
    list.add({"overspeed", Severity::remark,
              Message(LW_TEXT("If the load is lost with the fuel on, the engine reaches 1.2 times "
                              "its speed within %1 (inertia as given, torque held). Fit an "
                              "independent overspeed trip that shuts off the fuel."),
                      Amount(time, in::seconds, 2)),
              0.0, 0.0, &in::pure, "/running/inertia_kg_m2"});
}

} // namespace

void addDutyChecks(CheckList& list, const StageResults& results) {
    addGap(list, results);
    for (const End end : results.pair().pistons()) {
        addRollerSpeed(list, results, end);
    }
    addThrustLife(list, results);
    addFuelGas(list, results.design);
    addOverspeed(list, results);
    if (!results.design.rollerBearing.dynamicRating) {
        list.add({"roller-life-unknown", Severity::remark,
                  LW_TEXT("The life of the roller bearings is not checked: the design gives no "
                          "dynamic rating."),
                  0.0, 0.0, &in::pure, "/roller_bearing/dynamic_rating_kN"});
    }
}

} // namespace lobewright::solution
