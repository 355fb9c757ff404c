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
    for (Eigen::ArrayXXd* values :
         {&map.pressure, &map.shear, &map.film, &map.filmRatio, &map.slip}) {
        values->resize(map.theta.size(), widths);
    }
    const auto lines = contactAcross(contact, ride, map.rho);
    for (Eigen::Index j = 0; j < widths; ++j) {
        const auto& line = lines[static_cast<std::size_t>(j)];
        map.pressure.col(j) = line.pressure;
        map.film.col(j) = line.film;
        map.slip.col(j) = line.slip;
    }
    map.filmRatio = map.film / contact.roughness;
    map.shear = lineDeepestShear().ratio * map.pressure;
    if (contact.roller.crownRadius) {
        const StationSamples samples = stationSamples(contact, ride);
        const Samples ratio = samples.deepestShear / samples.peakPressure.max(1e-300);
        map.shear = map.pressure.colwise() * ratio;
    }
    return map;
}

} // namespace lobewright::contact
