#include "core/editing/knot_edits.h"
#include "core/editing/tidy.h"
#include "core/units.h"
#include "ui/handles/lift_handle.h"
#include "ui/scene/tracks/unrolled_tracks.h"

#include <QCoreApplication>
#include <fmt/format.h>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TrackHandles)
};

double inDegrees(double radians) {
    // Spans come from decimal files; without rounding they would show and store stray digits.
    return editing::tidy(radians / units::degree);
}

HandleAxis angleAxis(const UnrolledFrame& frame, double value, double limit) {
    HandleAxis axis;
    axis.label = Words::tr("ahead by");
    axis.unit = QString(QChar(0x00B0));
    axis.value = value;
    axis.min = std::min(-limit, value);
    axis.max = std::max(limit, value);
    axis.snap = 0.5;
    axis.fine = 0.05;
    // The further ahead, the earlier its lobes meet the rollers.
    axis.perUnit = QPointF(-frame.pixelsPerRadian() * units::degree, 0.0);
    return axis;
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

} // namespace

std::vector<Handle> patternHandles(const ShownEngine& engine, const UnrolledFrame& frame, End end) {
    std::vector<Handle> handles;
    for (const editing::LiftGrip& grip :
         editing::liftGrips(engine.design(), editing::patternEnd(engine.design(), end))) {
        Handle handle = liftHandle(engine.sharedDesign(), grip);
        handle.mark = Handle::Mark::dot;
        const QPointF scales[] = {
            {frame.pixelsPerRadian() * units::degree, 0.0},
            {0.0, UnrolledFrame::inward(end) * frame.scale() * units::millimetre}};
        for (std::size_t i = 0; i < handle.axes.size(); ++i)
            handle.axes[i].perUnit = scales[grip.movesAngle ? i : 1];
        repeatOverLobes(handles, engine, frame, end, handle, grip.angle * units::degree);
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
    HandleAxis axis = angleAxis(frame, inDegrees(engine.design().mechanism.exhaustLead), limit);
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
