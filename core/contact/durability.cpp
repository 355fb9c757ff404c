#include "core/contact/durability.h"

#include "core/contact/bearing_life.h"
#include "core/contact/track_materials.h"
#include "core/units.h"

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::contact {

namespace {

RollerLife rollerLife(const Inputs& inputs, End end) {
    const loads::Nodes& nodes = inputs.loads.nodes;
    const loads::PistonLoads& piston = nodes.piston[end];
    const mechanism::Mechanism& mechanism = inputs.pair.mechanism();
    const double radius = mechanism.pitchRadius;
    const Samples path = nodes.weight * (radius * radius + piston.lift.y1.square()).sqrt();

    RollerLife life;
    life.turnsPerShaftTurn =
        inputs.pair.curve(end).lobes() * path.sum() / (units::turn * mechanism.roller.radius);
    life.meanSpeed = life.turnsPerShaftTurn * inputs.omega;
    life.equivalentLoad = equivalentLoad(piston.contactForce, path);
    if (inputs.bearing.dynamicRating && life.equivalentLoad > 0.0) {
        life.ratingLife = ratingLife(*inputs.bearing.dynamicRating, life.equivalentLoad);
        life.life = *life.ratingLife * 1e6 * units::turn / life.meanSpeed;
    }
    const double largest = inputs.loads.highestContactForce[end].value;
    if (inputs.bearing.staticRating && largest > 0.0) {
        life.staticSafety = *inputs.bearing.staticRating / largest;
        life.staticStress = staticStress(*life.staticSafety);
    }
    return life;
}

} // namespace

Result<Allowable> allowable(const Materials& materials) {
    const TrackMaterial* material = findTrackMaterial(materials.track);
    if (materials.allowableStress) {
        return Allowable{*materials.allowableStress,
                         material ? std::optional(material->cycles) : std::nullopt};
    }
    if (!material) {
        return Problem{"/materials/track",
                       Message(LW_TEXT("is \"%1\", which is not in the table of track materials, "
                                       "and no allowable stress is given"),
                               materials.track)};
    }
    return Allowable{material->allowableStress, material->cycles};
}

void addDurability(TrackContact& track, const Inputs& inputs, End end, const Allowable& limit) {
    track.allowableStress = limit.stress;
    if (track.highestPressure) {
        track.safety = limit.stress / track.highestPressure->value;
    }
    constexpr double hour = 3600.0;
    track.passesPerTurn = inputs.pair.mechanism().cylinders;
    const double passesPerSecond = track.passesPerTurn * inputs.omega / units::turn;
    track.passesPerHour = passesPerSecond * hour;
    if (limit.cycles) {
        track.timeToCycles = *limit.cycles / passesPerSecond;
    }
    track.life = rollerLife(inputs, end);
}

Result<double> loadedWidth(const mechanism::Mechanism& mechanism) {
    const double width = mechanism.roller.loadedWidth();
    if (!(width > 0.0)) {
        return Problem{
            "/mechanism/roller/edge_relief_mm",
            Message(
                LW_TEXT("is %1 at each end of a roller %2 wide: no width is left to carry load"),
                Amount(mechanism.roller.edgeRelief, in::mm),
                Amount(mechanism.roller.width, in::mm))};
    }
    return width;
}

} // namespace lobewright::contact
