#include "core/design/catalogue.h"
#include "core/gas/models/fuel.h"

#include <vector>

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

using gas::Fuel;
using gas::Mixture;
using gas::ScavengingModel;
using gas::WallHeatModel;

/// As the table of fuels has them.
const std::vector<Choice<Fuel>>& fuels() {
    static const std::vector<Choice<Fuel>> all = [] {
        std::vector<Choice<Fuel>> choices;
        for (const gas::FuelData& fuel : gas::allFuels()) {
            choices.push_back({static_cast<Fuel>(choices.size()), {fuel.name, fuel.label}});
        }
        return choices;
    }();
    return all;
}
constexpr Choice<Mixture> mixtures[] = {
    {Mixture::injected, {"injected", LW_TEXT("Injected after the ports have closed")}},
    {Mixture::premixed, {"premixed", LW_TEXT("Mixture through the ports")}},
};
constexpr Choice<ScavengingModel> scavengingModels[] = {
    {ScavengingModel::perfectMixing, {"perfect-mixing", LW_TEXT("Perfect mixing")}},
    {ScavengingModel::perfectDisplacement,
     {"perfect-displacement", LW_TEXT("Perfect displacement")}},
    {ScavengingModel::displacementThenMixing,
     {"displacement-then-mixing", LW_TEXT("Displacement, then mixing")}},
};
constexpr Choice<WallHeatModel> wallHeatModels[] = {
    {WallHeatModel::none, {"none", LW_TEXT("None")}},
    {WallHeatModel::woschni, {"woschni", LW_TEXT("Woschni")}},
    {WallHeatModel::hohenberg, {"hohenberg", LW_TEXT("Hohenberg")}},
};

constexpr Range wallTemperatures = {200.0, 1500.0, false, false};

void describeBurn(Visitor& v, gas::Burn& burn) {
    v.numberOrWord(
        {.name = "start_deg",
         .label = LW_TEXT("Start of combustion"),
         .unit = in::cycleDegrees,
         .range = between(-180.0, 180.0),
         .help = LW_TEXT("Cycle degrees from the inner dead centre of the pair; \"best-torque\" "
                         "searches −60 to +20 for the highest net work.")},
        burn.start, {"best-torque", LW_TEXT("MBT timing")}, burn.bestTorque);
    v.number({.name = "duration_deg",
              .label = LW_TEXT("Combustion duration"),
              .unit = in::cycleDegrees,
              .range = between(1.0, 180.0),
              .help = LW_TEXT(
                  "Cycle degrees from the start to the end of the Wiebe function. Default 50 "
                  "(own estimate).")},
             burn.duration);
    v.number({.name = "wiebe_a",
              .label = LW_TEXT("Wiebe efficiency factor"),
              .unit = in::pure,
              .range = between(0.1, 50.0),
              .help = LW_TEXT("a: exp(−a) of the fuel never burns; 6.908 leaves 0.1 %.")},
             burn.wiebeA);
    v.number({.name = "wiebe_m",
              .label = LW_TEXT("Wiebe form factor"),
              .unit = in::pure,
              .range = between(0.0, 20.0),
              .help = LW_TEXT("m: larger values release the heat later within the combustion "
                              "duration; 2 is common practice.")},
             burn.wiebeM);
}

void describeScavenging(Visitor& v, gas::Scavenging& scavenging) {
    v.choice<ScavengingModel>(
        {.name = "model",
         .label = LW_TEXT("Scavenging model"),
         .help = LW_TEXT("How fresh gas and residual gas leave (after Benson and "
                         "Brandham 1969).")},
        scavengingModels, scavenging.model);
    const bool divided = scavenging.model == ScavengingModel::displacementThenMixing;
    v.branch({"model", {"displacement-then-mixing"}}, divided, [&] {
        v.number(
            {.name = "displaced_fraction",
             .label = LW_TEXT("Displaced fraction"),
             .unit = in::pure,
             .range = between(0.0, 1.0),
             .help = LW_TEXT("d: share of the residual gas that leaves unmixed. Default 0.5 (own "
                             "estimate).")},
            scavenging.displacedFraction);
    });
    v.number({.name = "short_circuit_fraction",
              .label = LW_TEXT("Short-circuit fraction"),
              .unit = in::pure,
              .range = {0.0, 1.0, false, true},
              .help = LW_TEXT(
                  "σ: share of the inflow that leaves at once through the exhaust ports. "
                  "Default 0; of a one-sided engine 0.15 (own estimate), where loop-scavenged "
                  "cylinders have 0.05 to 0.3.")},
             scavenging.shortCircuitFraction);
}

void describeWallHeat(Visitor& v, gas::WallHeat& wall, bool isOneSided) {
    v.choice<WallHeatModel>(
        {.name = "model",
         .label = LW_TEXT("Wall heat model"),
         .help = LW_TEXT("Woschni, SAE 670931; Hohenberg, SAE 790825; or an adiabatic "
                         "chamber.")},
        wallHeatModels, wall.model);
    v.number({.name = "crown_K",
              .label = LW_TEXT("Crown temperature"),
              .unit = in::kelvin,
              .range = wallTemperatures,
              .help = LW_TEXT("Surface temperature of both crowns. Default 480 K (own estimate).")},
             wall.crownTemperature);
    v.branch(opposed, !isOneSided, [&] {
        v.number(
            {.name = "exhaust_crown_K",
             .label = LW_TEXT("Exhaust crown temperature"),
             .unit = in::kelvin,
             .range = wallTemperatures,
             .help = LW_TEXT("Surface temperature of the exhaust crown; empty: as the other.")},
            wall.exhaustCrownTemperature);
    });
    v.branch(oneSided, isOneSided, [&] {
        v.number(
            {.name = "head_K",
             .label = LW_TEXT("Head temperature"),
             .unit = in::kelvin,
             .range = wallTemperatures,
             .help = LW_TEXT("Surface temperature of the cylinder head; empty: as the crown.")},
            wall.headTemperature);
    });
    v.number({.name = "liner_K",
              .label = LW_TEXT("Liner temperature"),
              .unit = in::kelvin,
              .range = wallTemperatures,
              .help = LW_TEXT(
                  "Surface temperature of the exposed liner. Default 420 K (own estimate).")},
             wall.linerTemperature);
    v.number({.name = "multiplier",
              .label = LW_TEXT("Wall heat multiplier"),
              .unit = in::pure,
              .range = between(0.0, 10.0),
              .help = LW_TEXT("Scales the heat transfer coefficient.")},
             wall.multiplier);
}

} // namespace

void describeGas(Visitor& v, gas::Settings& gas, bool isOneSided) {
    v.choice<Fuel>({.name = "fuel",
                    .label = LW_TEXT("Fuel"),
                    .help = LW_TEXT("Composition and heating value after Heywood, table D.4.")},
                   fuels(), gas.fuel);
    v.number({.name = "lambda",
              .label = LW_TEXT("Excess-air ratio"),
              .unit = in::pure,
              .range = between(0.5, 20.0),
              .help = LW_TEXT("λ: trapped air divided by the air that the fuel needs; above 1 is "
                              "lean. The gas model holds from 0.9 up.")},
             gas.lambda);
    v.choice<Mixture>({.name = "mixture",
                       .label = LW_TEXT("Mixture"),
                       .presence = Presence::optional,
                       .help = LW_TEXT("Injected: the fuel meets the trapped air. Mixture through "
                                       "the ports: fuel vapour comes with the fresh air, and what "
                                       "of it leaves through the exhaust is lost.")},
                      mixtures, gas.mixture);
    v.number(
        {.name = "combustion_efficiency",
         .label = LW_TEXT("Combustion efficiency"),
         .unit = in::pure,
         .range = between(0.01, 1.0),
         .help = LW_TEXT("η_c: share of the heating value released by the fuel that burns. Default "
                         "0.97 (own estimate).")},
        gas.combustionEfficiency);
    v.number(
        {.name = "octane_number",
         .label = LW_TEXT("Octane number"),
         .unit = in::pure,
         .range = between(40.0, 150.0),
         .help = LW_TEXT("For the knock figure of petrol; empty: as the fuel table says (95).")},
        gas.octaneNumber);
    v.section({.name = "burn", .label = LW_TEXT("Combustion")}, [&] { describeBurn(v, gas.burn); });
    v.section({.name = "supply", .label = LW_TEXT("Air supply")},
              [&] { describeSupply(v, gas.supply); });
    v.number({.name = "exhaust_pressure_bar",
              .label = LW_TEXT("Exhaust back pressure"),
              .unit = in::bar,
              .range = between(0.05, 20.0),
              .help = LW_TEXT("Constant pressure behind the exhaust ports. Default 1 bar.")},
             gas.exhaustPressure);
    v.section({.name = "scavenging", .label = LW_TEXT("Scavenging")},
              [&] { describeScavenging(v, gas.scavenging); });
    v.section({.name = "wall_heat", .label = LW_TEXT("Wall heat")},
              [&] { describeWallHeat(v, gas.wallHeat, isOneSided); });
}

} // namespace lobewright::design
