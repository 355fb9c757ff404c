#include "core/motion/knot_influence.h"

#include "core/motion/lift_form.h"
#include "core/units.h"

#include <cassert>

namespace lobewright::motion {

double curvaturePerLift(const KnotShape& shape, int lobes, std::size_t knot) {
    assert(knot < shape.knots.size());
    KnotShape alone = shape;
    for (std::size_t i = 0; i < alone.knots.size(); ++i) {
        alone.knots[i].lift = i == knot ? 1.0 : 0.0;
        if (alone.knots[i].slope)
            alone.knots[i].slope = 0.0;
    }
    const LiftForm form = makeForm(alone, units::turn / lobes).value();
    return form.at(shape.knots[knot].angle, LiftForm::Side::after).y2;
}

} // namespace lobewright::motion
