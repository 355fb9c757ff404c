#include "core/motion/jumps.h"

#include <cassert>
#include <cmath>

namespace lobewright::motion {
namespace {

constexpr double visibleJump = 1e-9;

double derivativeOf(const Lift& lift, int order) {
    return order == 1 ? lift.y1 : order == 2 ? lift.y2 : lift.y3;
}

} // namespace

std::vector<Jump> jumps(const LiftCurve& curve, int derivative) {
    assert(derivative >= 1 && derivative <= 3);
    const double visible = visibleJump * curve.stroke() / std::pow(curve.period(), derivative);
    std::vector<Jump> found;
    for (const Junction& junction : curve.junctions()) {
        const Jump jump{junction.angle, derivativeOf(junction.before, derivative),
                        derivativeOf(junction.after, derivative), junction.segment,
                        junction.insideLaw};
        if (std::abs(jump.change()) > visible)
            found.push_back(jump);
    }
    return found;
}

} // namespace lobewright::motion
