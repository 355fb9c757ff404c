#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeValves(Visitor& v, FourStroke& engine) {
    v.integer({.name = "inlet_valves",
               .label = LW_TEXT("Inlet valves"),
               .range = between(1.0, 8.0),
               .help = LW_TEXT("Per cylinder. Default 2.")},
              engine.inletValves);
    v.integer({.name = "exhaust_valves",
               .label = LW_TEXT("Exhaust valves"),
               .range = between(1.0, 8.0),
               .help = LW_TEXT("Per cylinder. Default 2.")},
              engine.exhaustValves);
    v.number({.name = "inlet_seat_to_bore",
              .label = LW_TEXT("Inlet seat diameter divided by bore"),
              .range = between(0.01, 1.0),
              .help = LW_TEXT("Inner seat diameter divided by bore. Default 0.36 (Heywood 1988, "
                              "ch. 6; secondary value, not checked against the printed source).")},
             engine.inletSeat);
    v.number({.name = "exhaust_seat_to_bore",
              .label = LW_TEXT("Exhaust seat diameter divided by bore"),
              .range = between(0.01, 1.0),
              .help = LW_TEXT("Inner seat diameter divided by bore. Default 0.31 (Heywood 1988, "
                              "ch. 6; secondary value, not checked against the printed source).")},
             engine.exhaustSeat);
    v.number({.name = "valve_lift_to_seat",
              .label = LW_TEXT("Valve lift divided by seat diameter"),
              .range = between(0.01, 1.0),
              .help = LW_TEXT("Largest lift divided by inner seat diameter; the lift follows a "
                              "squared sine. Default 0.25.")},
             engine.valveLift);
    v.number(
        {.name = "discharge_coefficient",
         .label = LW_TEXT("Discharge coefficient of the valves"),
         .range = between(0.01, 1.0),
         .help = LW_TEXT(
             "C_d, referred to the curtain or seat area, whichever is smaller. Default 0.65.")},
        engine.dischargeCoefficient);
}

void describeValveEvents(Visitor& v, FourStroke& engine) {
    const auto event = [&v](std::string_view name, TextId label, TextId help, double& angle) {
        v.number({.name = name,
                  .label = label,
                  .unit = in::degrees,
                  .range = between(-85.0, 85.0),
                  .help = help},
                 angle);
    };
    event("inlet_opens_deg", LW_TEXT("Inlet opens"),
          LW_TEXT("Crank degrees before top dead centre. Default 15."), engine.inletOpens);
    event("inlet_closes_deg", LW_TEXT("Inlet closes"),
          LW_TEXT("Crank degrees after bottom dead centre. Default 50."), engine.inletCloses);
    event("exhaust_opens_deg", LW_TEXT("Exhaust opens"),
          LW_TEXT("Crank degrees before bottom dead centre. Default 50."), engine.exhaustOpens);
    event("exhaust_closes_deg", LW_TEXT("Exhaust closes"),
          LW_TEXT("Crank degrees after top dead centre. Default 15."), engine.exhaustCloses);
}

void describeFourStroke(Visitor& v, FourStroke& engine) {
    v.integer({.name = "cylinders",
               .label = LW_TEXT("Cylinders of the four-stroke"),
               .range = between(0.0, 64.0),
               .help = LW_TEXT(
                   "The displacement is that of the design; 0: as many cylinders as it has.")},
              engine.cylinders);
    v.number({.name = "stroke_to_bore",
              .label = LW_TEXT("Stroke/bore ratio"),
              .range = between(0.2, 5.0),
              .help = LW_TEXT("Default 1.")},
             engine.strokeToBore);
    v.number({.name = "compression_ratio",
              .label = LW_TEXT("Compression ratio of the four-stroke"),
              .range = between(1.1, 40.0),
              .help = LW_TEXT("Geometric. Default 10.5.")},
             engine.compressionRatio);
    describeValves(v, engine);
    describeValveEvents(v, engine);
    v.numberOrWord(
        {.name = "burn_start_deg",
         .label = LW_TEXT("Start of combustion of the four-stroke"),
         .unit = in::degrees,
         .range = between(-120.0, 90.0),
         .help = LW_TEXT(
             "Crank degrees from firing top dead centre; \"best-torque\" searches for the highest "
             "net work. Combustion lasts as many degrees of a reciprocation as in the design.")},
        engine.burnStart, {"best-torque", LW_TEXT("MBT timing")}, engine.bestTorque);
}

} // namespace

void describeReference(Visitor& v, Reference& reference) {
    v.number({.name = "rod_ratio",
              .label = LW_TEXT("Crank radius / rod length (r/l)"),
              .range = between(0.01, 0.9),
              .help = LW_TEXT("r/l of all cranks. Default 0.28 (own estimate).")},
             reference.rodRatio);
    v.number({.name = "crank_bearing_fmep_bar",
              .label = LW_TEXT("Friction of the crank bearings"),
              .unit = in::bar,
              .range = between(0.0, 10.0),
              .help = LW_TEXT(
                  "Mean effective pressure lost in the bearings of the pair on cranks. Default "
                  "0.2 bar (own estimate).")},
             reference.crankBearingFmep);
    v.section({.name = "four_stroke", .label = LW_TEXT("Four-stroke")},
              [&] { describeFourStroke(v, reference.fourStroke); });
}

} // namespace lobewright::design
