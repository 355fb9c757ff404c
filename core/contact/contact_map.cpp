#include "core/contact/line_contact.h"
#include "core/contact/stations.h"

#include <cassert>

namespace lobewright::contact {

ContactMap contactMap(const Inputs& inputs, End end, int widths) {
    assert(widths >= 2);
    const Ride ride{inputs.loads.piston[end].lift, inputs.loads.piston[end].contactForce};
    const RollerOnTrack contact = rollerOnTrack(inputs.pair.mechanism(), inputs.materials,
                                                inputs.lubricant, inputs.omega, {ride});
    ContactMap map;
    map.theta = inputs.loads.theta;
    map.rho = Samples::LinSpaced(widths, contact.rho(Station::inner), contact.rho(Station::outer));
    map.pressure.resize(map.theta.size(), widths);

    const Samples middle = loadedRadius(contact, ride, contact.pitchRadius);
    const Samples middleLoad = bearingLoad(ride, middle);
    CrownedSamples ellipse;
    if (contact.roller.crownRadius) {
        ellipse = crownedSamples(contact, middleLoad, (middleLoad > 0.0).select(middle, 1.0));
    }
    for (Eigen::Index j = 0; j < widths; ++j) {
        if (contact.roller.crownRadius) {
            const Samples share =
                (map.rho(j) - contact.pitchRadius) / ellipse.halfLength.max(1e-300);
            map.pressure.col(j) = ellipse.pressure * (1.0 - share.square()).max(0.0).sqrt();
        } else {
            const Samples radius = loadedRadius(contact, ride, map.rho(j));
            const Samples load = bearingLoad(ride, radius);
            map.pressure.col(j) = linePeakPressure(
                load, contact.loadedWidth(), (load > 0.0).select(radius, 1.0), contact.modulus);
        }
    }
    return map;
}

} // namespace lobewright::contact
