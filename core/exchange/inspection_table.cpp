#include "core/exchange/track_tables.h"
#include "core/exchange/track_text.h"
#include "core/exchange/turn_steps.h"
#include "core/units.h"

#include <fmt/format.h>

#include <cmath>
#include <iterator>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

using units::degree;
using units::micrometre;
using units::millimetre;

/// The planar approximation on the cylinder of radius s: the pitch curve unrolled there, offset by
/// r, wrapped again.
Eigen::Vector3d planarPoint(const FlankForm& form, double phi, double radius) {
    const motion::Lift lift = form.curve.at(phi);
    const double side = track::sign(form.flank) * form.rollerRadius;
    const double alpha = track::contactAngle(lift, radius);
    const double angle = form.placement.polarAngle(phi) - side * std::sin(alpha) / radius;
    return {radius * std::cos(angle), radius * std::sin(angle),
            form.placement.axial(lift.y - side * std::cos(alpha))};
}

std::string row(const FlankForm& form, double phi, double radius) {
    const Section at = section(form, phi, radius);
    const Eigen::Vector3d point = spacePoint(form, phi, radius).value;
    const Eigen::Vector3d out = normal(form, phi, radius);
    const double rho = at.rho.value;
    const double relative =
        track::relativeRadius(form.curve.at(phi), rho, form.rollerRadius, form.flank);
    const double planar = (planarPoint(form, phi, radius) - point).dot(out);
    const Eigen::Vector3d mm = point / millimetre;
    return fmt::format("{},{:.9g},{:.6f},{:.6f},{:.6f},{:.6f},{:.6f},{:.9f},{:.9f},{:.9f},{:.6f},"
                       "{:.6f},{:.4f}\r\n",
                       word(form.flank).text, phi / degree, radius / millimetre,
                       at.angle.value / degree, mm.x(), mm.y(), mm.z(), out.x(), out.y(), out.z(),
                       rho / millimetre, relative / millimetre, planar / micrometre);
}

} // namespace

std::vector<double> usualRadii(const TrackPart& part) {
    return {part.roller.innerEdge(part.pitchRadius), part.pitchRadius,
            part.roller.outerEdge(part.pitchRadius)};
}

Problems checkRadii(const TrackPart& part, const std::vector<double>& radii) {
    Problems problems;
    for (std::size_t i = 0; i < radii.size(); ++i) {
        if (!(radii[i] >= part.faceInner && radii[i] <= part.faceOuter)) {
            problems.push_back(
                {fmt::format("/radii_mm/{}", i),
                 Message(LW_TEXT("radius is %1; it must lie on the face of the track, %2 to %3"),
                         Amount(radii[i], in::mm, 6), Amount(part.faceInner, in::mm, 6).bare(),
                         Amount(part.faceOuter, in::mm, 6))});
        }
    }
    return problems;
}

Result<std::string> inspectionTable(const TrackPart& part, std::vector<double> radii, double step,
                                    Monitor& monitor) {
    if (radii.empty()) {
        radii = usualRadii(part);
    }
    Problems problems = checkRadii(part, radii);
    const auto steps = turnSteps(step);
    if (!steps) {
        problems.push_back(steps.problems().front());
    }
    if (!problems.empty()) {
        return problems;
    }
    const std::vector<std::string> head = headLines(
        part, "points and outward unit normals of the flank for inspection",
        "exact flank, coordinates rounded to 1e-6 mm, normals to 1e-9",
        {"x, y, z: coordinates of the shaft, z towards the exhaust end, 0 where the roller axis "
         "stands at outer dead centre; radius_mm: distance from the shaft axis; "
         "roller_position_mm: where on the roller it is touched",
         "planar_deviation_um: how far the planar approximation lies outside the exact flank, "
         "along the normal"});
    std::string text = commented(head) +
                       "flank,pattern_angle_deg,radius_mm,polar_angle_deg,x_mm,y_mm,z_mm,normal_x,"
                       "normal_y,normal_z,roller_position_mm,relative_radius_mm,"
                       "planar_deviation_um\r\n";
    const double all = static_cast<double>(part.flanks.size() * steps->size());
    std::size_t done = 0;
    for (const FlankForm& form : part.flanks) {
        for (double phi : *steps) {
            if (done % 256 == 0 &&
                !monitor.step(static_cast<double>(done) / all, LW_TEXT("writing points"))) {
                return Problem{"", LW_TEXT("cancelled")};
            }
            ++done;
            for (double radius : radii) {
                text += row(form, phi, radius);
            }
        }
    }
    return text;
}

} // namespace lobewright::exchange
