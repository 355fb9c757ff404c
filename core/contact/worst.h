#pragma once

#include "core/contact/contact.h"
#include "core/loads/piston.h"

#include <vector>

/// The worst places of straight rollers alone, for studies that ask again and again at other
/// speeds and pressures: what the motion decides is found once.
namespace lobewright::contact {

/// What the motion alone decides of the contact of one roller, over some samples.
struct RollingShape {
    /// On one flank, by station; shape (samples) each.
    struct OnFlank {
        std::array<Samples, 3> curvature; ///< 1/R_rel [1/m]; 0: undercut, bears nothing
        std::array<Samples, 3> film;      ///< ln of the part of the film that motion decides; huge
                                          ///< where there is none
    };
    std::array<OnFlank, 2> flanks; ///< push, pull
    std::array<Samples, 3> slip2;  ///< (slip/ω)² by station [m²]
    double highestSlip2 = 0.0;     ///< of all stations
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
