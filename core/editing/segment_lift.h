#pragma once

#include "core/motion/lift_curve.h"

namespace lobewright::editing {

/// The last segment up to `index` that moves; it sets the lift at the end of `index`. −1 where none
/// does.
inline int movingSegment(const motion::SegmentShape& shape, int index) {
    while (index >= 0 &&
           shape.segments[static_cast<std::size_t>(index)].kind == motion::SegmentKind::dwell)
        --index;
    return index;
}

/// Lift at the end of a segment [m].
inline double endLift(const motion::SegmentShape& shape, int index) {
    const int mover = movingSegment(shape, index);
    if (mover < 0)
        return 0.0;
    const motion::Segment& segment = shape.segments[static_cast<std::size_t>(mover)];
    return segment.endLift.value_or(segment.kind == motion::SegmentKind::rise ? shape.stroke : 0.0);
}

} // namespace lobewright::editing
