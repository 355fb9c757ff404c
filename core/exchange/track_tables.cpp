#include "core/exchange/track_tables.h"

#include "core/exchange/chord.h"
#include "core/exchange/track_text.h"
#include "core/exchange/turn_steps.h"
#include "core/track/cutter_path.h"
#include "core/track/undercut.h"
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

const Problem cancelled{"", LW_TEXT("cancelled")};

Samples toSamples(const std::vector<double>& values) {
    return Eigen::Map<const Samples>(values.data(), static_cast<Eigen::Index>(values.size()));
}

/// Rows between two looks at the monitor.
constexpr auto stride = 512;

Problems checkCutter(const TrackPart& part, double cutterRadius) {
    const auto problem = [&](const Message& rule) {
        return Problems{
            {"/cutter_radius_mm", Message(LW_TEXT("the cutter radius is %1; it must %2"),
                                          Amount(cutterRadius, in::mm, 6), rule)}};
    };
    if (!(cutterRadius > 0.0) || !std::isfinite(cutterRadius)) {
        return problem(LW_TEXT("be positive"));
    }
    if (part.isClosed() && cutterRadius > part.roller.radius) {
        return problem(Message(
            LW_TEXT(
                "not exceed the roller radius, %1, to fit between the flanks of a closed track"),
            Amount(part.roller.radius, in::mm, 6)));
    }
    for (const FlankForm& form : part.flanks) {
        const auto limit =
            track::largestCutterRadius(form.curve, part.pitchRadius, part.roller, form.flank);
        if (limit && cutterRadius >= limit->value) {
            return problem(Message(LW_TEXT("be less than %1, or it gouges the hollow stretch of "
                                           "the %2 flank at pattern angle %3"),
                                   Amount(limit->value, in::mm, 6), word(form.flank),
                                   Amount(limit->place.phi, in::degrees)));
        }
    }
    return {};
}

/// Axis of the cutter in the developed pitch cylinder: arc at R and axial [m].
Eigen::Vector2d developed(const TrackPart& part, const FlankForm& form, double cutterRadius,
                          double phi) {
    const auto path =
        track::cutterPath(form.curve, Samples::Constant(1, phi), part.pitchRadius,
                          part.roller.radius, cutterRadius, form.flank, form.placement);
    return {path->polarAngle(0) * part.pitchRadius, path->axial(0)};
}

std::vector<double> cutterAngles(const TrackPart& part, const FlankForm& form,
                                 const CutterTableOptions& options) {
    if (options.step) {
        return *closedTurn(*options.step);
    }
    const auto curve = [&](double phi) { return developed(part, form, options.cutterRadius, phi); };
    return chordParameters(stretchBounds(form.curve, 0.0, units::turn), curve, options.tolerance);
}

std::string deviationLine(const FlankForm& form, const track::CutterDeviations& edges) {
    const auto range = [](const track::CutterDeviation& edge) {
        return fmt::format("{:+.3f} to {:+.3f} um at {:.6g} mm", edge.least / micrometre,
                           edge.most / micrometre, edge.rho / millimetre);
    };
    return fmt::format("Left by this cutter on the {} flank (material left positive, gouged "
                       "negative): {}; {}; {}",
                       word(form.flank).text, range(edges.inner), range(edges.middle),
                       range(edges.outer));
}

} // namespace

Result<std::string> liftTable(const TrackPart& part, double step, Monitor& monitor) {
    const auto steps = closedTurn(step);
    if (!steps) {
        return steps.problems();
    }
    const Samples phi = toSamples(*steps);
    Samples places = phi;
    places.tail(1) = phi.head(1); // exactly the first row again, junction or not
    const motion::LiftSamples lift = part.curve().sample(places);
    std::string text = commented(
        headLines(part,
                  "lift of the roller axis from outer dead centre, with its derivatives, over one "
                  "turn, the first row repeated at 360 degrees; at a junction the derivatives "
                  "after it",
                  "lift rounded to 1e-6 mm"));
    text += "pattern_angle_deg,lift_mm,velocity_mm_per_deg,acceleration_mm_per_deg2,"
            "jerk_mm_per_deg3\r\n";
    auto out = std::back_inserter(text);
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        if (i % stride == 0 &&
            !monitor.step(static_cast<double>(i) / static_cast<double>(phi.size()),
                          LW_TEXT("writing rows"))) {
            return cancelled;
        }
        fmt::format_to(out, "{:.9g},{:.6f},{:.9g},{:.9g},{:.9g}\r\n", phi(i) / degree,
                       lift.y(i) / millimetre, lift.y1(i) / millimetre * degree,
                       lift.y2(i) / millimetre * degree * degree,
                       lift.y3(i) / millimetre * degree * degree * degree);
    }
    return text;
}

Result<std::string> cutterTable(const TrackPart& part, const CutterTableOptions& options,
                                Monitor& monitor) {
    Problems problems = checkCutter(part, options.cutterRadius);
    if (const auto steps = turnSteps(options.step.value_or(units::degree)); !steps) {
        problems.push_back(steps.problems().front());
    }
    if (!problems.empty()) {
        return problems;
    }
    std::vector<std::string> head = headLines(
        part,
        fmt::format("path of a cylindrical cutter of radius {:.6g} mm, its axis radial to the "
                    "shaft, over one turn; the last row of each flank closes the path",
                    options.cutterRadius / millimetre),
        options.step ? fmt::format("rows every {:.6g} degrees of pattern angle, rounded to 1e-6",
                                   *options.step / degree)
                     : fmt::format("straight lines between rows stay within {:.6g} um of the path "
                                   "at the pitch radius",
                                   options.tolerance / micrometre),
        {"rotary_angle_deg: polar angle of the cutter's axis on the part, counted in the "
         "direction of rotation; axial_mm: along the shaft towards the exhaust end, 0 "
         "where the roller axis stands at outer dead centre",
         "offset_mm: how far the axis stands ahead of the roller's, at the pitch radius; the "
         "rotary "
         "angle contains it already"});
    std::string rows;
    double done = 0.0;
    for (const FlankForm& form : part.flanks) {
        if (!monitor.step(done, LW_TEXT("judging the cutter"))) {
            return cancelled;
        }
        const auto edges = track::cutterDeviations(form.curve, part.pitchRadius, part.roller,
                                                   options.cutterRadius, form.flank);
        head.push_back(deviationLine(form, *edges));
        if (!monitor.step(done + 0.25, LW_TEXT("placing the cutter"))) {
            return cancelled;
        }
        const Samples phi = toSamples(cutterAngles(part, form, options));
        const auto path = track::cutterPath(form.curve, phi, part.pitchRadius, part.roller.radius,
                                            options.cutterRadius, form.flank, form.placement);
        auto out = std::back_inserter(rows);
        for (Eigen::Index i = 0; i < phi.size(); ++i) {
            const double ahead = path->polarAngle(i) - form.placement.polarAngle(phi(i));
            fmt::format_to(out, "{},{:.9g},{:.6f},{:.6f},{:.6f}\r\n", word(form.flank).text,
                           phi(i) / degree, path->polarAngle(i) / degree,
                           path->axial(i) / millimetre,
                           part.pitchRadius * std::tan(ahead) / millimetre);
        }
        done += 0.5;
    }
    return commented(head) + "flank,pattern_angle_deg,rotary_angle_deg,axial_mm,offset_mm\r\n" +
           rows;
}

} // namespace lobewright::exchange
