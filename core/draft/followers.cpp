#include "core/draft/followers.h"

#include "core/draft/build.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace lobewright::draft {

namespace {

using units::degree;
using units::millimetre;

constexpr const char* borePath = "/mechanism/bore_mm";
constexpr const char* stroke = "/tracks/inlet/stroke_mm";
constexpr const char* lead = "/mechanism/exhaust_lead_deg";
constexpr const char* rollerRadius = "/mechanism/roller/radius_mm";
constexpr const char* rollerWidth = "/mechanism/roller/width_mm";
constexpr const char* rating = "/roller_bearing/dynamic_rating_kN";

/// Of a number that this engine does not have a law says nothing.
double of(const std::map<std::string, double, std::less<>>& numbers, std::string_view path) {
    const auto found = numbers.find(path);
    return found == numbers.end() ? std::numeric_limits<double>::quiet_NaN() : found->second;
}

bool isNoted(const design::Known& known) {
    using design::Origin;
    return !known.rule.empty() &&
           (known.origin == Origin::derived || known.origin == Origin::assumed);
}

} // namespace

std::vector<std::pair<std::string_view, Followers::Law>>
Followers::lawsFor(const design::Design& design) {
    const mechanism::Mechanism mechanism = design.mechanism;
    const auto moved = [mechanism](const Numbers& x) {
        mechanism::Mechanism next = mechanism;
        next.bore = of(x, borePath) * millimetre;
        next.roller.radius = of(x, rollerRadius) * millimetre;
        next.roller.width = of(x, rollerWidth) * millimetre;
        if (const auto angle = x.find(lead); angle != x.end()) {
            next.exhaustLead = angle->second * degree;
        }
        return next;
    };
    const double strokeBefore = std::get<motion::SegmentShape>(design.tracks.inlet.shape).stroke;
    // Of the three that ask for a pitch radius the pressure angle is what is left.
    const double slope =
        std::max({mechanism.pitchRadius, radiusForBores(mechanism), radiusForRollers(mechanism)}) /
        strokeBefore;
    const double outside =
        mechanism.pitchRadius + 0.5 * mechanism.bore + wallAround(mechanism.bore).value;
    const auto volumes = chamberVolumes(mechanism, design.tracks.inlet);
    const double ratio = volumes ? volumes->largest / volumes->smallest : 0.0;
    const auto proportionalTo = [](const char* path, double power) {
        return Law([path, power](const Numbers& x) { return std::pow(of(x, path), power); });
    };
    return {
        {"bore-from-stroke", proportionalTo(stroke, -0.5)},
        {"stroke-from-displacement", proportionalTo(borePath, -2.0)},
        {"stroke-from-bore", proportionalTo(borePath, 1.0)},
        {"speed-from-piston-speed", proportionalTo(stroke, -1.0)},
        {"piston-mass", proportionalTo(borePath, 3.0)},
        {"piston-length", [](const Numbers& x) { return of(x, stroke) + 0.7 * of(x, borePath); }},
        {"roller-radius", proportionalTo(borePath, 1.0)},
        // The same nominal stress under the force of the gas.
        {"roller-width",
         [](const Numbers& x) { return of(x, borePath) * of(x, borePath) / of(x, rollerRadius); }},
        {"bearing-rating",
         [](const Numbers& x) { return of(x, rollerRadius) * of(x, rollerWidth); }},
        {"static-rating", proportionalTo(rating, 1.0)},
        {"pitch-radius",
         [moved, slope](const Numbers& x) {
             const auto next = moved(x);
             return std::max({radiusForBores(next), radiusForRollers(next),
                              slope * of(x, stroke) * millimetre});
         }},
        {"pitch-radius-from-diameter",
         [outside](const Numbers& x) {
             const double radius = 0.5 * of(x, borePath) * millimetre;
             return outside - radius - wallAround(2.0 * radius).value;
         }},
        {"clearance",
         [moved, ratio, track = design.tracks.inlet](const Numbers& x) {
             motion::Pattern next = track;
             const double length = of(x, stroke) * millimetre;
             std::get<motion::SegmentShape>(next.shape).stroke = length;
             return clearanceFor(ratio, moved(x), next, length).value_or(0.0);
         }},
        {"helix-pitch", proportionalTo(stroke, 1.0)},
        // Heights in proportion keep the timing.
        {"port-widths-inlet", proportionalTo(borePath, 1.0)},
        {"port-widths-exhaust", proportionalTo(borePath, 1.0)},
        {"inlet-port-height", proportionalTo(stroke, 1.0)},
        {"exhaust-port-height", proportionalTo(stroke, 1.0)},
    };
}

Followers::Followers(const design::Design& design) {
    const bool isDrafted = std::ranges::any_of(
        design.knowledge, [](const auto& entry) { return isNoted(entry.second); });
    if (!isDrafted || !std::holds_alternative<motion::SegmentShape>(design.tracks.inlet.shape)) {
        return;
    }
    std::map<std::string, design::Range> ranges;
    for (const design::Field& field : design::fields(design)) {
        if (const auto* value = std::get_if<double>(&field.value)) {
            nominal_[field.path] = *value;
            ranges[field.path] = field.range;
        }
    }
    for (const auto& [rule, law] : lawsFor(design)) {
        for (const auto& [path, known] : design.knowledge) {
            const bool isNumber = ranges.contains(path) && nominal_[path] != 0.0;
            if (!isNoted(known) || known.rule != rule || !isNumber) {
                continue;
            }
            if (const double byRule = law(nominal_); byRule > 0.0) {
                followers_.push_back({path, law, byRule, ranges[path]});
            }
        }
    }
}

std::vector<std::string> Followers::paths() const {
    std::vector<std::string> all;
    for (const Follower& follower : followers_) {
        all.push_back(follower.path);
    }
    return all;
}

bool Followers::follows(const std::string& path) const {
    return std::ranges::find(followers_, path, &Follower::path) != followers_.end();
}

design::FieldValues Followers::completed(design::FieldValues values) const {
    if (followers_.empty()) {
        return values;
    }
    Numbers numbers = nominal_;
    std::set<std::string, std::less<>> given;
    for (const auto& [path, value] : values) {
        if (const auto* number = std::get_if<double>(&value)) {
            numbers[path] = *number;
        }
        given.insert(path);
    }
    for (const Follower& follower : followers_) {
        double& number = numbers[follower.path];
        const double factor = follower.law(numbers) / follower.byRule;
        if (factor > 0.0 && std::isfinite(factor)) {
            number = std::clamp(factor * number, follower.range.min, follower.range.max);
        }
        if (!given.contains(follower.path)) {
            values.emplace_back(follower.path, number);
        }
    }
    for (auto& [path, value] : values) {
        if (std::holds_alternative<double>(value)) {
            value = numbers[path];
        }
    }
    return values;
}

} // namespace lobewright::draft
