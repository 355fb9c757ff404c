#include "core/design/catalogue_units.h"

namespace lobewright::design {

namespace {

void describeAdjuster(Visitor& v, mechanism::Adjuster& adjuster) {
    v.number({.name = "helix_lead_mm_per_turn",
              .label = "Helix lead",
              .unit = in::mm,
              .range = between(-5000.0, 5000.0),
              .help = "L: axial travel of the exhaust track for one turn of the adjuster, outward "
                      "positive when turned forward. 0 is a pure phase change."},
             adjuster.helixLead);
    v.number({.name = "setting_deg",
              .label = "Adjuster setting",
              .unit = in::degrees,
              .range = between(-180.0, 180.0),
              .help = "Δ: turns the exhaust track against the inlet track, in shaft degrees; adds "
                      "to the exhaust lead."},
             adjuster.setting);
    v.number({.name = "axial_mm",
              .label = "Axial shift",
              .unit = in::mm,
              .range = between(-500.0, 500.0),
              .presence = Presence::optional,
              .help = "Moves the exhaust track without turning it, outward positive. Default 0."},
             adjuster.axial);
}

void describePiston(Visitor& v, mechanism::PistonGeometry& piston) {
    v.number({.name = "length_mm",
              .label = "Piston length",
              .unit = in::mm,
              .range = between(1.0, 2000.0),
              .help = "From the crown to the end of the skirt."},
             piston.length);
    v.numbers({.name = "ring_distances_mm",
               .label = "Ring distances",
               .range = between(0.0, 12.0),
               .help = "Distance of each piston ring from the crown, in ascending order."},
              {.name = "",
               .label = "Ring distance",
               .unit = in::mm,
               .range = between(0.0, 2000.0),
               .help = "Distance of the upper flank of this piston ring from the crown."},
              piston.ringDistances);
}

void describeRoller(Visitor& v, track::Roller& roller) {
    v.number({.name = "radius_mm",
              .label = "Roller radius",
              .unit = in::mm,
              .range = between(0.5, 1000.0),
              .help = "r: the roller runs on the track with its axis radial to the shaft."},
             roller.radius);
    v.number({.name = "width_mm",
              .label = "Roller width",
              .unit = in::mm,
              .range = between(0.5, 1000.0),
              .help = "b: length of the roller along its axis; its middle stands at the pitch "
                      "radius."},
             roller.width);
    v.number({.name = "crown_radius_mm",
              .label = "Roller crown radius",
              .unit = in::mm,
              .range = between(1.0, 100000.0),
              .help = "Radius of the barrel profile across the width; empty for a cylindrical "
                      "roller."},
             roller.crownRadius);
    v.number({.name = "edge_relief_mm",
              .label = "Edge relief",
              .unit = in::mm,
              .range = between(0.0, 500.0),
              .help = "Width at each edge that carries no load: L = width − 2·relief."},
             roller.edgeRelief);
}

void describePistonMass(Visitor& v, PerEnd<double>& mass) {
    v.number({.name = "inlet",
              .label = "Piston mass, inlet side",
              .unit = in::kg,
              .range = between(0.001, 500.0),
              .help = "Everything that moves with the inlet piston, roller included."},
             mass.inlet);
    v.number({.name = "exhaust",
              .label = "Piston mass, exhaust side",
              .unit = in::kg,
              .range = between(0.001, 500.0),
              .help = "Everything that moves with the exhaust piston, roller included."},
             mass.exhaust);
}

void describeCylinders(Visitor& v, mechanism::Mechanism& m) {
    v.integer({.name = "cylinders",
               .label = "Cylinders",
               .range = between(1.0, 64.0),
               .help = "Number of cylinders around the shaft."},
              m.cylinders);
    const Key angles{.name = "cylinder_angles_deg",
                     .label = "Cylinder angles",
                     .range = between(1.0, 64.0),
                     .help = "Place of each cylinder on the cylinder circle; empty for even "
                             "spacing from 0."};
    const PresenceWords spacing{{Word{"even", "Evenly spaced"}, Word{"listed", "Listed"}}, false};
    const Key angle{.name = "",
                    .label = "Angle of cylinder",
                    .unit = in::degrees,
                    .range = between(-360.0, 360.0),
                    .help = "ψ: place of this cylinder on the cylinder circle."};
    const auto fresh = [&m] { return mechanism::cylinderAngles(m); };
    v.optional(angles, spacing, m.cylinderAngles, fresh,
               [&](std::vector<double>& listed) { v.numbers(angles, angle, listed); });
}

void describeSpaces(Visitor& v, mechanism::Mechanism& m) {
    v.number({.name = "pitch_radius_mm",
              .label = "Pitch radius",
              .unit = in::mm,
              .range = between(2.0, 5000.0),
              .help = "R: radius of the cylinder circle about the shaft axis, where the middle of "
                      "every roller runs."},
             m.pitchRadius);
    v.number({.name = "bore_mm",
              .label = "Bore",
              .unit = in::mm,
              .range = between(2.0, 1000.0),
              .help = "Inner diameter of every cylinder."},
             m.bore);
    v.number({.name = "clearance_mm",
              .label = "Crown clearance",
              .unit = in::mm,
              .range = between(0.01, 1000.0),
              .help = "Gap between the two crowns when both pistons stand at inner dead centre "
                      "without exhaust lead."},
             m.clearance);
    v.number({.name = "recess_cm3",
              .label = "Recess volume",
              .unit = in::cm3,
              .range = between(0.0, 100000.0),
              .help = "Volume of hollows in both crowns together."},
             m.recess);
    v.number({.name = "exhaust_lead_deg",
              .label = "Exhaust lead",
              .unit = in::degrees,
              .range = between(-180.0, 180.0),
              .help = "δ: shaft degrees by which the exhaust piston runs ahead of the inlet "
                      "piston."},
             m.exhaustLead);
}

} // namespace

void describeMechanism(Visitor& v, mechanism::Mechanism& m) {
    describeCylinders(v, m);
    describeSpaces(v, m);
    v.section({.name = "adjuster", .label = "Adjuster"}, [&] { describeAdjuster(v, m.adjuster); });
    const Key piston{.name = "piston",
                     .label = "Piston",
                     .presence = Presence::optional,
                     .help = "Length and rings of the pistons, for the section and the port check; "
                             "may be left out."};
    const PresenceWords given{{Word{"not-given", "Not given"}, Word{"given", "Given"}}, false};
    const auto fresh = [&m] { return mechanism::PistonGeometry{m.bore, {m.bore / 16.0}}; };
    v.optional(piston, given, m.piston, fresh, [&](mechanism::PistonGeometry& geometry) {
        v.section(piston, [&] { describePiston(v, geometry); });
    });
    v.section({.name = "roller", .label = "Roller"}, [&] { describeRoller(v, m.roller); });
    v.section({.name = "piston_mass_kg", .label = "Piston mass"},
              [&] { describePistonMass(v, m.pistonMass); });
    v.flag({.name = "closed_track",
            .label = "Closed track",
            .help = "Yes: a second flank carries the roller on its outer side, so that the track "
                    "can also pull. No: an open track can only push."},
           m.closedTrack);
}

namespace {

void describeRow(Visitor& v, ports::Row& row) {
    v.number({.name = "edge_mm",
              .label = "Inner edge",
              .unit = in::mm,
              .range = between(0.05, 2000.0),
              .help = "Distance of the inner port edge from the crown at outer dead centre, "
                      "measured inward. A larger edge opens earlier."},
             row.edge);
    v.number({.name = "height_mm",
              .label = "Port height",
              .unit = in::mm,
              .range = between(0.05, 2000.0),
              .help = "Height of the port along the cylinder."},
             row.height);
    v.number({.name = "width_mm",
              .label = "Port width",
              .unit = in::mm,
              .range = between(0.05, 1000.0),
              .help = "Chord of one port across the bore."},
             row.width);
    v.integer({.name = "count",
               .label = "Ports in the row",
               .range = between(1.0, 200.0),
               .help = "Number of equal ports around the bore."},
              row.count);
    v.number({.name = "corner_radius_mm",
              .label = "Corner radius",
              .unit = in::mm,
              .range = between(0.0, 500.0),
              .help = "Radius of the four corners of each port."},
             row.cornerRadius);
    v.number({.name = "discharge_coefficient",
              .label = "Discharge coefficient",
              .unit = in::pure,
              .range = between(0.01, 1.0),
              .help = "C_d: effective over geometric area; 0.6 to 0.8 is common practice."},
             row.dischargeCoefficient);
}

void describeSide(Visitor& v, const Key& key, std::vector<ports::Row>& rows) {
    v.list(key, "Row", rows, [&](ports::Row& row) { describeRow(v, row); });
}

} // namespace

void describePorts(Visitor& v, ports::Rows& rows) {
    describeSide(v,
                 {.name = "inlet",
                  .label = "Inlet ports",
                  .range = between(1.0, 20.0),
                  .help = "Rows of ports uncovered by the inlet piston."},
                 rows.inlet);
    describeSide(v,
                 {.name = "exhaust",
                  .label = "Exhaust ports",
                  .range = between(1.0, 20.0),
                  .help = "Rows of ports uncovered by the exhaust piston."},
                 rows.exhaust);
}

} // namespace lobewright::design
