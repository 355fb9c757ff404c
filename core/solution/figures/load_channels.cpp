#include "core/solution/figures/channels.h"
#include "core/solution/pipeline/stage_results.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void addLoadChannels(ChannelList& list, const StageResults& results) {
    const auto& loads = results.loads;
    for (const End end : results.pair().pistons()) {
        list.add({"contact_force", &in::N, end}, LW_TEXT("Contact force"), "N",
                 loads.piston[end].contactForce);
    }
    for (const End end : results.pair().pistons()) {
        list.add({"side_force", &in::N, end}, LW_TEXT("Side force on the guide"), "F",
                 loads.piston[end].sideForce);
    }
}

void addTorqueChannels(ChannelList& list, const StageResults& results) {
    const auto& loads = results.loads;
    for (const End end : results.pair().pistons()) {
        list.add({"torque", &in::Nm, end}, LW_TEXT("Torque of one piston"), "T",
                 loads.piston[end].torque);
    }
    list.add({"torque_cylinder", &in::Nm}, LW_TEXT("Torque of one cylinder"), "T",
             loads.cylinderTorque);
    list.add({"torque_total", &in::Nm}, LW_TEXT("Torque of all cylinders"), "T", loads.totalTorque);
}

void addForceDetailChannels(ChannelList& list, const StageResults& results) {
    for (const End end : results.pair().pistons()) {
        const auto& piston = results.loads.piston[end];
        list.add({"inertia_force", &in::N, end}, LW_TEXT("Inertia force"), "m·ÿ",
                 piston.inertiaForce);
        list.add({"gas_force", &in::N, end}, LW_TEXT("Gas force"), "F", piston.gasForce);
        list.add({"ring_friction", &in::N, end}, LW_TEXT("Friction of the piston rings"), "F",
                 piston.ringFriction);
        list.add({"demanded_force", &in::N, end}, LW_TEXT("Contact force that the motion demands"),
                 "N", piston.demandedForce);
    }
}

void addThrustChannel(ChannelList& list, const StageResults& results) {
    list.add({"inlet_track_thrust", &in::N}, LW_TEXT("Thrust of all rollers on the track, outward"),
             "F", results.loads.track.inlet.thrust);
}

void addAdjusterChannels(ChannelList& list, const StageResults& results) {
    const auto& track = results.loads.track.exhaust;
    list.add({"exhaust_track_torque", &in::Nm},
             LW_TEXT("Torque of all rollers on the exhaust track"), "T", track.torque);
    list.add({"exhaust_track_thrust", &in::N},
             LW_TEXT("Thrust of all rollers on the exhaust track, outward"), "F", track.thrust);
}

} // namespace lobewright::solution
