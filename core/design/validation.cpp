#include "core/design/validation.h"

#include "core/design/catalogue.h"
#include "core/design/fields.h"
#include "core/design/file.h"
#include "core/design/gas_settings.h"
#include "core/design/schedules.h"
#include "core/design/skirt_row.h"
#include "core/mechanism/opposed_pair.h"
#include "core/motion/lift_curve.h"
#include "core/ports/events.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

class Rules {
  public:
    Rules(const Design& design, const Problems& known) : design_(design), known_(known) {}

    Problems run() {
        if (isSound("/mechanism")) {
            checkCylinders();
            checkPiston();
            checkRoller();
        }
        const auto lifts = checkTracks();
        const bool hasMechanism = isSound("/mechanism");
        const bool hasPorts = isSound("/ports");
        if (hasMechanism && hasPorts) {
            add("/ports", ports::rowProblems(design_.ports, design_.mechanism.bore));
            checkWebs();
        }
        if (lifts && hasMechanism) {
            const auto pair = mechanism::OpposedPair::make(design_.mechanism, *lifts);
            if (!pair) {
                add("", pair.problems());
            } else {
                if (hasPorts && isSound("/ports")) {
                    checkTiming(*pair);
                }
                checkSkirtRow(*pair);
            }
        }
        if (isSound("/limits")) {
            checkLimits();
        }
        if (isSound("/running") && isSound("/gas")) {
            checkLoad();
        }
        return std::move(found_);
    }

  private:
    static bool concerns(const Problem& problem, std::string_view section) {
        const std::string& path = problem.path;
        const bool isInside = path.starts_with(section) &&
                              (path.size() == section.size() || path[section.size()] == '/');
        const bool isAbove = !path.empty() && path.size() < section.size() &&
                             section.starts_with(path) && section[path.size()] == '/';
        return isInside || isAbove;
    }
    bool isSound(std::string_view section) const {
        const auto here = [section](const Problem& problem) { return concerns(problem, section); };
        return std::ranges::none_of(known_, here) && std::ranges::none_of(found_, here);
    }
    void add(const std::string& prefix, const Problems& problems) {
        for (const Problem& problem : problems) {
            found_.push_back({prefix + problem.path, problem.message});
        }
    }
    void require(bool isKept, const std::string& path, const Message& message) {
        if (!isKept) {
            found_.push_back({path, message});
        }
    }

    void checkCylinders() {
        const mechanism::Mechanism& m = design_.mechanism;
        if (m.cylinderAngles) {
            const auto count = static_cast<int>(m.cylinderAngles->size());
            require(
                count == m.cylinders, "/mechanism/cylinder_angles_deg",
                Message(
                    LW_TEXT("%1 angles are listed; there must be one for each of the %2 cylinders"),
                    count, m.cylinders));
            if (count != m.cylinders) {
                return;
            }
        }
        require(2.0 * m.pitchRadius > m.bore, "/mechanism/pitch_radius_mm",
                Message(LW_TEXT("the pitch radius is %1; it must exceed half the bore, %2, or the "
                                "cylinders enclose the shaft"),
                        Amount(m.pitchRadius, in::mm, 6), Amount(0.5 * m.bore, in::mm, 6)));
        checkNeighbours(mechanism::cylinderAngles(m));
    }

    void checkNeighbours(std::vector<double> angles) {
        const mechanism::Mechanism& m = design_.mechanism;
        for (double& angle : angles) {
            angle -= units::turn * std::floor(angle / units::turn);
        }
        std::ranges::sort(angles);
        double least = units::turn;
        for (std::size_t k = 1; k < angles.size(); ++k) {
            least = std::min(least, angles[k] - angles[k - 1]);
        }
        if (angles.size() > 1) {
            least = std::min(least, angles.front() + units::turn - angles.back());
            const double distance = 2.0 * m.pitchRadius * std::sin(0.5 * least);
            require(distance > m.bore,
                    m.cylinderAngles ? "/mechanism/cylinder_angles_deg" : "/mechanism/cylinders",
                    Message(LW_TEXT("neighbouring cylinder axes stand %1 apart; it must be more "
                                    "than the bore, %2"),
                            Amount(distance, in::mm, 6), Amount(m.bore, in::mm, 6)));
        }
    }

    void checkPiston() {
        if (!design_.mechanism.piston) {
            return;
        }
        const mechanism::PistonGeometry& piston = *design_.mechanism.piston;
        double previous = -1.0;
        for (std::size_t i = 0; i < piston.ringDistances.size(); ++i) {
            const double distance = piston.ringDistances[i];
            const std::string path = fmt::format("/mechanism/piston/ring_distances_mm/{}", i);
            const int ring = static_cast<int>(i) + 1;
            require(distance < piston.length, path,
                    Message(LW_TEXT("ring %1 stands %2 from the crown; this must be less than the "
                                    "piston length, %3"),
                            ring, Amount(distance, in::mm, 6), Amount(piston.length, in::mm, 6)));
            require(distance > previous, path,
                    Message(LW_TEXT("ring %1 stands %2 from the crown; it must stand further than "
                                    "the ring before it, %3"),
                            ring, Amount(distance, in::mm, 6), Amount(previous, in::mm, 6)));
            previous = distance;
        }
    }

    void checkRoller() {
        const mechanism::Mechanism& m = design_.mechanism;
        require(
            m.roller.width < 2.0 * m.pitchRadius, "/mechanism/roller/width_mm",
            Message(
                LW_TEXT("the roller is %1 wide; it must be less than twice the pitch radius, %2"),
                Amount(m.roller.width, in::mm, 6), Amount(2.0 * m.pitchRadius, in::mm, 6)));
        require(
            2.0 * m.roller.edgeRelief < m.roller.width, "/mechanism/roller/edge_relief_mm",
            Message(
                LW_TEXT(
                    "the edge relief is %1; both together must be less than the roller width, %2"),
                Amount(m.roller.edgeRelief, in::mm, 6), Amount(m.roller.width, in::mm, 6)));
    }

    std::optional<PerEnd<motion::LiftCurve>> checkTracks() {
        if (!isSound("/tracks/inlet")) {
            return std::nullopt;
        }
        const auto inlet = motion::LiftCurve::make(design_.tracks.inlet);
        if (!inlet) {
            add("/tracks/inlet", inlet.problems());
        }
        if (!design_.tracks.exhaust || design_.mechanism.isOneSided()) {
            const bool isUsable = inlet && isSound("/tracks");
            return isUsable ? std::optional(PerEnd<motion::LiftCurve>{*inlet, *inlet})
                            : std::nullopt;
        }
        if (!isSound("/tracks/exhaust")) {
            return std::nullopt;
        }
        const auto exhaust = motion::LiftCurve::make(*design_.tracks.exhaust);
        if (!exhaust) {
            add("/tracks/exhaust", exhaust.problems());
        }
        const bool isUsable = inlet && exhaust && isSound("/tracks");
        return isUsable ? std::optional(PerEnd<motion::LiftCurve>{*inlet, *exhaust}) : std::nullopt;
    }

    void checkWebs() {
        for (const ports::Web& web :
             ports::webs(design_.ports, design_.mechanism.bore, design_.mechanism.isOneSided())) {
            require(web.chord > 0.0, fmt::format("/ports/{}/{}/count", name(web.end), web.row),
                    Message(LW_TEXT("the bridge between neighbouring ports is %1; it must be "
                                    "positive: the ports do not fit around the bore"),
                            Amount(web.chord, in::mm)));
        }
    }

    void checkTiming(const mechanism::OpposedPair& pair) {
        const auto timing = ports::PortTiming::make(design_.ports, pair);
        if (!timing) {
            add("/ports", timing.problems());
        }
    }

    /// Every piston that pumps must uncover the row with its lower end, and never with its crown.
    void checkSkirtRow(const mechanism::OpposedPair& pair) {
        if (!isSound("/gas") || !skirtRow(design_, End::inlet)) {
            return;
        }
        const ports::Row& row = *skirtRow(design_, End::inlet);
        const std::string path = "/gas/supply/skirt_row";
        add(path, ports::rowProblems(row, design_.mechanism.bore));
        for (const End end : pair.pistons()) {
            if (!skirtRow(design_, end)) {
                continue;
            }
            const double stroke = pair.curve(end).stroke();
            require(row.edge < stroke, path + "/edge_mm",
                    Message(LW_TEXT("the skirt would have to travel %1 to uncover the row; it must "
                                    "be less than the stroke, %2"),
                            Amount(row.edge, in::mm, 6), Amount(stroke, in::mm, 6)));
        }
        if (const auto& piston = design_.mechanism.piston) {
            require(row.edge + row.height < piston->length, path + "/edge_mm",
                    Message(LW_TEXT("the far edge of the row lies %1 above the end of the skirt at "
                                    "outer dead centre; it must be less than the piston length, "
                                    "%2, or the crown uncovers it"),
                            Amount(row.edge + row.height, in::mm, 6),
                            Amount(piston->length, in::mm, 6)));
        }
    }

    void checkLoad() {
        const Running& running = design_.running;
        if (running.loadBy == LoadBy::mixture) {
            require(running.load > 0.0, "/running/load",
                    LW_TEXT("the load is 0; by mixture it must be above 0: without fuel the engine "
                            "is motored"));
        } else if (running.loadFloor) {
            const double full = fullPressure(design_.gas.supply);
            require(*running.loadFloor <= full, "/running/load_floor_bar",
                    Message(LW_TEXT("the pressure of load 0 is %1; it must not exceed that of full "
                                    "load, %2"),
                            Amount(*running.loadFloor, in::bar), Amount(full, in::bar)));
        }
    }

    void checkLimits() {
        for (const LimitRow& row : limitRows()) {
            const Limit limit = design_.limits.*row.member, usual = Limits().*row.member;
            const bool highIsBad = usual.warning < usual.error;
            require(
                highIsBad ? limit.warning <= limit.error : limit.warning >= limit.error,
                fmt::format("/limits/{}/warning", row.key),
                Message(
                    LW_TEXT("the warning stands at %1, beyond the error at %2; it must come first"),
                    number(fromSi(*row.unit, limit.warning), 6),
                    number(fromSi(*row.unit, limit.error), 6)));
        }
    }

    const Design& design_;
    const Problems& known_;
    Problems found_;
};

} // namespace

Problems brokenRules(const Design& design, const Problems& known) {
    if (design.schedules.empty()) {
        return Rules(design, known).run();
    }
    const bool areRead = std::ranges::none_of(
        known, [](const Problem& problem) { return problem.path.starts_with("/schedules"); });
    Problems problems = areRead ? brokenScheduleRules(design) : Problems();
    const bool canFollow = areRead && problems.empty();
    // The values that the schedules replace are not judged: nothing runs with them.
    const Problems broken = Rules(canFollow ? atItsSpeed(design) : design, known).run();
    problems.insert(problems.end(), broken.begin(), broken.end());
    return problems;
}

Problems validateEngine(const Design& design) {
    Problems problems = checkRanges(design, WithSnapshots::no);
    const Problems broken = brokenRules(design, problems);
    problems.insert(problems.end(), broken.begin(), broken.end());
    return problems;
}

Problems validate(const Design& design) {
    Problems problems = checkRanges(design);
    Problems broken = brokenRules(design, problems);
    problems.insert(problems.end(), broken.begin(), broken.end());
    broken = brokenKnowledgeRules(design);
    problems.insert(problems.end(), broken.begin(), broken.end());
    broken = brokenSnapshotRules(design, problems);
    problems.insert(problems.end(), broken.begin(), broken.end());
    return problems;
}

} // namespace lobewright::design
