#pragma once

#include "core/editing/lift_grips.h"
#include "ui/handles/handle.h"

#include <memory>

namespace lobewright::ui {

/// A bound or knot of a track as a handle of a drawing or a plot, which give it its place and the
/// scale of its axes: the track angle, then the lift or what stands for it, as far as they can be
/// moved.
Handle liftHandle(const std::shared_ptr<const design::Design>& design,
                  const editing::LiftGrip& grip);

} // namespace lobewright::ui
