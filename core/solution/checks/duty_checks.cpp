#include "core/solution/checks/checks.h"
#include "core/solution/figures/thrust_bearing.h"
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
    const Samples gaps = results.theta.unaryExpr([&](double theta) { return pair.gap(theta); });
    const double gap = gaps.minCoeff(&closest);
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
    const Samples spin = track::rollerSpin(results.pair().lift(end, results.theta),
                                           mechanism.pitchRadius, radius, results.omega());
    const double speed = spin.maxCoeff(&fastest);
    if (speed * 2.0 * radius <= fastRoller) {
        return;
    }
    list.add({"roller-speed",
              Severity::remark,
              Message(LW_TEXT("The roller of the %1 side turns at up to %2; speed times outside "
                              "diameter is %3 mm/min, above the %4 mm/min that bearings for track "
                              "rollers usually allow. A larger roller on the same track does not "
                              "help; less speed or a smaller pitch radius does."),
                      word(end), Amount(speed, in::turnsPerMinute, 3),
                      number(speed * 2.0 * radius / (millimetre * units::revPerMinute), 3),
                      number(fastRoller / (millimetre * units::revPerMinute), 3)),
              speed / units::revPerMinute,
              fastRoller / (2.0 * radius) / units::revPerMinute,
              &in::rpm,
              "/mechanism/pitch_radius_mm",
              results.theta[fastest],
              {},
              end});
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
                      "thrust_bearing_life_h"},
                     *life / 3600.0, {limit.warning / 3600.0, limit.error / 3600.0});
    }
}

} // namespace

void addDutyChecks(CheckList& list, const StageResults& results) {
    addGap(list, results);
    for (const End end : results.pair().pistons()) {
        addRollerSpeed(list, results, end);
    }
    addThrustLife(list, results);
    if (!results.design.rollerBearing.dynamicRating) {
        list.add({"roller-life-unknown", Severity::remark,
                  LW_TEXT("The life of the roller bearings is not checked: the design gives no "
                          "dynamic rating."),
                  0.0, 0.0, &in::pure, "/roller_bearing/dynamic_rating_kN"});
    }
}

} // namespace lobewright::solution
