#include "core/contact/contact.h"
#include "core/contact/elliptic_contact.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr double tabulated = 2e-3; ///< the solver reads the integrals from a table
constexpr TextId ellipse =
    LW_TEXT("Hertz, elliptical contact (Johnson, Contact Mechanics, § 4.2; Hamrock, Fluid Film "
            "Lubrication).");

constexpr Recipe crownRows[] = {
    {"truncation_{side}", "t",
     "0.2·κ·(3·E·N·R·R_c/(R + R_c)·((1 − ν_t²)/E_t + (1 − ν_r²)/E_r)/(π·κ))^(1/3)/(b − 2·k)",
     "κ=value:crown_along_{side} E=value:crown_integral_{side} N=value:crown_force_{side} "
     "R=value:crown_radius_{side} R_c=field:/mechanism/roller/crown_radius_mm ν_t E_t ν_r E_r "
     "b=field:/mechanism/roller/width_mm k=field:/mechanism/roller/edge_relief_mm",
     ellipse, 5.0 * tabulated, 0.0, LW_TEXT("The ellipse is longest along the roller.")},
    {"truncation_{side}", "t",
     "0.2·(3·E·N·R·R_c/(R + R_c)·((1 − ν_t²)/E_t + (1 − ν_r²)/E_r)/(π·κ))^(1/3)/(b − 2·k)",
     "κ=value:crown_across_{side} E=value:crown_integral_{side} N=value:crown_force_{side} "
     "R=value:crown_radius_{side} R_c=field:/mechanism/roller/crown_radius_mm ν_t E_t ν_r E_r "
     "b=field:/mechanism/roller/width_mm k=field:/mechanism/roller/edge_relief_mm",
     ellipse, 5.0 * tabulated, 0.0, LW_TEXT("The ellipse is longest across the roller.")},
    {"shear_depth_{side}_mm", "z", "d·b/1000",
     "d=value:deep_ratio_{side} b=value:deep_width_{side}",
     LW_TEXT("Johnson, Contact Mechanics, § 4.2: in half-widths under the surface."), tabulated}};

/// The ellipse in the middle of a crowned roller at one sample.
struct Ellipse {
    double force = 0.0, radius = 0.0; ///< [N], relative radius of roller and track [m]
    contact::PointContact contact;
    bool isAlong = true; ///< its long axis lies along the roller
    double halfLength() const { return isAlong ? contact.longSemiAxis : contact.shortSemiAxis; }
};

std::optional<Ellipse> ellipseAt(const Solution& solution, End end, Eigen::Index i) {
    const auto& crown = solution.design.mechanism.roller.crownRadius;
    const auto& middle = solution.stages->contact->track[end].stations[1];
    Ellipse result;
    result.force = std::abs(solution.stages->loads->piston[end].contactForce[i]);
    result.radius = middle.relativeRadius[i];
    if (!crown || result.force <= 0.0 || result.radius <= 0.0) {
        return std::nullopt;
    }
    result.contact = contact::pointContact(result.force, result.radius, *crown,
                                           solution.stages->contact->modulus);
    result.isAlong = result.radius <= *crown;
    return result;
}

/// The sample where the ellipse is longest along the roller.
std::optional<Eigen::Index> longest(const Solution& solution, End end) {
    std::optional<Eigen::Index> found;
    double most = 0.0;
    for (Eigen::Index i = 0; i < solution.theta.size(); ++i) {
        const auto here = ellipseAt(solution, end, i);
        if (here && here->halfLength() > most) {
            most = here->halfLength();
            found = i;
        }
    }
    return found;
}

std::optional<Operand> longestValue(const Solution& solution, std::string_view name) {
    const End end = endOf(name);
    const auto i = longest(solution, end);
    if (!i) {
        return std::nullopt;
    }
    const Ellipse here = *ellipseAt(solution, end, *i);
    const double theta = solution.theta[*i];
    if (name.starts_with("crown_along") || name.starts_with("crown_across")) {
        return here.isAlong == name.starts_with("crown_along")
                   ? std::optional(reading(
                         LW_TEXT("Long axis of the contact ellipse divided by the short one"), "",
                         here.contact.shape.k, theta,
                         LW_TEXT("from the ratio of both radii, by elliptic integrals")))
                   : std::nullopt;
    }
    if (name.starts_with("crown_integral")) {
        return reading(LW_TEXT("Elliptic integral of the second kind"), "",
                       here.contact.shape.second, theta, LW_TEXT("complete, for this ellipse"));
    }
    if (name.starts_with("crown_force")) {
        return reading(LW_TEXT("Contact force there"), "N", here.force, theta);
    }
    return reading(LW_TEXT("Relative radius of curvature of roller and track there"), "mm",
                   here.radius / units::millimetre, theta, LW_TEXT("in the middle of the roller"));
}

/// Half-width and depth where the shear under the surface is largest.
std::optional<Operand> deepestValue(const Solution& solution, std::string_view name) {
    const End end = endOf(name);
    const auto& track = solution.stages->contact->track[end];
    Eigen::Index i = 0;
    track.deepestShear.maxCoeff(&i);
    const double theta = solution.theta[i];
    const bool isWidth = name.starts_with("deep_width");
    const auto crowned = ellipseAt(solution, end, i);
    const double width = solution.design.mechanism.roller.loadedWidth();
    if (crowned && 2.0 * crowned->halfLength() <= width) {
        const double ratio =
            contact::ellipticDeepestShear(crowned->contact.shape.k,
                                          solution.design.materials.trackElastic.poissonRatio)
                .depth;
        return isWidth ? reading(LW_TEXT("Short half-axis of the contact ellipse"), "µm",
                                 crowned->contact.shortSemiAxis / units::micrometre, theta)
                       : reading(LW_TEXT("Depth divided by the short half-axis"), "", ratio, theta,
                                 LW_TEXT("largest shear on the axis of the ellipse"));
    }
    const auto& station = *std::ranges::max_element(
        track.stations, {}, [i](const contact::StationContact& s) { return s.pressure[i]; });
    return isWidth ? reading(LW_TEXT("Half-width of the contact there"), "µm",
                             station.halfWidth[i] / units::micrometre, theta, "√(4·N·R/(π·L·E*))")
                   : reading(LW_TEXT("Depth divided by half-width"), "",
                             contact::lineDeepestShear().depth, theta,
                             LW_TEXT("largest shear on the axis of a line contact"));
}

} // namespace

std::span<const Recipe> crownRecipes() {
    return crownRows;
}

std::optional<Operand> crownValue(const Solution& solution, std::string_view name) {
    if (!solution.stages->loads || !solution.stages->contact) {
        return std::nullopt;
    }
    return name.starts_with("crown_")  ? longestValue(solution, name)
           : name.starts_with("deep_") ? deepestValue(solution, name)
                                       : std::nullopt;
}

} // namespace lobewright::solution
