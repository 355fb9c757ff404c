#include "core/draft/tuning.h"

#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

// Ends of the ranges of the rules, and steps on the way there.
constexpr double widestRoller = 0.85;       // of the bore
constexpr double broadRoller = 0.6;         // likewise: its inner edge runs on a small radius
constexpr double largestRoller = 0.45;      // radius, of the bore
constexpr double bestBearing = 28e6;        // [N/m²]
constexpr double largestPitchRadius = 1.25; // of the smallest possible
constexpr double latestStart = 2.0;         // [cycle °]
constexpr double tallestPorts = 0.26;       // of the stroke
constexpr double longestLead = 18.0;        // [cycle °]
constexpr double coolestSupply = 305.0;     // [K]
constexpr double thickestOil = 0.05;        // [Pa·s]
constexpr double margin = 1.04;             // a limit is kept with this to spare
constexpr double lifeExponent = 3.0 / 10.0; // ISO 281: life goes as load to −10/3
constexpr double narrowedAtLeast = 1.1;     // less is not worth another look

/// One step of a value towards the end of its range; whether it was not there yet.
bool step(double& value, double by, double end) {
    const double before = value;
    value = by > 0.0 ? std::min(end, value + by) : std::max(end, value + by);
    return value != before;
}

class Tuner {
  public:
    Tuner(const Tuning& tuning, const solution::Solution& draft)
        : next_(tuning), draft_(draft), design_(draft.design) {}

    Tuning run() {
        for (const solution::Check& check : draft_.checks) {
            if (check.severity != solution::Severity::remark) {
                cure(check);
            }
        }
        if (load_ > 1.0) {
            carry(load_);
        }
        return next_;
    }

  private:
    void cure(const solution::Check& check) {
        if (check.id == "lift-off") {
            next_.isClosed = true;
        } else if (check.id == "knock" || check.id == "peak-pressure") {
            soften();
        } else if (check.id == "contact-stress" && check.value > 0.0) {
            // Stress goes as the root of the load per width.
            load_ = std::max(
                load_, std::pow(margin * design_.limits.contactSafety.warning / check.value, 2.0));
            if (design_.mechanism.roller.width > broadRoller * design_.mechanism.bore) {
                step(next_.pitchRadius, 0.05, largestPitchRadius);
            }
        } else if (check.id == "roller-life" && check.value > 0.0) {
            const double wanted = margin * design_.limits.rollerLife.warning / 3600.0;
            load_ = std::max(load_, std::pow(wanted / check.value, lifeExponent));
        } else if (check.id == "film") {
            const double now = design_.lubricant.viscosity;
            next_.viscosity = std::min(thickestOil, 1.2 * now);
        }
    }

    /// Later, better scavenged, less compressed, cooler, and at last a larger engine for the same
    /// power: each costs less than the next.
    void soften() {
        if (step(next_.burnStart, 5.0, latestStart)) {
            return;
        }
        const bool isTaller = step(next_.portHeight, 0.045, tallestPorts);
        const bool isLonger = step(next_.exhaustLead, 2.0, longestLead);
        if (isTaller || isLonger || step(next_.compression, 0.5, 1.0)) {
            return;
        }
        if (!step(next_.supplyTemperature, -25.0, coolestSupply)) {
            step(next_.meanPressure, -0.25, 0.0);
        }
    }

    /// So many times the load must be carried as now: wider, then larger, then better rollers, and
    /// slower pistons where all of that is not enough.
    void carry(double factor) {
        const double bore = design_.mechanism.bore;
        const double now = design_.mechanism.roller.width;
        next_.rollerWidth = std::min(widestRoller * bore, now * factor);
        double left = factor * now / std::max(now, next_.rollerWidth);
        const auto take = [&left](double& value, double most) {
            const double before = value;
            value = std::clamp(value * left, value, std::max(value, most));
            left *= before / value;
        };
        take(next_.rollerRadius, largestRoller);
        take(next_.bearing, bestBearing);
        if (left > 1.0) {
            step(next_.pistonSpeed, -0.25, 0.0);
        }
    }

    Tuning next_;
    const solution::Solution& draft_;
    const design::Design& design_;
    double load_ = 1.0;
};

/// A figure of a brief by its key.
struct Given {
    std::string_view key;
    TextId label;
    bool (*has)(const Brief&);
    void (*drop)(Brief&);
};

#define LW_GIVEN(key, label, member)                                                               \
    {                                                                                              \
        key, label, [](const Brief& brief) { return brief.member.has_value(); },                   \
            [](Brief& brief) { brief.member.reset(); }                                             \
    }
constexpr Given givenFigures[] = {
    LW_GIVEN("power", LW_TEXT("power"), power),
    LW_GIVEN("torque", LW_TEXT("torque"), torque),
    LW_GIVEN("power-speed", LW_TEXT("speed"), powerSpeed),
    LW_GIVEN("torque-speed", LW_TEXT("speed of peak torque"), torqueSpeed),
    LW_GIVEN("maximum-speed", LW_TEXT("highest speed"), maximumSpeed),
    LW_GIVEN("mean-pressure", LW_TEXT("brake mean effective pressure"), meanPressure),
    LW_GIVEN("piston-speed", LW_TEXT("mean piston speed"), pistonSpeed),
    LW_GIVEN("displacement", LW_TEXT("displacement"), displacement),
    LW_GIVEN("bore", LW_TEXT("bore"), bore),
    LW_GIVEN("stroke", LW_TEXT("stroke"), stroke),
    LW_GIVEN("cylinders", LW_TEXT("number of cylinders"), cylinders),
    LW_GIVEN("lobes", LW_TEXT("number of lobes"), lobes),
    LW_GIVEN("compression", LW_TEXT("compression ratio"), compression),
    LW_GIVEN("high-compression", LW_TEXT("highest compression ratio"), highCompression),
    LW_GIVEN("diameter", LW_TEXT("outer diameter"), diameter),
    LW_GIVEN("fuel", LW_TEXT("fuel"), fuel),
    LW_GIVEN("air-ratio", LW_TEXT("excess-air ratio"), airRatio),
    LW_GIVEN("supply-pressure", LW_TEXT("supply pressure"), supplyPressure),
    LW_GIVEN("charging", LW_TEXT("charging"), charging),
};
#undef LW_GIVEN

/// What the numbers behind a check follow from.
std::vector<std::string_view> causes(std::string_view check) {
    static constexpr std::string_view burning[] = {
        "power", "torque",      "power-speed",      "maximum-speed", "mean-pressure",
        "bore",  "stroke",      "displacement",     "cylinders",     "lobes",
        "fuel",  "compression", "high-compression", "air-ratio",     "supply-pressure"};
    static constexpr std::string_view loads[] = {
        "power",       "torque",       "power-speed",      "torque-speed",    "maximum-speed",
        "bore",        "stroke",       "displacement",     "cylinders",       "lobes",
        "compression", "piston-speed", "high-compression", "supply-pressure", "diameter"};
    static constexpr std::string_view motion[] = {"power-speed",  "torque-speed", "maximum-speed",
                                                  "piston-speed", "stroke",       "bore",
                                                  "displacement", "lobes",        "cylinders"};
    static constexpr std::string_view room[] = {"diameter", "bore", "cylinders", "stroke",
                                                "displacement"};
    const auto list = [](const auto& keys) {
        return std::vector<std::string_view>(std::begin(keys), std::end(keys));
    };
    if (check == "knock" || check == "peak-pressure") {
        return list(burning);
    }
    if (check == "mean-piston-speed") {
        return list(motion);
    }
    if (check == "rollers-meet" || check == "pressure-angle" || check == "undercut") {
        return list(room);
    }
    return list(loads);
}

} // namespace

Tuning tuned(const Tuning& tuning, const solution::Solution& draft) {
    return Tuner(tuning, draft).run();
}

Tuning trimmed(const Tuning& tuning, const solution::Solution& draft) {
    const auto& limits = draft.design.limits;
    double spare = 10.0;
    const auto take = [&](const char* name, double limit, double exponent) {
        const auto* figure = draft.figure(name);
        if (figure != nullptr && figure->value) {
            spare = std::min(spare, std::pow(*figure->value / (margin * limit), exponent));
        }
    };
    for (const char* name : {"roller_life_inlet_h", "roller_life_exhaust_h"}) {
        take(name, limits.rollerLife.warning / 3600.0, lifeExponent);
    }
    for (const char* name : {"contact_safety_inlet", "contact_safety_exhaust"}) {
        take(name, limits.contactSafety.warning, 2.0);
    }
    Tuning next = tuning;
    if (spare > narrowedAtLeast) {
        next.rollerWidth = std::max(draft.design.mechanism.roller.width / spare,
                                    0.12 * draft.design.mechanism.bore);
    }
    return next;
}

std::vector<Exceeded> exceeded(const Brief& brief, const solution::Solution& draft) {
    std::vector<Exceeded> list;
    for (const solution::Check& check : draft.checks) {
        if (check.severity == solution::Severity::remark) {
            continue;
        }
        Exceeded row{check.id, check.message};
        for (const std::string_view key : causes(check.id)) {
            const auto* given = std::ranges::find(givenFigures, key, &Given::key);
            if (given != std::end(givenFigures) && given->has(brief)) {
                row.forcedBy.push_back(given->label);
                row.keys.emplace_back(key);
            }
        }
        list.push_back(std::move(row));
    }
    return list;
}

Brief withoutFigure(Brief brief, std::string_view key) {
    const auto* given = std::ranges::find(givenFigures, key, &Given::key);
    if (given != std::end(givenFigures)) {
        given->drop(brief);
    }
    return brief;
}

} // namespace lobewright::draft
