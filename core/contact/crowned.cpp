#include "core/contact/elliptic_contact.h"
#include "core/contact/stations.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::contact {

namespace {

/// Larger over smaller radius.
Samples radiusRatio(double crown, const Samples& relativeRadius) {
    return (crown / relativeRadius).max(relativeRadius / crown);
}

} // namespace

std::shared_ptr<const CrownTable> crownTable(const RollerOnTrack& contact,
                                             const std::vector<Ride>& rides) {
    double lowest = HUGE_VAL;
    double highest = 1.0;
    for (const Ride& ride : rides) {
        const Samples radius = loadedRadius(contact, ride, contact.pitchRadius);
        const Samples load = bearingLoad(ride, radius);
        for (Eigen::Index i = 0; i < load.size(); ++i) {
            if (load(i) > 0.0) {
                const double ratio = *contact.roller.crownRadius / radius(i);
                lowest = std::min(lowest, std::max(ratio, 1.0 / ratio));
                highest = std::max(highest, std::max(ratio, 1.0 / ratio));
            }
        }
    }
    return std::make_shared<const CrownTable>(std::min(lowest, highest), highest,
                                              contact.poissonRatio);
}

CrownedSamples crownedSamples(const RollerOnTrack& contact, const Samples& load,
                              const Samples& relativeRadius) {
    const double crown = *contact.roller.crownRadius;
    const double twice = 2.0 * contact.modulus; // E'
    const Samples ratio = radiusRatio(crown, relativeRadius);
    const CrownTable::Ellipses ellipse = contact.crown->at(ratio);
    const Samples& k = ellipse.axisRatio;
    const Samples radius = 1.0 / (1.0 / crown + 1.0 / relativeRadius);
    // As pointContact, on whole arrays.
    const Samples shorter = (6.0 * ellipse.secondIntegral * load * radius / (units::pi * twice * k))
                                .unaryExpr([](double cube) { return std::cbrt(cube); });
    const Samples longer = k * shorter;
    const Eigen::Array<bool, Eigen::Dynamic, 1> loaded = load > 0.0;

    CrownedSamples result;
    const Eigen::Array<bool, Eigen::Dynamic, 1> alongRoller = relativeRadius <= crown;
    result.ellipticity = loaded.select(alongRoller.select(k, 1.0 / k), 1.0);
    result.pressure = loaded.select(1.5 * load / (units::pi * shorter * longer).max(1e-300), 0.0);
    result.halfWidth = alongRoller.select(shorter, longer);
    result.halfLength = alongRoller.select(longer, shorter);
    result.shear = ellipse.shearRatio * result.pressure;
    result.depth = ellipse.shearDepth * shorter;

    // An ellipse longer than the roller cannot spread its load further than a straight roller does.
    const double length = contact.loadedWidth();
    const Samples straight = linePeakPressure(load, length, relativeRadius, contact.modulus);
    const Samples strip = lineHalfWidth(load, length, relativeRadius, contact.modulus);
    const Eigen::Array<bool, Eigen::Dynamic, 1> cut =
        2.0 * result.halfLength > length && straight > result.pressure;
    const DeepestShear line = lineDeepestShear();
    result.pressure = cut.select(straight, result.pressure);
    result.halfWidth = cut.select(strip, result.halfWidth);
    result.shear = cut.select(line.ratio * straight, result.shear);
    result.depth = cut.select(line.depth * strip, result.depth);
    return result;
}

} // namespace lobewright::contact
