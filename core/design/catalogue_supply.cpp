#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

using gas::PumpSides;
using gas::Stages;
using gas::SupplyKind;
using gas::WheelCharacteristic;
using gas::WheelDrive;

constexpr Choice<SupplyKind> supplyKinds[] = {
    {SupplyKind::reservoir, {"reservoir", LW_TEXT("Constant pressure")}},
    {SupplyKind::blower, {"blower", LW_TEXT("Blower with plenum")}},
    {SupplyKind::underPiston, {"under-piston", LW_TEXT("Space under the piston as pump")}},
    {SupplyKind::compressor, {"compressor", LW_TEXT("Centrifugal compressor with plenum")}},
};
constexpr Choice<WheelDrive> wheelDrives[] = {
    {WheelDrive::gear, {"gear", LW_TEXT("Gear on the shaft")}},
    {WheelDrive::turbine, {"turbine", LW_TEXT("Turbine in the exhaust")}},
};
constexpr Choice<WheelCharacteristic> characteristics[] = {
    {WheelCharacteristic::coefficients, {"coefficients", LW_TEXT("Coefficients")}},
    {WheelCharacteristic::table, {"table", LW_TEXT("Measured points")}},
};
constexpr Choice<Stages> stageChoices[] = {
    {Stages::wheel, {"wheel", LW_TEXT("Compressor wheel alone")}},
    {Stages::wheelThenBlower, {"wheel-then-blower", LW_TEXT("Blower behind the wheel")}},
};
constexpr Choice<PumpSides> pumpSides[] = {
    {PumpSides::inlet, {"inlet", LW_TEXT("Inlet pistons")}},
    {PumpSides::both, {"both", LW_TEXT("Both pistons")}},
};

constexpr Range pressures = {0.05, 20.0, false, false};
constexpr Range gasTemperatures = {200.0, 1000.0, false, false};

void describeReservoir(Visitor& v, gas::Supply& supply) {
    v.number({.name = "pressure_bar",
              .label = LW_TEXT("Supply pressure"),
              .unit = in::bar,
              .range = pressures,
              .help = LW_TEXT(
                  "Constant pressure upstream of the inlet ports. Default: ambient, 1 bar.")},
             supply.pressure);
    v.number({.name = "temperature_K",
              .label = LW_TEXT("Supply temperature"),
              .unit = in::kelvin,
              .range = gasTemperatures,
              .help = LW_TEXT("Temperature upstream of the inlet ports. Default 298.15 K.")},
             supply.temperature);
    v.flag({.name = "unpaid",
            .label = LW_TEXT("Supply power not counted"),
            .help = LW_TEXT("Yes: the power to compress the supply is shown beside every brake "
                            "value instead of being deducted.")},
           supply.unpaid);
}

void describeBlower(Visitor& v, gas::Supply& supply) {
    v.number({.name = "displacement_cm3_per_turn",
              .label = LW_TEXT("Blower displacement"),
              .unit = in::cm3,
              .range = between(0.1, 1e6),
              .help = LW_TEXT(
                  "Volume swept per revolution of the blower. Default 500 cm³ (own estimate).")},
             supply.displacement);
    v.number({.name = "drive_ratio",
              .label = LW_TEXT("Blower drive ratio"),
              .unit = in::pure,
              .range = between(0.01, 100.0),
              .help = LW_TEXT("Revolutions of the blower per shaft revolution.")},
             supply.driveRatio);
    v.number({.name = "volumetric_efficiency",
              .label = LW_TEXT("Volumetric efficiency"),
              .unit = in::pure,
              .range = between(0.01, 1.0),
              .help = LW_TEXT("η_v of the blower, held constant. Default 0.85 (own estimate).")},
             supply.volumetricEfficiency);
}

void describePlenum(Visitor& v, gas::Supply& supply) {
    v.number({.name = "plenum_cm3",
              .label = LW_TEXT("Plenum volume"),
              .unit = in::cm3,
              .range = between(0.1, 1e6),
              .help = LW_TEXT("Volume between blower or compressor and inlet ports. Default 3000 "
                              "cm³ (own estimate).")},
             supply.plenumVolume);
    v.number({.name = "after_cooler_outlet_K",
              .label = LW_TEXT("After-cooler outlet"),
              .unit = in::kelvin,
              .range = gasTemperatures,
              .help = LW_TEXT("Temperature behind the after-cooler; empty without one.")},
             supply.afterCoolerTemperature);
}

constexpr Range flowCoefficients = {1e-4, 1.0, false, false};

void describeCoefficients(Visitor& v, gas::Wheel& wheel) {
    v.number({.name = "head_coefficient",
              .label = LW_TEXT("Highest head coefficient"),
              .unit = in::pure,
              .range = between(0.05, 1.2),
              .help = LW_TEXT("ψ₀: isentropic rise of enthalpy divided by the square of the tip "
                              "speed, at its peak. Default 0.73: radial blades, slip factor 0.9 × "
                              "power input factor 1.04 × efficiency 0.78 (Cohen, Rogers and "
                              "Saravanamuttoo, Gas Turbine Theory, ch. 4; secondary value).")},
             wheel.headCoefficient);
    v.number(
        {.name = "surge_flow",
         .label = LW_TEXT("Flow coefficient of surge"),
         .unit = in::pure,
         .range = flowCoefficients,
         .help = LW_TEXT("φ_s: below it the wheel surges. φ is the mass flow divided by inlet "
                         "density × tip speed × diameter squared. Default 0.04 (own estimate).")},
        wheel.surgeFlow);
    v.number({.name = "peak_flow",
              .label = LW_TEXT("Flow coefficient of the highest head"),
              .unit = in::pure,
              .range = flowCoefficients,
              .help = LW_TEXT("φ_p: from here the head falls as a parabola towards choke. Default "
                              "0.045 (own estimate).")},
             wheel.peakFlow);
    v.number({.name = "choke_flow",
              .label = LW_TEXT("Flow coefficient of choke"),
              .unit = in::pure,
              .range = flowCoefficients,
              .help = LW_TEXT("φ_c: here no head is left. Default 0.105 (own estimate).")},
             wheel.chokeFlow);
    v.number({.name = "best_efficiency",
              .label = LW_TEXT("Best efficiency of the wheel"),
              .unit = in::pure,
              .range = between(0.05, 1.0),
              .help = LW_TEXT("Highest isentropic efficiency. Default 0.78 (Cohen, Rogers and "
                              "Saravanamuttoo, ch. 4; secondary value).")},
             wheel.bestEfficiency);
    v.number({.name = "best_flow",
              .label = LW_TEXT("Flow coefficient of the best efficiency"),
              .unit = in::pure,
              .range = flowCoefficients,
              .help = LW_TEXT("φ_b: the efficiency is a parabola about it, η_b·(2·φ/φ_b − "
                              "(φ/φ_b)²). Default 0.06 (the example of the same text runs at "
                              "0.061; secondary value).")},
             wheel.bestFlow);
}

void describePoint(Visitor& v, gas::WheelPoint& point) {
    v.number({.name = "speed_rpm",
              .label = LW_TEXT("Corrected speed"),
              .unit = in::rpm,
              .range = between(100.0, 1e6),
              .help = LW_TEXT("Speed of the wheel × √(reference temperature/inlet temperature).")},
             point.speed);
    v.number({.name = "flow_kg_per_s",
              .label = LW_TEXT("Corrected flow"),
              .unit = in::kgPerSecond,
              .range = between(1e-5, 1e3),
              .help = LW_TEXT("Mass flow × √(inlet temperature/reference temperature) × reference "
                              "pressure/inlet pressure.")},
             point.flow);
    v.number({.name = "pressure_ratio",
              .label = LW_TEXT("Pressure ratio"),
              .unit = in::pure,
              .range = between(0.5, 20.0),
              .help = LW_TEXT("Total pressure downstream of the wheel divided by that upstream.")},
             point.pressureRatio);
    v.number({.name = "efficiency",
              .label = LW_TEXT("Isentropic efficiency"),
              .unit = in::pure,
              .range = between(0.01, 1.0),
              .help = LW_TEXT("Isentropic efficiency at this flow and speed.")},
             point.efficiency);
}

void describeMap(Visitor& v, gas::Wheel& wheel) {
    v.number({.name = "reference_pressure_bar",
              .label = LW_TEXT("Reference pressure of the table"),
              .unit = in::bar,
              .range = pressures,
              .help = LW_TEXT("To which its flows are corrected. Default 1 bar.")},
             wheel.referencePressure);
    v.number({.name = "reference_temperature_K",
              .label = LW_TEXT("Reference temperature of the table"),
              .unit = in::kelvin,
              .range = between(200.0, 400.0),
              .help = LW_TEXT("To which its speeds and flows are corrected. Default 298.15 K.")},
             wheel.referenceTemperature);
    v.list({.name = "map",
            .label = LW_TEXT("Measured points"),
            .range = between(3.0, 2000.0),
            .help = LW_TEXT("Points in any order, at least three flows at each speed, from surge "
                            "to choke.")},
           LW_TEXT("Point"), wheel.points,
           [&](gas::WheelPoint& point) { describePoint(v, point); });
}

void describeWheel(Visitor& v, gas::Wheel& wheel) {
    v.number({.name = "diameter_mm",
              .label = LW_TEXT("Wheel diameter"),
              .unit = in::mm,
              .range = between(5.0, 2000.0),
              .help = LW_TEXT("D at the tip of the compressor wheel. Default 80 mm (own "
                              "estimate).")},
             wheel.diameter);
    v.choice<WheelCharacteristic>(
        {.name = "characteristic",
         .label = LW_TEXT("Characteristic of the wheel"),
         .help = LW_TEXT("Coefficients of a radial wheel, or measured points at several speeds.")},
        characteristics, wheel.characteristic);
    v.branch({"characteristic", {"coefficients"}},
             wheel.characteristic == WheelCharacteristic::coefficients,
             [&] { describeCoefficients(v, wheel); });
    v.branch({"characteristic", {"table"}}, wheel.characteristic == WheelCharacteristic::table,
             [&] { describeMap(v, wheel); });
}

void describeGear(Visitor& v, gas::Compressor& compressor) {
    v.number({.name = "ratio",
              .label = LW_TEXT("Gear ratio of the wheel"),
              .unit = in::pure,
              .range = between(0.1, 500.0),
              .help = LW_TEXT("Revolutions of the compressor wheel per shaft revolution. Default "
                              "15 (own estimate).")},
             compressor.gearRatio);
}

void describeIsentropicEfficiency(Visitor& v, gas::Supply& supply) {
    v.number(
        {.name = "isentropic_efficiency",
         .label = LW_TEXT("Isentropic efficiency"),
         .unit = in::pure,
         .range = between(0.05, 1.0),
         .help = LW_TEXT("η_is of whatever compresses the supply. Default 0.65 (own estimate).")},
        supply.isentropicEfficiency);
}

void describeTurbine(Visitor& v, gas::Turbine& turbine) {
    v.number({.name = "exhaust_plenum_cm3",
              .label = LW_TEXT("Exhaust plenum"),
              .unit = in::cm3,
              .range = between(10.0, 1e6),
              .help = LW_TEXT("Volume between exhaust ports and nozzle; it loses no heat. Default "
                              "3000 cm³ (own estimate).")},
             turbine.exhaustVolume);
    v.number({.name = "nozzle_mm2",
              .label = LW_TEXT("Nozzle area of the turbine"),
              .unit = in::mm2,
              .range = between(1.0, 1e6),
              .help = LW_TEXT("Effective area of nozzle and wheel as one orifice. Default 400 mm² "
                              "(own estimate).")},
             turbine.nozzleArea);
    v.number({.name = "diameter_mm",
              .label = LW_TEXT("Turbine wheel diameter"),
              .unit = in::mm,
              .range = between(5.0, 2000.0),
              .help = LW_TEXT("Of the wheel where the gas enters it. Default 80 mm (own "
                              "estimate).")},
             turbine.diameter);
    v.number({.name = "best_efficiency",
              .label = LW_TEXT("Best efficiency of the turbine"),
              .unit = in::pure,
              .range = between(0.05, 1.0),
              .help = LW_TEXT("η_b of η = η_b·(2·ν − ν²), ν the speed ratio divided by the best "
                              "one. Default 0.72 (own estimate).")},
             turbine.bestEfficiency);
    v.number(
        {.name = "best_speed_ratio",
         .label = LW_TEXT("Best speed ratio of the turbine"),
         .unit = in::pure,
         .range = between(0.1, 1.5),
         .help = LW_TEXT(
             "u/c₀ of the best efficiency: tip speed divided by spouting velocity. Default 0.7; an "
             "ideal radial wheel has 0.707 (Dixon and Hall, ch. 8; secondary value).")},
        turbine.bestSpeedRatio);
    v.number({.name = "mechanical_efficiency",
              .label = LW_TEXT("Mechanical efficiency of the wheel shaft"),
              .unit = in::pure,
              .range = between(0.3, 1.0),
              .help = LW_TEXT("η_m: what reaches the compressor of the turbine's power. Default "
                              "0.95 (own estimate).")},
             turbine.mechanicalEfficiency);
}

void describeCompressor(Visitor& v, gas::Supply& supply) {
    gas::Compressor& compressor = supply.compressor;
    v.choice<WheelDrive>(
        {.name = "drive",
         .label = LW_TEXT("Drive of the wheel"),
         .help = LW_TEXT("What drives the compressor wheel and so provides its power.")},
        wheelDrives, compressor.drive);
    v.branch({"drive", {"gear"}}, compressor.drive == WheelDrive::gear,
             [&] { describeGear(v, compressor); });
    v.branch({"drive", {"turbine"}}, compressor.drive == WheelDrive::turbine, [&] {
        v.section({.name = "turbine", .label = LW_TEXT("Turbine")},
                  [&] { describeTurbine(v, compressor.turbine); });
    });
    v.choice<Stages>({.name = "stages",
                      .label = LW_TEXT("Stages"),
                      .help = LW_TEXT("A blower downstream of the wheel delivers air before the "
                                      "wheel is up to speed: it starts a turbocharged engine.")},
                     stageChoices, compressor.stages);
    v.branch({"stages", {"wheel-then-blower"}}, compressor.stages == Stages::wheelThenBlower, [&] {
        v.section({.name = "blower", .label = LW_TEXT("Blower behind the wheel")}, [&] {
            describeBlower(v, supply);
            describeIsentropicEfficiency(v, supply);
        });
        v.number({.name = "inter_cooler_outlet_K",
                  .label = LW_TEXT("Intercooler outlet temperature"),
                  .unit = in::kelvin,
                  .range = between(200.0, 1000.0),
                  .help = LW_TEXT("Temperature behind a cooler between wheel and blower, which "
                                  "then takes in denser air; empty without one.")},
                 compressor.interCoolerTemperature);
    });
    v.section({.name = "wheel", .label = LW_TEXT("Compressor wheel")},
              [&] { describeWheel(v, compressor.wheel); });
}

void describeReed(Visitor& v, gas::Reed& reed) {
    v.number({.name = "area_mm2",
              .label = LW_TEXT("Reed area"),
              .unit = in::mm2,
              .range = between(0.1, 1e6),
              .help = LW_TEXT("Free area of the reed valve when fully open, one pump chamber. "
                              "Default 260 mm² (own estimate).")},
             reed.area);
    v.number(
        {.name = "discharge_coefficient",
         .label = LW_TEXT("Discharge coefficient of the reed"),
         .unit = in::pure,
         .range = between(0.01, 1.0),
         .help = LW_TEXT("C_d: effective area divided by free area. Default 0.7 (own estimate).")},
        reed.dischargeCoefficient);
    v.number({.name = "cracking_bar",
              .label = LW_TEXT("Cracking drop of the reed"),
              .unit = in::bar,
              .range = between(0.0, 1.0),
              .help = LW_TEXT("Drop from ambient to the pump chamber at which the reed begins to "
                              "open. Default 0.01 bar (own estimate).")},
             reed.cracking);
    v.number({.name = "full_open_bar",
              .label = LW_TEXT("Further drop to fully open"),
              .unit = in::bar,
              .range = between(0.001, 2.0),
              .help = LW_TEXT("Drop beyond the cracking drop at which the reed is fully open; "
                              "between them its area grows in proportion. Default 0.04 bar (own "
                              "estimate).")},
             reed.fullOpen);
}

void describePump(Visitor& v, gas::Pump& pump) {
    v.choice<PumpSides>({.name = "sides",
                         .label = LW_TEXT("Pistons that pump"),
                         .help = LW_TEXT("Pistons whose undersides change the volume of the pump "
                                         "chamber; a one-sided engine has only one.")},
                        pumpSides, pump.sides);
    v.flag({.name = "shared",
            .label = LW_TEXT("One crankcase for all cylinders"),
            .help = LW_TEXT(
                "No: a pump chamber for each cylinder. Yes: all pistons move in one crankcase, "
                "which pumps only the volume that their strokes do not cancel.")},
           pump.shared);
    v.number({.name = "dead_cm3",
              .label = LW_TEXT("Dead volume of the pump"),
              .unit = in::cm3,
              .range = between(0.1, 1e6),
              .help = LW_TEXT("V_u with the pistons at outer dead centre, one chamber or the whole "
                              "case, passages to the ports included. Default 130 cm³ (own "
                              "estimate).")},
             pump.deadVolume);
    v.number({.name = "area_factor",
              .label = LW_TEXT("Area under the piston"),
              .unit = in::pure,
              .range = between(0.01, 1.0),
              .help = LW_TEXT("Share of the bore's area that pumps: 1 less that of a piston rod. "
                              "Default 0.92 (own estimate).")},
             pump.areaFactor);
    v.number({.name = "wall_area_cm2",
              .label = LW_TEXT("Wall area of the pump"),
              .unit = in::cm2,
              .range = between(0.0, 1e6),
              .help = LW_TEXT("Walls that the gas under the piston exchanges heat with. Default 0: "
                              "adiabatic.")},
             pump.wallArea);
    v.number({.name = "wall_coefficient_W_per_m2K",
              .label = LW_TEXT("Heat transfer in the pump"),
              .unit = in::WPerM2K,
              .range = between(0.0, 1e5),
              .help = LW_TEXT("Coefficient between gas and walls, constant over the cycle. Default "
                              "60 W/(m²·K) (own estimate).")},
             pump.wallCoefficient);
    v.number({.name = "wall_K",
              .label = LW_TEXT("Wall temperature of the pump"),
              .unit = in::kelvin,
              .range = between(200.0, 1500.0),
              .help = LW_TEXT("Surface temperature under the piston. Default 350 K (own "
                              "estimate).")},
             pump.wallTemperature);
    v.number({.name = "transfer_cm3",
              .label = LW_TEXT("Transfer volume"),
              .unit = in::cm3,
              .range = between(1.0, 1e6),
              .help = LW_TEXT("Volume of its own between the pump chamber and the inlet ports, "
                              "filled and emptied through a passage; empty where the chamber "
                              "itself stands at the ports.")},
             pump.transferVolume);
    v.number({.name = "transfer_mm2",
              .label = LW_TEXT("Passage to the transfer volume"),
              .unit = in::mm2,
              .range = between(0.1, 1e6),
              .help = LW_TEXT("Effective area C_d·A of the passage from the pump chamber, both "
                              "ways. Default 600 mm² (own estimate).")},
             pump.transferArea);
    const Key skirt{
        .name = "skirt_row",
        .label = LW_TEXT("Intake under the skirt"),
        .presence = Presence::optional,
        .help = LW_TEXT("A row that the lower end of the skirt uncovers near inner dead centre "
                        "lets ambient gas in instead of the reed, and out again where the pump "
                        "stands above ambient. Its edge is counted from that end at outer dead "
                        "centre, inward.")};
    const PresenceWords given{
        {Word{"not-given", LW_TEXT("Not given")}, Word{"given", LW_TEXT("Given")}}, false};
    const auto fresh = [] { return ports::Row{30e-3, 10e-3, 18e-3, 2, 2e-3, 0.7}; };
    v.optional(skirt, given, pump.skirtRow, fresh,
               [&](ports::Row& row) { v.section(skirt, [&] { describeRow(v, row); }); });
    v.section({.name = "reed", .label = LW_TEXT("Reed valve")},
              [&] { describeReed(v, pump.reed); });
}

} // namespace

void describeSupply(Visitor& v, gas::Supply& supply) {
    v.choice<SupplyKind>({.name = "kind",
                          .label = LW_TEXT("Air supply"),
                          .help = LW_TEXT("Where the fresh air comes from.")},
                         supplyKinds, supply.kind);
    v.branch({"kind", {"reservoir"}}, supply.kind == SupplyKind::reservoir,
             [&] { describeReservoir(v, supply); });
    v.branch({"kind", {"blower"}}, supply.kind == SupplyKind::blower,
             [&] { describeBlower(v, supply); });
    v.branch({"kind", {"compressor"}}, supply.kind == SupplyKind::compressor,
             [&] { describeCompressor(v, supply); });
    v.branch({"kind", {"blower", "compressor"}},
             supply.kind == SupplyKind::blower || supply.kind == SupplyKind::compressor,
             [&] { describePlenum(v, supply); });
    v.branch({"kind", {"under-piston"}}, supply.kind == SupplyKind::underPiston,
             [&] { describePump(v, supply.pump); });
    v.branch({"kind", {"reservoir", "blower", "under-piston"}},
             supply.kind != SupplyKind::compressor,
             [&] { describeIsentropicEfficiency(v, supply); });
    v.number({.name = "ambient_pressure_bar",
              .label = LW_TEXT("Ambient pressure"),
              .unit = in::bar,
              .range = pressures,
              .help = LW_TEXT(
                  "Reference for delivery ratio and supply power. Default 1 bar (ISO 15550).")},
             supply.ambientPressure);
    v.number({.name = "ambient_temperature_K",
              .label = LW_TEXT("Ambient temperature"),
              .unit = in::kelvin,
              .range = between(200.0, 400.0),
              .help = LW_TEXT("Reference for delivery ratio and supply power. Default 298.15 K "
                              "(ISO 15550).")},
             supply.ambientTemperature);
}

} // namespace lobewright::design
