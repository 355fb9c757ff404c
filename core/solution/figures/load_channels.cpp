#include "core/solution/figures/channels.h"
#include "core/solution/pipeline/stage_results.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void addLoadChannels(ChannelList& list, const StageResults& results) {
    const auto& loads = results.loads;
    for (const End end : results.pair().pistons()) {
        list.add(std::string("contact_force_") + name(end) + "_N",
                 ofSide(LW_TEXT("Contact force"), end), "N", "N", loads.piston[end].contactForce);
    }
    for (const End end : results.pair().pistons()) {
        list.add(std::string("side_force_") + name(end) + "_N",
                 ofSide(LW_TEXT("Side force on the guide"), end), "F", "N",
                 loads.piston[end].sideForce);
    }
}

void addTorqueChannels(ChannelList& list, const StageResults& results) {
    const auto& loads = results.loads;
    for (const End end : results.pair().pistons()) {
        const std::string side = name(end);
        list.add("torque_" + side + "_Nm", ofSide(LW_TEXT("Torque of one piston"), end), "T", "N·m",
                 loads.piston[end].torque);
    }
    list.add("torque_cylinder_Nm", LW_TEXT("Torque of one cylinder"), "T", "N·m",
             loads.cylinderTorque);
    list.add("torque_total_Nm", LW_TEXT("Torque of all cylinders"), "T", "N·m", loads.totalTorque);
}

void addForceDetailChannels(ChannelList& list, const StageResults& results) {
    for (const End end : results.pair().pistons()) {
        const std::string side = name(end);
        const auto& piston = results.loads.piston[end];
        list.add("inertia_force_" + side + "_N", ofSide(LW_TEXT("Inertia force"), end), "m·ÿ", "N",
                 piston.inertiaForce);
        list.add("gas_force_" + side + "_N", ofSide(LW_TEXT("Gas force"), end), "F", "N",
                 piston.gasForce);
        list.add("ring_friction_" + side + "_N",
                 ofSide(LW_TEXT("Friction of the piston rings"), end), "F", "N",
                 piston.ringFriction);
        list.add("demanded_force_" + side + "_N",
                 ofSide(LW_TEXT("Contact force that the motion demands"), end), "N", "N",
                 piston.demandedForce);
    }
}

void addThrustChannel(ChannelList& list, const StageResults& results) {
    list.add("inlet_track_thrust_N", LW_TEXT("Thrust of all rollers on the track, outward"), "F",
             "N", results.loads.track.inlet.thrust);
}

void addAdjusterChannels(ChannelList& list, const StageResults& results) {
    const auto& track = results.loads.track.exhaust;
    list.add("exhaust_track_torque_Nm", LW_TEXT("Torque of all rollers on the exhaust track"), "T",
             "N·m", track.torque);
    list.add("exhaust_track_thrust_N",
             LW_TEXT("Thrust of all rollers on the exhaust track, outward"), "F", "N",
             track.thrust);
}

} // namespace lobewright::solution
