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
    v.number("pressure_bar", LW_TEXT("Supply pressure"), in::bar, pressures, supply.pressure,
             LW_TEXT("Constant pressure upstream of the inlet ports. Default: ambient, 1 bar."));
    v.number("temperature_K", LW_TEXT("Supply temperature"), in::kelvin, gasTemperatures,
             supply.temperature,
             LW_TEXT("Temperature upstream of the inlet ports. Default 298.15 K."));
    v.flag("unpaid", LW_TEXT("Supply power not counted"), supply.unpaid,
           LW_TEXT("Yes: the power to compress the supply is shown beside every brake "
                   "value instead of being deducted."));
}

void describeBlower(Visitor& v, gas::Supply& supply) {
    v.number("displacement_cm3_per_turn", LW_TEXT("Blower displacement"), in::cm3,
             between(0.1, 1e6), supply.displacement,
             LW_TEXT("Volume swept per revolution of the blower. Default 500 cm³ (own estimate)."));
    v.number("drive_ratio", LW_TEXT("Blower drive ratio"), in::pure, between(0.01, 100.0),
             supply.driveRatio, LW_TEXT("Revolutions of the blower per shaft revolution."));
    v.number("volumetric_efficiency", LW_TEXT("Volumetric efficiency"), in::pure,
             between(0.01, 1.0), supply.volumetricEfficiency,
             LW_TEXT("η_v of the blower, held constant. Default 0.85 (own estimate)."));
}

void describePlenum(Visitor& v, gas::Supply& supply) {
    v.number("plenum_cm3", LW_TEXT("Plenum volume"), in::cm3, between(0.1, 1e6),
             supply.plenumVolume,
             LW_TEXT("Volume between blower or compressor and inlet ports. Default 3000 "
                     "cm³ (own estimate)."));
    v.number("after_cooler_outlet_K", LW_TEXT("After-cooler outlet"), in::kelvin, gasTemperatures,
             supply.afterCoolerTemperature,
             LW_TEXT("Temperature behind the after-cooler; empty without one."));
}

constexpr Range flowCoefficients = {1e-4, 1.0, false, false};

void describeCoefficients(Visitor& v, gas::Wheel& wheel) {
    v.number("head_coefficient", LW_TEXT("Highest head coefficient"), in::pure, between(0.05, 1.2),
             wheel.headCoefficient,
             LW_TEXT("ψ₀: isentropic rise of enthalpy divided by the square of the tip "
                     "speed, at its peak. Default 0.73: radial blades, slip factor 0.9 × "
                     "power input factor 1.04 × efficiency 0.78 (Cohen, Rogers and "
                     "Saravanamuttoo, Gas Turbine Theory, ch. 4; secondary value)."));
    v.number("surge_flow", LW_TEXT("Flow coefficient of surge"), in::pure, flowCoefficients,
             wheel.surgeFlow,
             LW_TEXT("φ_s: below it the wheel surges. φ is the mass flow divided by inlet "
                     "density × tip speed × diameter squared. Default 0.04 (own estimate)."));
    v.number("peak_flow", LW_TEXT("Flow coefficient of the highest head"), in::pure,
             flowCoefficients, wheel.peakFlow,
             LW_TEXT("φ_p: from here the head falls as a parabola towards choke. Default "
                     "0.045 (own estimate)."));
    v.number("choke_flow", LW_TEXT("Flow coefficient of choke"), in::pure, flowCoefficients,
             wheel.chokeFlow, LW_TEXT("φ_c: here no head is left. Default 0.105 (own estimate)."));
    v.number("best_efficiency", LW_TEXT("Best efficiency of the wheel"), in::pure,
             between(0.05, 1.0), wheel.bestEfficiency,
             LW_TEXT("Highest isentropic efficiency. Default 0.78 (Cohen, Rogers and "
                     "Saravanamuttoo, ch. 4; secondary value)."));
    v.number("best_flow", LW_TEXT("Flow coefficient of the best efficiency"), in::pure,
             flowCoefficients, wheel.bestFlow,
             LW_TEXT("φ_b: the efficiency is a parabola about it, η_b·(2·φ/φ_b − "
                     "(φ/φ_b)²). Default 0.06 (the example of the same text runs at "
                     "0.061; secondary value)."));
}

void describePoint(Visitor& v, gas::WheelPoint& point) {
    v.number("speed_rpm", LW_TEXT("Corrected speed"), in::rpm, between(100.0, 1e6), point.speed,
             LW_TEXT("Speed of the wheel × √(reference temperature/inlet temperature)."));
    v.number("flow_kg_per_s", LW_TEXT("Corrected flow"), in::kgPerSecond, between(1e-5, 1e3),
             point.flow,
             LW_TEXT("Mass flow × √(inlet temperature/reference temperature) × reference "
                     "pressure/inlet pressure."));
    v.number("pressure_ratio", LW_TEXT("Pressure ratio"), in::pure, between(0.5, 20.0),
             point.pressureRatio,
             LW_TEXT("Total pressure downstream of the wheel divided by that upstream."));
    v.number("efficiency", LW_TEXT("Isentropic efficiency"), in::pure, between(0.01, 1.0),
             point.efficiency, LW_TEXT("Isentropic efficiency at this flow and speed."));
}

void describeMap(Visitor& v, gas::Wheel& wheel) {
    v.number("reference_pressure_bar", LW_TEXT("Reference pressure of the table"), in::bar,
             pressures, wheel.referencePressure,
             LW_TEXT("To which its flows are corrected. Default 1 bar."));
    v.number("reference_temperature_K", LW_TEXT("Reference temperature of the table"), in::kelvin,
             between(200.0, 400.0), wheel.referenceTemperature,
             LW_TEXT("To which its speeds and flows are corrected. Default 298.15 K."));
    v.list("map", LW_TEXT("Measured points"), between(3.0, 2000.0),
           LW_TEXT("Points in any order, at least three flows at each speed, from surge "
                   "to choke."),
           LW_TEXT("Point"), wheel.points,
           [&](gas::WheelPoint& point) { describePoint(v, point); });
}

void describeWheel(Visitor& v, gas::Wheel& wheel) {
    v.number("diameter_mm", LW_TEXT("Wheel diameter"), in::mm, between(5.0, 2000.0), wheel.diameter,
             LW_TEXT("D at the tip of the compressor wheel. Default 80 mm (own "
                     "estimate)."));
    v.choice("characteristic", LW_TEXT("Characteristic of the wheel"), characteristics,
             wheel.characteristic,
             LW_TEXT("Coefficients of a radial wheel, or measured points at several speeds."));
    v.branch({"characteristic", {"coefficients"}},
             wheel.characteristic == WheelCharacteristic::coefficients,
             [&] { describeCoefficients(v, wheel); });
    v.branch({"characteristic", {"table"}}, wheel.characteristic == WheelCharacteristic::table,
             [&] { describeMap(v, wheel); });
}

void describeGear(Visitor& v, gas::Compressor& compressor) {
    v.number("ratio", LW_TEXT("Gear ratio of the wheel"), in::pure, between(0.1, 500.0),
             compressor.gearRatio,
             LW_TEXT("Revolutions of the compressor wheel per shaft revolution. Default "
                     "15 (own estimate)."));
}

void describeIsentropicEfficiency(Visitor& v, gas::Supply& supply) {
    v.number("isentropic_efficiency", LW_TEXT("Isentropic efficiency"), in::pure,
             between(0.05, 1.0), supply.isentropicEfficiency,
             LW_TEXT("η_is of whatever compresses the supply. Default 0.65 (own estimate)."));
}

void describeTurbine(Visitor& v, gas::Turbine& turbine) {
    v.number("exhaust_plenum_cm3", LW_TEXT("Exhaust plenum"), in::cm3, between(10.0, 1e6),
             turbine.exhaustVolume,
             LW_TEXT("Volume between exhaust ports and nozzle; it loses no heat. Default "
                     "3000 cm³ (own estimate)."));
    v.number("nozzle_mm2", LW_TEXT("Nozzle area of the turbine"), in::mm2, between(1.0, 1e6),
             turbine.nozzleArea,
             LW_TEXT("Effective area of nozzle and wheel as one orifice. Default 400 mm² "
                     "(own estimate)."));
    v.number("diameter_mm", LW_TEXT("Turbine wheel diameter"), in::mm, between(5.0, 2000.0),
             turbine.diameter,
             LW_TEXT("Of the wheel where the gas enters it. Default 80 mm (own "
                     "estimate)."));
    v.number("best_efficiency", LW_TEXT("Best efficiency of the turbine"), in::pure,
             between(0.05, 1.0), turbine.bestEfficiency,
             LW_TEXT("η_b of η = η_b·(2·ν − ν²), ν the speed ratio divided by the best "
                     "one. Default 0.72 (own estimate)."));
    v.number(
        "best_speed_ratio", LW_TEXT("Best speed ratio of the turbine"), in::pure, between(0.1, 1.5),
        turbine.bestSpeedRatio,
        LW_TEXT(
            "u/c₀ of the best efficiency: tip speed divided by spouting velocity. Default 0.7; an "
            "ideal radial wheel has 0.707 (Dixon and Hall, ch. 8; secondary value)."));
    v.number("mechanical_efficiency", LW_TEXT("Mechanical efficiency of the wheel shaft"), in::pure,
             between(0.3, 1.0), turbine.mechanicalEfficiency,
             LW_TEXT("η_m: what reaches the compressor of the turbine's power. Default "
                     "0.95 (own estimate)."));
}

void describeCompressor(Visitor& v, gas::Supply& supply) {
    gas::Compressor& compressor = supply.compressor;
    v.choice("drive", LW_TEXT("Drive of the wheel"), wheelDrives, compressor.drive,
             LW_TEXT("What drives the compressor wheel and so provides its power."));
    v.branch({"drive", {"gear"}}, compressor.drive == WheelDrive::gear,
             [&] { describeGear(v, compressor); });
    v.branch({"drive", {"turbine"}}, compressor.drive == WheelDrive::turbine, [&] {
        v.section("turbine", LW_TEXT("Turbine"), [&] { describeTurbine(v, compressor.turbine); });
    });
    v.choice("stages", LW_TEXT("Stages"), stageChoices, compressor.stages,
             LW_TEXT("A blower downstream of the wheel delivers air before the "
                     "wheel is up to speed: it starts a turbocharged engine."));
    v.branch({"stages", {"wheel-then-blower"}}, compressor.stages == Stages::wheelThenBlower, [&] {
        v.section("blower", LW_TEXT("Blower behind the wheel"), [&] {
            describeBlower(v, supply);
            describeIsentropicEfficiency(v, supply);
        });
        v.number("inter_cooler_outlet_K", LW_TEXT("Intercooler outlet temperature"), in::kelvin,
                 between(200.0, 1000.0), compressor.interCoolerTemperature,
                 LW_TEXT("Temperature behind a cooler between wheel and blower, which "
                         "then takes in denser air; empty without one."));
    });
    v.section("wheel", LW_TEXT("Compressor wheel"), [&] { describeWheel(v, compressor.wheel); });
}

void describeReed(Visitor& v, gas::Reed& reed) {
    v.number("area_mm2", LW_TEXT("Reed area"), in::mm2, between(0.1, 1e6), reed.area,
             LW_TEXT("Free area of the reed valve when fully open, one pump chamber. "
                     "Default 260 mm² (own estimate)."));
    v.number("discharge_coefficient", LW_TEXT("Discharge coefficient of the reed"), in::pure,
             between(0.01, 1.0), reed.dischargeCoefficient,
             LW_TEXT("C_d: effective area divided by free area. Default 0.7 (own estimate)."));
    v.number("cracking_bar", LW_TEXT("Cracking drop of the reed"), in::bar, between(0.0, 1.0),
             reed.cracking,
             LW_TEXT("Drop from ambient to the pump chamber at which the reed begins to "
                     "open. Default 0.01 bar (own estimate)."));
    v.number("full_open_bar", LW_TEXT("Further drop to fully open"), in::bar, between(0.001, 2.0),
             reed.fullOpen,
             LW_TEXT("Drop beyond the cracking drop at which the reed is fully open; "
                     "between them its area grows in proportion. Default 0.04 bar (own "
                     "estimate)."));
}

void describePump(Visitor& v, gas::Pump& pump) {
    v.choice("sides", LW_TEXT("Pistons that pump"), pumpSides, pump.sides,
             LW_TEXT("Pistons whose undersides change the volume of the pump "
                     "chamber; a one-sided engine has only one."));
    v.flag("shared", LW_TEXT("One crankcase for all cylinders"), pump.shared,
           LW_TEXT("No: a pump chamber for each cylinder. Yes: all pistons move in one crankcase, "
                   "which pumps only the volume that their strokes do not cancel."));
    v.number("dead_cm3", LW_TEXT("Dead volume of the pump"), in::cm3, between(0.1, 1e6),
             pump.deadVolume,
             LW_TEXT("V_u with the pistons at outer dead centre, one chamber or the whole "
                     "case, passages to the ports included. Default 130 cm³ (own "
                     "estimate)."));
    v.number("area_factor", LW_TEXT("Area under the piston"), in::pure, between(0.01, 1.0),
             pump.areaFactor,
             LW_TEXT("Share of the bore's area that pumps: 1 less that of a piston rod. "
                     "Default 0.92 (own estimate)."));
    v.number("wall_area_cm2", LW_TEXT("Wall area of the pump"), in::cm2, between(0.0, 1e6),
             pump.wallArea,
             LW_TEXT("Walls that the gas under the piston exchanges heat with. Default 0: "
                     "adiabatic."));
    v.number("wall_coefficient_W_per_m2K", LW_TEXT("Heat transfer in the pump"), in::WPerM2K,
             between(0.0, 1e5), pump.wallCoefficient,
             LW_TEXT("Coefficient between gas and walls, constant over the cycle. Default "
                     "60 W/(m²·K) (own estimate)."));
    v.number("wall_K", LW_TEXT("Wall temperature of the pump"), in::kelvin, between(200.0, 1500.0),
             pump.wallTemperature,
             LW_TEXT("Surface temperature under the piston. Default 350 K (own "
                     "estimate)."));
    v.number("transfer_cm3", LW_TEXT("Transfer volume"), in::cm3, between(1.0, 1e6),
             pump.transferVolume,
             LW_TEXT("Volume of its own between the pump chamber and the inlet ports, "
                     "filled and emptied through a passage; empty where the chamber "
                     "itself stands at the ports."));
    v.number("transfer_mm2", LW_TEXT("Passage to the transfer volume"), in::mm2, between(0.1, 1e6),
             pump.transferArea,
             LW_TEXT("Effective area C_d·A of the passage from the pump chamber, both "
                     "ways. Default 600 mm² (own estimate)."));
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
    v.section("reed", LW_TEXT("Reed valve"), [&] { describeReed(v, pump.reed); });
}

} // namespace

void describeSupply(Visitor& v, gas::Supply& supply) {
    v.choice("kind", LW_TEXT("Air supply"), supplyKinds, supply.kind,
             LW_TEXT("Where the fresh air comes from."));
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
    v.number("ambient_pressure_bar", LW_TEXT("Ambient pressure"), in::bar, pressures,
             supply.ambientPressure,
             LW_TEXT("Reference for delivery ratio and supply power. Default 1 bar (ISO 15550)."));
    v.number("ambient_temperature_K", LW_TEXT("Ambient temperature"), in::kelvin,
             between(200.0, 400.0), supply.ambientTemperature,
             LW_TEXT("Reference for delivery ratio and supply power. Default 298.15 K "
                     "(ISO 15550)."));
}

} // namespace lobewright::design
