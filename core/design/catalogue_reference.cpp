#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeValves(Visitor& v, FourStroke& engine) {
    v.integer("inlet_valves", LW_TEXT("Inlet valves"), between(1.0, 8.0), engine.inletValves,
              LW_TEXT("Per cylinder. Default 2."));
    v.integer("exhaust_valves", LW_TEXT("Exhaust valves"), between(1.0, 8.0), engine.exhaustValves,
              LW_TEXT("Per cylinder. Default 2."));
    v.number("inlet_seat_to_bore", LW_TEXT("Inlet seat diameter divided by bore"), in::pure,
             between(0.01, 1.0), engine.inletSeat,
             LW_TEXT("Inner seat diameter divided by bore. Default 0.36 (Heywood 1988, "
                     "ch. 6; secondary value, not checked against the printed source)."));
    v.number("exhaust_seat_to_bore", LW_TEXT("Exhaust seat diameter divided by bore"), in::pure,
             between(0.01, 1.0), engine.exhaustSeat,
             LW_TEXT("Inner seat diameter divided by bore. Default 0.31 (Heywood 1988, "
                     "ch. 6; secondary value, not checked against the printed source)."));
    v.number("valve_lift_to_seat", LW_TEXT("Valve lift divided by seat diameter"), in::pure,
             between(0.01, 1.0), engine.valveLift,
             LW_TEXT("Largest lift divided by inner seat diameter; the lift follows a "
                     "squared sine. Default 0.25."));
    v.number(
        "discharge_coefficient", LW_TEXT("Discharge coefficient of the valves"), in::pure,
        between(0.01, 1.0), engine.dischargeCoefficient,
        LW_TEXT("C_d, referred to the curtain or seat area, whichever is smaller. Default 0.65."));
}

constexpr Range valveAngles = between(-85.0, 85.0);

void describeValveEvents(Visitor& v, FourStroke& engine) {
    v.number("inlet_opens_deg", LW_TEXT("Inlet opens"), in::degrees, valveAngles, engine.inletOpens,
             LW_TEXT("Crank degrees before top dead centre. Default 15."));
    v.number("inlet_closes_deg", LW_TEXT("Inlet closes"), in::degrees, valveAngles,
             engine.inletCloses, LW_TEXT("Crank degrees after bottom dead centre. Default 50."));
    v.number("exhaust_opens_deg", LW_TEXT("Exhaust opens"), in::degrees, valveAngles,
             engine.exhaustOpens, LW_TEXT("Crank degrees before bottom dead centre. Default 50."));
    v.number("exhaust_closes_deg", LW_TEXT("Exhaust closes"), in::degrees, valveAngles,
             engine.exhaustCloses, LW_TEXT("Crank degrees after top dead centre. Default 15."));
}

void describeFourStroke(Visitor& v, FourStroke& engine) {
    v.integer("cylinders", LW_TEXT("Cylinders of the four-stroke"), between(0.0, 64.0),
              engine.cylinders,
              LW_TEXT("The displacement is that of the design; 0: as many cylinders as it has."));
    v.number("stroke_to_bore", LW_TEXT("Stroke/bore ratio"), in::pure, between(0.2, 5.0),
             engine.strokeToBore, LW_TEXT("Default 1."));
    v.number("compression_ratio", LW_TEXT("Compression ratio of the four-stroke"), in::pure,
             between(1.1, 40.0), engine.compressionRatio, LW_TEXT("Geometric. Default 10.5."));
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
    v.number("rod_ratio", LW_TEXT("Crank radius / rod length (r/l)"), in::pure, between(0.01, 0.9),
             reference.rodRatio, LW_TEXT("r/l of all cranks. Default 0.28 (own estimate)."));
    v.number("crank_bearing_fmep_bar", LW_TEXT("Friction of the crank bearings"), in::bar,
             between(0.0, 10.0), reference.crankBearingFmep,
             LW_TEXT("Mean effective pressure lost in the bearings of the pair on cranks. Default "
                     "0.2 bar (own estimate)."));
    v.section("four_stroke", LW_TEXT("Four-stroke"),
              [&] { describeFourStroke(v, reference.fourStroke); });
}

} // namespace lobewright::design
