#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeTurning(Visitor& v, mechanism::Adjuster& adjuster) {
    v.number(
        {.name = "helix_lead_mm_per_turn",
         .label = LW_TEXT("Helix pitch"),
         .unit = in::mm,
         .range = between(-5000.0, 5000.0),
         .help = LW_TEXT("L: axial travel of the exhaust track per revolution of the adjuster, "
                         "outward positive when turned forward. 0 is a pure phase change.")},
        adjuster.helixLead);
    v.number({.name = "setting_deg",
              .label = LW_TEXT("Adjuster setting"),
              .unit = in::degrees,
              .range = between(-180.0, 180.0),
              .help = LW_TEXT(
                  "Δ: turns the exhaust track against the inlet track, in shaft degrees; adds "
                  "to the exhaust lead.")},
             adjuster.setting);
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
    v.number({.name = "length_mm",
              .label = LW_TEXT("Piston length"),
              .unit = in::mm,
              .range = between(1.0, 2000.0),
              .help = LW_TEXT("From the crown to the end of the skirt.")},
             piston.length);
    v.number({.name = "roller_axis_mm",
              .label = LW_TEXT("Crown to roller axis"),
              .unit = in::mm,
              .range = between(1.0, 4000.0),
              .help = LW_TEXT("From the crown to the roller axis; empty: as far as skirt, roller "
                              "and track need.")},
             piston.rollerAxis);
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
    v.number(
        {.name = "radius_mm",
         .label = LW_TEXT("Roller radius"),
         .unit = in::mm,
         .range = between(0.5, 1000.0),
         .help = LW_TEXT("r: the roller runs on the track with its axis radial to the shaft.")},
        roller.radius);
    v.number(
        {.name = "width_mm",
         .label = LW_TEXT("Roller width"),
         .unit = in::mm,
         .range = between(0.5, 1000.0),
         .help = LW_TEXT("b: length of the roller along its axis; its middle stands at the pitch "
                         "radius.")},
        roller.width);
    v.number(
        {.name = "crown_radius_mm",
         .label = LW_TEXT("Roller crown radius"),
         .unit = in::mm,
         .range = between(1.0, 100000.0),
         .help = LW_TEXT(
             "Radius of the crowned profile across the width; empty for a cylindrical roller.")},
        roller.crownRadius);
    v.number({.name = "edge_relief_mm",
              .label = LW_TEXT("Edge relief"),
              .unit = in::mm,
              .range = between(0.0, 500.0),
              .help = LW_TEXT("Width at each edge that carries no load: L = width − 2·relief.")},
             roller.edgeRelief);
}

void describePistonMass(Visitor& v, PerEnd<double>& mass, bool isOneSided) {
    v.number({.name = "inlet",
              .label = isOneSided ? Message(LW_TEXT("Piston mass"))
                                  : ofSide(LW_TEXT("Piston mass"), End::inlet),
              .unit = in::kg,
              .range = between(0.001, 500.0),
              .help = isOneSided
                          ? LW_TEXT("All parts that move with the piston, roller included.")
                          : LW_TEXT("All parts that move with the inlet piston, roller included.")},
             mass.inlet);
    v.branch(opposed, !isOneSided, [&] {
        v.number({.name = "exhaust",
                  .label = ofSide(LW_TEXT("Piston mass"), End::exhaust),
                  .unit = in::kg,
                  .range = between(0.001, 500.0),
                  .help = LW_TEXT("All parts that move with the exhaust piston, roller included.")},
                 mass.exhaust);
    });
}

void describeCylinders(Visitor& v, mechanism::Mechanism& m) {
    v.integer({.name = "cylinders",
               .label = LW_TEXT("Cylinders"),
               .range = between(1.0, 64.0),
               .help = LW_TEXT("Number of cylinders around the shaft.")},
              m.cylinders);
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
    v.number({.name = "pitch_radius_mm",
              .label = LW_TEXT("Pitch radius"),
              .unit = in::mm,
              .range = between(2.0, 5000.0),
              .help = LW_TEXT(
                  "R: radius of the cylinder circle about the shaft axis, where the middle of "
                  "every roller runs.")},
             m.pitchRadius);
    v.number({.name = "bore_mm",
              .label = LW_TEXT("Bore"),
              .unit = in::mm,
              .range = between(2.0, 1000.0),
              .help = LW_TEXT("Inner diameter of every cylinder.")},
             m.bore);
    v.number({.name = "clearance_mm",
              .label = LW_TEXT("Crown clearance"),
              .unit = in::mm,
              .range = between(0.01, 1000.0),
              .help = LW_TEXT("Gap between the two crowns with both pistons at inner dead centre "
                              "and no exhaust lead.")},
             m.clearance);
    v.number({.name = "recess_cm3",
              .label = LW_TEXT("Piston bowl volume"),
              .unit = in::cm3,
              .range = between(0.0, 100000.0),
              .help = LW_TEXT("Volume of the bowls in both crowns together.")},
             m.recess);
    v.branch(opposed, !m.isOneSided(), [&] {
        v.number(
            {.name = "exhaust_lead_deg",
             .label = LW_TEXT("Exhaust lead"),
             .unit = in::degrees,
             .range = between(-180.0, 180.0),
             .help = LW_TEXT("δ: shaft degrees by which the exhaust piston runs ahead of the inlet "
                             "piston.")},
            m.exhaustLead);
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
    v.section({.name = "adjuster", .label = LW_TEXT("Adjuster")},
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
    v.section({.name = "roller", .label = LW_TEXT("Roller")}, [&] { describeRoller(v, m.roller); });
    v.section({.name = "piston_mass_kg", .label = LW_TEXT("Piston mass")},
              [&] { describePistonMass(v, m.pistonMass, m.isOneSided()); });
    v.flag({.name = "closed_track",
            .label = LW_TEXT("Closed track"),
            .help = LW_TEXT(
                "Yes: a second flank carries the roller on its outer side, so that the track "
                "can also pull. No: an open track can only push.")},
           m.closedTrack);
}

void describeRow(Visitor& v, ports::Row& row) {
    v.number(
        {.name = "edge_mm",
         .label = LW_TEXT("Inner edge"),
         .unit = in::mm,
         .range = between(0.05, 2000.0),
         .help = LW_TEXT("Distance of the inner port edge from the crown at outer dead centre, "
                         "measured inward. A larger edge opens earlier.")},
        row.edge);
    v.number({.name = "height_mm",
              .label = LW_TEXT("Port height"),
              .unit = in::mm,
              .range = between(0.05, 2000.0),
              .help = LW_TEXT("Height of the port along the cylinder.")},
             row.height);
    v.number({.name = "width_mm",
              .label = LW_TEXT("Port width"),
              .unit = in::mm,
              .range = between(0.05, 1000.0),
              .help = LW_TEXT("Chord of one port across the bore.")},
             row.width);
    v.integer({.name = "count",
               .label = LW_TEXT("Ports in the row"),
               .range = between(1.0, 200.0),
               .help = LW_TEXT("Number of equal ports around the bore.")},
              row.count);
    v.number({.name = "corner_radius_mm",
              .label = LW_TEXT("Corner radius"),
              .unit = in::mm,
              .range = between(0.0, 500.0),
              .help = LW_TEXT("Radius of the four corners of each port.")},
             row.cornerRadius);
    v.number({.name = "discharge_coefficient",
              .label = LW_TEXT("Discharge coefficient"),
              .unit = in::pure,
              .range = between(0.01, 1.0),
              .help = LW_TEXT(
                  "C_d: effective area divided by geometric area; 0.6 to 0.8 is common practice.")},
             row.dischargeCoefficient);
}

namespace {

void describeSide(Visitor& v, const Key& key, std::vector<ports::Row>& rows) {
    v.list(key, LW_TEXT("Row"), rows, [&](ports::Row& row) { describeRow(v, row); });
}

} // namespace

void describePorts(Visitor& v, ports::Rows& rows, bool isOneSided) {
    describeSide(v,
                 {.name = "inlet",
                  .label = LW_TEXT("Inlet ports"),
                  .range = between(1.0, 20.0),
                  .help = isOneSided ? LW_TEXT("Rows of inlet ports uncovered by the piston.")
                                     : LW_TEXT("Rows of ports uncovered by the inlet piston.")},
                 rows.inlet);
    describeSide(v,
                 {.name = "exhaust",
                  .label = LW_TEXT("Exhaust ports"),
                  .range = between(1.0, 20.0),
                  .help = isOneSided ? LW_TEXT("Rows of exhaust ports uncovered by the piston.")
                                     : LW_TEXT("Rows of ports uncovered by the exhaust piston.")},
                 rows.exhaust);
}

} // namespace lobewright::design
