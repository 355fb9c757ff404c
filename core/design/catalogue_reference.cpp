#include "core/design/catalogue.h"

namespace lobewright::design {

namespace {

void describeValves(Visitor& v, FourStroke& engine) {
    v.integer({.name = "inlet_valves",
               .label = "Inlet valves",
               .range = between(1.0, 8.0),
               .help = "A cylinder. Default 2."},
              engine.inletValves);
    v.integer({.name = "exhaust_valves",
               .label = "Exhaust valves",
               .range = between(1.0, 8.0),
               .help = "A cylinder. Default 2."},
              engine.exhaustValves);
    v.number({.name = "inlet_seat_to_bore",
              .label = "Inlet seat by bore",
              .range = between(0.01, 1.0),
              .help = "Inner seat diameter by bore. Default 0.36 (Heywood 1988, ch. 6, from "
                      "memory)."},
             engine.inletSeat);
    v.number({.name = "exhaust_seat_to_bore",
              .label = "Exhaust seat by bore",
              .range = between(0.01, 1.0),
              .help = "Inner seat diameter by bore. Default 0.31 (Heywood 1988, ch. 6, from "
                      "memory)."},
             engine.exhaustSeat);
    v.number({.name = "valve_lift_to_seat",
              .label = "Valve lift by seat",
              .range = between(0.01, 1.0),
              .help = "Largest lift by inner seat diameter; the lift follows a squared sine. "
                      "Default 0.25."},
             engine.valveLift);
    v.number({.name = "discharge_coefficient",
              .label = "Discharge coefficient of the valves",
              .range = between(0.01, 1.0),
              .help = "C_d by curtain or seat area, whichever is smaller. Default 0.65."},
             engine.dischargeCoefficient);
}

void describeValveEvents(Visitor& v, FourStroke& engine) {
    const auto event = [&v](std::string_view name, std::string_view label, std::string_view help,
                            double& angle) {
        v.number({.name = name,
                  .label = label,
                  .unit = in::degrees,
                  .range = between(-85.0, 85.0),
                  .help = help},
                 angle);
    };
    event("inlet_opens_deg", "Inlet opens", "Crank degrees before top dead centre. Default 15.",
          engine.inletOpens);
    event("inlet_closes_deg", "Inlet closes", "Crank degrees after bottom dead centre. Default 50.",
          engine.inletCloses);
    event("exhaust_opens_deg", "Exhaust opens",
          "Crank degrees before bottom dead centre. Default 50.", engine.exhaustOpens);
    event("exhaust_closes_deg", "Exhaust closes",
          "Crank degrees after top dead centre. Default 15.", engine.exhaustCloses);
}

void describeFourStroke(Visitor& v, FourStroke& engine) {
    v.integer({.name = "cylinders",
               .label = "Cylinders of the four-stroke",
               .range = between(0.0, 64.0),
               .help = "The displacement is that of the design; 0: as many cylinders as it has."},
              engine.cylinders);
    v.number({.name = "stroke_to_bore",
              .label = "Stroke by bore",
              .range = between(0.2, 5.0),
              .help = "Default 1."},
             engine.strokeToBore);
    v.number({.name = "compression_ratio",
              .label = "Compression ratio of the four-stroke",
              .range = between(1.1, 40.0),
              .help = "Geometric. Default 10.5."},
             engine.compressionRatio);
    describeValves(v, engine);
    describeValveEvents(v, engine);
    v.numberOrWord({.name = "burn_start_deg",
                    .label = "Start of burn of the four-stroke",
                    .unit = in::degrees,
                    .range = between(-120.0, 90.0),
                    .help = "Crank degrees from firing top dead centre; \"best-torque\" searches "
                            "for the highest net work. The burn lasts as many degrees of a "
                            "reciprocation as that of the design."},
                   engine.burnStart, {"best-torque", "Best torque"}, engine.bestTorque);
}

} // namespace

void describeReference(Visitor& v, Reference& reference) {
    v.number({.name = "rod_ratio",
              .label = "Crank radius / rod length",
              .range = between(0.01, 0.9),
              .help = "r/l of all cranks. Default 0.28 (own estimate)."},
             reference.rodRatio);
    v.number({.name = "crank_bearing_fmep_bar",
              .label = "Friction of the crank bearings",
              .unit = in::bar,
              .range = between(0.0, 10.0),
              .help = "Mean effective pressure lost in the bearings of the pair on cranks. Default "
                      "0.2 bar (own estimate)."},
             reference.crankBearingFmep);
    v.section({.name = "four_stroke", .label = "Four-stroke"},
              [&] { describeFourStroke(v, reference.fourStroke); });
}

} // namespace lobewright::design
