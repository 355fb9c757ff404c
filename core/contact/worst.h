#pragma once

#include "core/contact/contact.h"
#include "core/loads/piston.h"

#include <vector>

/// The worst places of straight rollers alone, for studies that ask again and again at other
/// speeds and pressures: what the motion decides is found once.
namespace lobewright::contact {

/// What the motion alone decides of the contact of one roller, over some samples.
struct RollingShape {
    /// The worst of the stations at each sample, and which it is: the load, the same for all three,
    /// does not change that.
    struct AtWorst {
        Samples value;
        std::vector<Station> station;
    };
    /// On one flank.
    struct OnFlank {
        AtWorst curvature;     ///< largest 1/R_rel [1/m]; 0: undercut, bears nothing
        AtWorst slipCurvature; ///< largest (slip/ω)²/R_rel [m]
        /// Least load that would press the film down to a given one, as far as motion decides it;
        /// infinite where there is no film.
        AtWorst filmLoad;
    };
    std::array<OnFlank, 2> flanks; ///< push, pull
    double highestSlip2 = 0.0;     ///< (slip/ω)² of all stations [m²]
    Eigen::Index highestSlipSample = 0;
    Station highestSlipStation = Station::inner;
};
RollingShape rollingShape(const mechanism::Mechanism& mechanism, const motion::LiftSamples& lift);

/// Of one end: at the angles that the loads are known at, and just before every junction.
struct EndShapes {
    RollingShape samples, edges;
};

/// solveContact() without its samples, undercut and truncation: only what figures are made of.
/// shapes: of the pistons of `inputs.loads`, whose rollers are straight. Errors as solveContact().
Result<Contact> worstContact(const Inputs& inputs, const PerEnd<EndShapes>& shapes);

} // namespace lobewright::contact
