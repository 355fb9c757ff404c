#include "core/editing/knot_edits.h"
#include "core/editing/tidy.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/scene/tracks/unrolled_tracks.h"

#include <QCoreApplication>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double leastSpan = 0.5; ///< a bound or knot stays this far from its neighbours [°]

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TrackHandles)
};

double inDegrees(double radians) {
    // Spans come from decimal files; without rounding they would show and store stray digits.
    return editing::tidy(radians / units::degree);
}

HandleAxis angleAxis(const UnrolledFrame& frame, double value, double min, double max) {
    HandleAxis axis;
    axis.label = Words::tr("track angle");
    axis.unit = QString(QChar(0x00B0));
    axis.value = value;
    axis.min = std::min(min, value);
    axis.max = std::max(max, value);
    axis.snap = 0.5;
    axis.fine = 0.05;
    axis.decimals = 2;
    axis.perUnit = QPointF(frame.pixelsPerRadian() * units::degree, 0.0);
    return axis;
}

HandleAxis liftAxis(const UnrolledFrame& frame, End end, double value, double min, double max) {
    HandleAxis axis;
    axis.label = Words::tr("lift");
    axis.unit = QStringLiteral("mm");
    axis.value = value;
    axis.min = min;
    axis.max = max;
    axis.snap = 0.5;
    axis.fine = 0.02;
    axis.perUnit = QPointF(0.0, UnrolledFrame::inward(end) * frame.scale() * units::millimetre);
    return axis;
}

QString trackName(const ShownEngine& engine, End end) {
    return coreText(editing::trackLabel(engine.design(), end));
}

// Handles of a bound sit on the curve in every lobe; the keyboard meets only the first.
void repeatOverLobes(std::vector<Handle>& handles, const ShownEngine& engine,
                     const UnrolledFrame& frame, End end, const Handle& first, double phi) {
    const auto& curve = engine.pair().curve(end);
    bool primary = true;
    for (int lobe = -1; lobe <= curve.lobes(); ++lobe) {
        const double u = phi + lobe * curve.period() - frame.lead(end);
        if (u < -1e-9 || u > units::turn + 1e-9)
            continue;
        Handle handle = first;
        handle.at = frame.axisPoint(end, u);
        handle.inTabOrder = primary;
        if (!primary)
            handle.key = fmt::format("{}#{}", first.key, lobe);
        primary = false;
        handles.push_back(handle);
    }
}

Handle boundHandle(const ShownEngine& engine, const UnrolledFrame& frame, End end,
                   const motion::SegmentShape& shape, std::size_t k, double start) {
    const auto& before = shape.segments[k];
    const auto& after = shape.segments[k + 1];
    const std::string track =
        fmt::format("/tracks/{}", name(editing::patternEnd(engine.design(), end)));
    const auto spanPath = [&](std::size_t i) {
        return fmt::format("{}/segments/{}/span_deg", track, i);
    };
    Handle handle;
    handle.key = spanPath(k);
    handle.label = Words::tr("%1, boundary %2").arg(trackName(engine, end)).arg(k + 1);
    const double from = inDegrees(start), both = inDegrees(before.span + after.span);
    const double value = inDegrees(start + before.span);
    handle.axes.push_back(angleAxis(frame, value, from + leastSpan, from + both - leastSpan));
    std::string liftPath;
    if (before.kind == motion::SegmentKind::rise) {
        liftPath =
            before.endLift ? fmt::format("{}/segments/{}/lift_mm", track, k) : track + "/stroke_mm";
        const double lift = before.endLift.value_or(shape.stroke) / units::millimetre;
        const double top = before.endLift ? shape.stroke / units::millimetre : 2000.0;
        handle.axes.push_back(liftAxis(frame, end, lift, 0.5, top));
    }
    handle.edit = [=, spans = std::pair(spanPath(k), spanPath(k + 1)),
                   which = trackName(engine, end)](const std::vector<double>& values) {
        Edit edit;
        edit.text =
            Words::tr("Move boundary at %1° (%2)").arg(value, 0, 'f', 1).arg(which.toLower());
        if (values[0] != value) {
            const double span = editing::tidy(values[0] - from);
            edit.changes = {{spans.first, span}, {spans.second, editing::tidy(both - span)}};
        }
        if (values.size() > 1)
            edit.changes.push_back({liftPath, editing::tidy(values[1])});
        return edit;
    };
    return handle;
}

Handle knotHandle(const ShownEngine& engine, const UnrolledFrame& frame, End end,
                  const motion::KnotShape& shape, std::size_t i) {
    const auto& knots = shape.knots;
    const End source = editing::patternEnd(engine.design(), end);
    const std::string path = fmt::format("/tracks/{}/knots/{}", name(source), i);
    Handle handle;
    handle.key = path;
    handle.label = Words::tr("%1, knot %2").arg(trackName(engine, end)).arg(i + 1);
    const double period = inDegrees(engine.pair().curve(end).period());
    const double low = i == 0 ? 0.0 : inDegrees(knots[i - 1].angle) + leastSpan;
    const double high =
        i + 1 < knots.size() ? inDegrees(knots[i + 1].angle) - leastSpan : period - leastSpan;
    handle.axes = {angleAxis(frame, inDegrees(knots[i].angle), low, high),
                   liftAxis(frame, end, knots[i].lift / units::millimetre, -2000.0, 2000.0)};
    const double shift = editing::knotShift(engine.design(), end) / units::millimetre;
    if (std::abs(shift) >= 0.005) {
        handle.axes[1].note = [shift, axis = handle.axes[1]](double lift) {
            return Words::tr(", plotted %1").arg(shownValue(axis, lift + shift));
        };
    }
    handle.edit = [path, which = trackName(engine, end),
                   at = inDegrees(knots[i].angle)](const std::vector<double>& values) {
        return Edit{Words::tr("Move knot at %1° (%2)").arg(at, 0, 'f', 1).arg(which.toLower()),
                    {{path + "/angle_deg", editing::tidy(values[0])},
                     {path + "/lift_mm", editing::tidy(values[1])}},
                    {},
                    {}};
    };
    handle.removal = [design = engine.design(), source, index = static_cast<int>(i)] {
        return editing::removeKnot(design, source, index);
    };
    return handle;
}

} // namespace

std::vector<Handle> patternHandles(const ShownEngine& engine, const UnrolledFrame& frame, End end) {
    std::vector<Handle> handles;
    const auto& shape = engine.design().tracks[end].shape;
    if (const auto* segments = std::get_if<motion::SegmentShape>(&shape)) {
        double start = 0.0;
        for (std::size_t k = 0; k + 1 < segments->segments.size(); ++k) {
            const Handle first = boundHandle(engine, frame, end, *segments, k, start);
            start += segments->segments[k].span;
            repeatOverLobes(handles, engine, frame, end, first, start);
        }
    } else if (const auto* knots = std::get_if<motion::KnotShape>(&shape)) {
        for (std::size_t i = 0; i < knots->knots.size(); ++i) {
            repeatOverLobes(handles, engine, frame, end, knotHandle(engine, frame, end, *knots, i),
                            knots->knots[i].angle);
        }
    }
    if (editing::patternEnd(engine.design(), end) != end) {
        // The pattern of the inlet track once more: whoever pulls here sees that both move.
        for (Handle& handle : handles) {
            handle.key += "@exhaust";
            handle.inTabOrder = false;
        }
    }
    return handles;
}

Handle leadHandle(const ShownEngine& engine, const UnrolledFrame& frame) {
    Handle handle;
    handle.key = "/mechanism/exhaust_lead_deg";
    handle.label = Words::tr("Exhaust lead");
    handle.atRest = true;
    const double half = std::min(60.0, 0.2 * (frame.right() - frame.left()));
    // Half a turn of the exhaust pattern: the bar slides along with the track.
    const double middle = std::clamp(frame.x(0.5 * units::turn - frame.lead(End::exhaust)),
                                     frame.left() + half, frame.right() - half);
    const double y = frame.blankFace(End::exhaust) - 5.0;
    handle.grip = QLineF(middle - half, y, middle + half, y);
    handle.at = handle.grip.center();
    const double limit = 180.0 / engine.pair().cyclesPerTurn();
    HandleAxis axis =
        angleAxis(frame, inDegrees(engine.design().mechanism.exhaustLead), -limit, limit);
    axis.label = Words::tr("ahead by");
    axis.perUnit = -axis.perUnit; // the further ahead, the earlier its lobes meet the rollers
    const double setting = inDegrees(engine.design().mechanism.adjuster.setting);
    if (setting != 0.0) {
        axis.note = [setting, axis](double lead) {
            return Words::tr("\n+ adjuster %1 = %2 in total")
                .arg(shownValue(axis, setting), shownValue(axis, lead + setting));
        };
    }
    handle.axes = {axis};
    handle.edit = [](const std::vector<double>& values) {
        return Edit{Words::tr("Change exhaust lead"),
                    {{"/mechanism/exhaust_lead_deg", editing::tidy(values[0])}},
                    {},
                    {}};
    };
    return handle;
}

} // namespace lobewright::ui
