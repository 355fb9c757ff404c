#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeTurning(Visitor& v, mechanism::Adjuster& adjuster) {
    v.number("helix_lead_mm_per_turn", LW_TEXT("Helix pitch"), in::mm, between(-5000.0, 5000.0),
             adjuster.helixLead,
             LW_TEXT("L: axial travel of the exhaust track per revolution of the adjuster, "
                     "outward positive when turned forward. 0 is a pure phase change."));
    v.number("setting_deg", LW_TEXT("Adjuster setting"), in::degrees, between(-180.0, 180.0),
             adjuster.setting,
             LW_TEXT("Δ: turns the exhaust track against the inlet track, in shaft degrees; adds "
                     "to the exhaust lead."));
}

constexpr Choice<mechanism::Arrangement> arrangements[] = {
    {mechanism::Arrangement::opposed, {"opposed", LW_TEXT("Two pistons against each other")}},
    {mechanism::Arrangement::oneSided, {"one-sided", LW_TEXT("One piston against a head")}},
};

void describeAdjuster(Visitor& v, mechanism::Adjuster& adjuster, bool isOneSided) {
    v.branch(opposed, !isOneSided, [&] { describeTurning(v, adjuster); });
    v.number(
        {.name = "axial_mm",
         .label = LW_TEXT("Axial shift"),
         .unit = in::mm,
         .range = between(-500.0, 500.0),
         .presence = Presence::optional,
         .help = isOneSided
                     ? LW_TEXT("Moves the track without turning it, outward positive. Default 0.")
                     : LW_TEXT("Moves the exhaust track without turning it, outward positive. "
                               "Default 0.")},
        adjuster.axial);
}

void describePiston(Visitor& v, mechanism::PistonGeometry& piston) {
    v.number("length_mm", LW_TEXT("Piston length"), in::mm, between(1.0, 2000.0), piston.length,
             LW_TEXT("From the crown to the end of the skirt."));
    v.number("roller_axis_mm", LW_TEXT("Crown to roller axis"), in::mm, between(1.0, 4000.0),
             piston.rollerAxis,
             LW_TEXT("From the crown to the roller axis; empty: as far as skirt, roller "
                     "and track need."));
    v.numbers({.name = "ring_distances_mm",
               .label = LW_TEXT("Ring distances"),
               .range = between(0.0, 12.0),
               .help = LW_TEXT("Distance of each piston ring from the crown, in ascending order.")},
              {.name = "",
               .label = LW_TEXT("Ring distance"),
               .unit = in::mm,
               .range = between(0.0, 2000.0),
               .help = LW_TEXT("Distance of the upper flank of this piston ring from the crown.")},
              piston.ringDistances);
}

void describeRoller(Visitor& v, track::Roller& roller) {
    v.number("radius_mm", LW_TEXT("Roller radius"), in::mm, between(0.5, 1000.0), roller.radius,
             LW_TEXT("r: the roller runs on the track with its axis radial to the shaft."));
    v.number("width_mm", LW_TEXT("Roller width"), in::mm, between(0.5, 1000.0), roller.width,
             LW_TEXT("b: length of the roller along its axis; its middle stands at the pitch "
                     "radius."));
    v.number(
        "crown_radius_mm", LW_TEXT("Roller crown radius"), in::mm, between(1.0, 100000.0),
        roller.crownRadius,
        LW_TEXT("Radius of the crowned profile across the width; empty for a cylindrical roller."));
    v.number("edge_relief_mm", LW_TEXT("Edge relief"), in::mm, between(0.0, 500.0),
             roller.edgeRelief,
             LW_TEXT("Width at each edge that carries no load: L = width − 2·relief."));
}

void describePistonMass(Visitor& v, PerEnd<double>& mass, bool isOneSided) {
    v.number("inlet",
             isOneSided ? Message(LW_TEXT("Piston mass"))
                        : ofSide(LW_TEXT("Piston mass"), End::inlet),
             in::kg, between(0.001, 500.0), mass.inlet,
             isOneSided ? LW_TEXT("All parts that move with the piston, roller included.")
                        : LW_TEXT("All parts that move with the inlet piston, roller included."));
    v.branch(opposed, !isOneSided, [&] {
        v.number("exhaust", ofSide(LW_TEXT("Piston mass"), End::exhaust), in::kg,
                 between(0.001, 500.0), mass.exhaust,
                 LW_TEXT("All parts that move with the exhaust piston, roller included."));
    });
}

void describeCylinders(Visitor& v, mechanism::Mechanism& m) {
    v.integer("cylinders", LW_TEXT("Cylinders"), between(1.0, 64.0), m.cylinders,
              LW_TEXT("Number of cylinders around the shaft."));
    const Key angles{.name = "cylinder_angles_deg",
                     .label = LW_TEXT("Cylinder angles"),
                     .range = between(1.0, 64.0),
                     .help =
                         LW_TEXT("Place of each cylinder on the cylinder circle; empty for even "
                                 "spacing from 0.")};
    const PresenceWords spacing{
        {Word{"even", LW_TEXT("Evenly spaced")}, Word{"listed", LW_TEXT("Listed")}}, false};
    const Key angle{.name = "",
                    .label = LW_TEXT("Angle of cylinder"),
                    .unit = in::degrees,
                    .range = between(-360.0, 360.0),
                    .help = LW_TEXT("ψ: place of this cylinder on the cylinder circle.")};
    const auto fresh = [&m] { return mechanism::cylinderAngles(m); };
    v.optional(angles, spacing, m.cylinderAngles, fresh,
               [&](std::vector<double>& listed) { v.numbers(angles, angle, listed); });
}

void describeSpaces(Visitor& v, mechanism::Mechanism& m) {
    v.number("pitch_radius_mm", LW_TEXT("Pitch radius"), in::mm, between(2.0, 5000.0),
             m.pitchRadius,
             LW_TEXT("R: radius of the cylinder circle about the shaft axis, where the middle of "
                     "every roller runs."));
    v.number("bore_mm", LW_TEXT("Bore"), in::mm, between(2.0, 1000.0), m.bore,
             LW_TEXT("Inner diameter of every cylinder."));
    v.number("clearance_mm", LW_TEXT("Crown clearance"), in::mm, between(0.01, 1000.0), m.clearance,
             LW_TEXT("Gap between the two crowns with both pistons at inner dead centre "
                     "and no exhaust lead."));
    v.number("recess_cm3", LW_TEXT("Piston bowl volume"), in::cm3, between(0.0, 100000.0), m.recess,
             LW_TEXT("Volume of the bowls in both crowns together."));
    v.branch(opposed, !m.isOneSided(), [&] {
        v.number("exhaust_lead_deg", LW_TEXT("Exhaust lead"), in::degrees, between(-180.0, 180.0),
                 m.exhaustLead,
                 LW_TEXT("δ: shaft degrees by which the exhaust piston runs ahead of the inlet "
                         "piston."));
    });
}

} // namespace

void describeMechanism(Visitor& v, mechanism::Mechanism& m) {
    v.choice<mechanism::Arrangement>(
        {.name = "arrangement",
         .label = LW_TEXT("Arrangement"),
         .presence = Presence::optional,
         .help = LW_TEXT("Two opposed pistons on two tracks, or one piston on one track against a "
                         "fixed flat head: then the inlet track and the inlet piston are the only "
                         "ones, and both rows of ports lie in its way.")},
        arrangements, m.arrangement);
    describeCylinders(v, m);
    describeSpaces(v, m);
    v.section("adjuster", LW_TEXT("Adjuster"),
              [&] { describeAdjuster(v, m.adjuster, m.isOneSided()); });
    const Key piston{
        .name = "piston",
        .label = LW_TEXT("Piston"),
        .presence = Presence::optional,
        .help = LW_TEXT("Length and rings of the pistons, for the section and the port check; "
                        "may be left out.")};
    const PresenceWords given{
        {Word{"not-given", LW_TEXT("Not given")}, Word{"given", LW_TEXT("Given")}}, false};
    const auto fresh = [&m] { return mechanism::PistonGeometry{m.bore, {m.bore / 16.0}}; };
    v.optional(piston, given, m.piston, fresh, [&](mechanism::PistonGeometry& geometry) {
        v.section(piston, [&] { describePiston(v, geometry); });
    });
    v.section("roller", LW_TEXT("Roller"), [&] { describeRoller(v, m.roller); });
    v.section("piston_mass_kg", LW_TEXT("Piston mass"),
              [&] { describePistonMass(v, m.pistonMass, m.isOneSided()); });
    v.flag("closed_track", LW_TEXT("Closed track"), m.closedTrack,
           LW_TEXT("Yes: a second flank carries the roller on its outer side, so that the track "
                   "can also pull. No: an open track can only push."));
}

void describeRow(Visitor& v, ports::Row& row) {
    v.number("edge_mm", LW_TEXT("Inner edge"), in::mm, between(0.05, 2000.0), row.edge,
             LW_TEXT("Distance of the inner port edge from the crown at outer dead centre, "
                     "measured inward. A larger edge opens earlier."));
    v.number("height_mm", LW_TEXT("Port height"), in::mm, between(0.05, 2000.0), row.height,
             LW_TEXT("Height of the port along the cylinder."));
    v.number("width_mm", LW_TEXT("Port width"), in::mm, between(0.05, 1000.0), row.width,
             LW_TEXT("Chord of one port across the bore."));
    v.integer("count", LW_TEXT("Ports in the row"), between(1.0, 200.0), row.count,
              LW_TEXT("Number of equal ports around the bore."));
    v.number("corner_radius_mm", LW_TEXT("Corner radius"), in::mm, between(0.0, 500.0),
             row.cornerRadius, LW_TEXT("Radius of the four corners of each port."));
    v.number(
        "discharge_coefficient", LW_TEXT("Discharge coefficient"), in::pure, between(0.01, 1.0),
        row.dischargeCoefficient,
        LW_TEXT("C_d: effective area divided by geometric area; 0.6 to 0.8 is common practice."));
}

void describePorts(Visitor& v, ports::Rows& rows, bool isOneSided) {
    const auto row = [&v](ports::Row& one) { describeRow(v, one); };
    v.list("inlet", LW_TEXT("Inlet ports"), between(1.0, 20.0),
           isOneSided ? LW_TEXT("Rows of inlet ports uncovered by the piston.")
                      : LW_TEXT("Rows of ports uncovered by the inlet piston."),
           LW_TEXT("Row"), rows.inlet, row);
    v.list("exhaust", LW_TEXT("Exhaust ports"), between(1.0, 20.0),
           isOneSided ? LW_TEXT("Rows of exhaust ports uncovered by the piston.")
                      : LW_TEXT("Rows of ports uncovered by the exhaust piston."),
           LW_TEXT("Row"), rows.exhaust, row);
}

} // namespace lobewright::design
