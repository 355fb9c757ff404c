#include "core/track/surface.h"

#include <cassert>

namespace lobewright::track {

Surface surface(const motion::LiftCurve& curve, const Samples& phi, const Samples& rho,
                double rollerRadius, Flank flank, const Placement& placement) {
    assert(rollerRadius > 0.0);
    const motion::LiftSamples lift = curve.sample(phi);
    const Samples beta = placement.turned - phi;
    const Samples cosBeta = beta.cos(), sinBeta = beta.sin();
    const double up = placement.end == End::inlet ? 1.0 : -1.0;
    const Eigen::Index angles = phi.size();
    Surface result{Eigen::Matrix3Xd(3, angles * rho.size()),
                   Eigen::Matrix3Xd(3, angles * rho.size())};
    for (Eigen::Index station = 0; station < rho.size(); ++station) {
        const double at = rho(station);
        assert(at > 0.0);
        const Samples path = (at * at + lift.y1.square()).sqrt();
        const Samples forward = sign(flank) * lift.y1 / path; // components of the normal
        const Samples inward = sign(flank) * at / path;
        auto points = result.points.middleCols(station * angles, angles);
        points.row(0) = (at * cosBeta + rollerRadius * forward * sinBeta).matrix().transpose();
        points.row(1) = (at * sinBeta - rollerRadius * forward * cosBeta).matrix().transpose();
        points.row(2) =
            (placement.origin + up * (lift.y - rollerRadius * inward)).matrix().transpose();
        auto normals = result.normals.middleCols(station * angles, angles);
        normals.row(0) = (-forward * sinBeta).matrix().transpose();
        normals.row(1) = (forward * cosBeta).matrix().transpose();
        normals.row(2) = (up * inward).matrix().transpose();
    }
    return result;
}

} // namespace lobewright::track
