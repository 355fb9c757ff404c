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
    v.number("duration_deg", LW_TEXT("Combustion duration"), in::cycleDegrees, between(1.0, 180.0),
             burn.duration,
             LW_TEXT("Cycle degrees from the start to the end of the Wiebe function. Default 50 "
                     "(own estimate)."));
    v.number("wiebe_a", LW_TEXT("Wiebe efficiency factor"), in::pure, between(0.1, 50.0),
             burn.wiebeA, LW_TEXT("a: exp(−a) of the fuel never burns; 6.908 leaves 0.1 %."));
    v.number("wiebe_m", LW_TEXT("Wiebe form factor"), in::pure, between(0.0, 20.0), burn.wiebeM,
             LW_TEXT("m: larger values release the heat later within the combustion "
                     "duration; 2 is common practice."));
}

void describeScavenging(Visitor& v, gas::Scavenging& scavenging) {
    v.choice("model", LW_TEXT("Scavenging model"), scavengingModels, scavenging.model,
             LW_TEXT("How fresh gas and residual gas leave (after Benson and "
                     "Brandham 1969)."));
    const bool divided = scavenging.model == ScavengingModel::displacementThenMixing;
    v.branch({"model", {"displacement-then-mixing"}}, divided, [&] {
        v.number("displaced_fraction", LW_TEXT("Displaced fraction"), in::pure, between(0.0, 1.0),
                 scavenging.displacedFraction,
                 LW_TEXT("d: share of the residual gas that leaves unmixed. Default 0.5 (own "
                         "estimate)."));
    });
    v.number("short_circuit_fraction", LW_TEXT("Short-circuit fraction"), in::pure,
             {0.0, 1.0, false, true}, scavenging.shortCircuitFraction,
             LW_TEXT("σ: share of the inflow that leaves at once through the exhaust ports. "
                     "Default 0; of a one-sided engine 0.15 (own estimate), where loop-scavenged "
                     "cylinders have 0.05 to 0.3."));
}

void describeWallHeat(Visitor& v, gas::WallHeat& wall, bool isOneSided) {
    v.choice("model", LW_TEXT("Wall heat model"), wallHeatModels, wall.model,
             LW_TEXT("Woschni, SAE 670931; Hohenberg, SAE 790825; or an adiabatic "
                     "chamber."));
    v.number("crown_K", LW_TEXT("Crown temperature"), in::kelvin, wallTemperatures,
             wall.crownTemperature,
             LW_TEXT("Surface temperature of both crowns. Default 480 K (own estimate)."));
    v.branch(opposed, !isOneSided, [&] {
        v.number("exhaust_crown_K", LW_TEXT("Exhaust crown temperature"), in::kelvin,
                 wallTemperatures, wall.exhaustCrownTemperature,
                 LW_TEXT("Surface temperature of the exhaust crown; empty: as the other."));
    });
    v.branch(oneSided, isOneSided, [&] {
        v.number("head_K", LW_TEXT("Head temperature"), in::kelvin, wallTemperatures,
                 wall.headTemperature,
                 LW_TEXT("Surface temperature of the cylinder head; empty: as the crown."));
    });
    v.number("liner_K", LW_TEXT("Liner temperature"), in::kelvin, wallTemperatures,
             wall.linerTemperature,
             LW_TEXT("Surface temperature of the exposed liner. Default 420 K (own estimate)."));
    v.number("multiplier", LW_TEXT("Wall heat multiplier"), in::pure, between(0.0, 10.0),
             wall.multiplier, LW_TEXT("Scales the heat transfer coefficient."));
}

} // namespace

void describeGas(Visitor& v, gas::Settings& gas, bool isOneSided) {
    v.choice("fuel", LW_TEXT("Fuel"), fuels(), gas.fuel,
             LW_TEXT("Composition and heating value after Heywood, table D.4."));
    v.number("lambda", LW_TEXT("Excess-air ratio"), in::pure, between(0.5, 20.0), gas.lambda,
             LW_TEXT("λ: trapped air divided by the air that the fuel needs; above 1 is "
                     "lean. The gas model holds from 0.9 up."));
    v.choice("mixture", LW_TEXT("Mixture"), mixtures, gas.mixture,
             LW_TEXT("Injected: the fuel meets the trapped air. Mixture through "
                     "the ports: fuel vapour comes with the fresh air, and what "
                     "of it leaves through the exhaust is lost."),
             Presence::optional);
    v.number("combustion_efficiency", LW_TEXT("Combustion efficiency"), in::pure,
             between(0.01, 1.0), gas.combustionEfficiency,
             LW_TEXT("η_c: share of the heating value released by the fuel that burns. Default "
                     "0.97 (own estimate)."));
    v.number("octane_number", LW_TEXT("Octane number"), in::pure, between(40.0, 150.0),
             gas.octaneNumber,
             LW_TEXT("For the knock figure of petrol; empty: as the fuel table says (95)."));
    v.section("burn", LW_TEXT("Combustion"), [&] { describeBurn(v, gas.burn); });
    v.section("supply", LW_TEXT("Air supply"), [&] { describeSupply(v, gas.supply); });
    v.number("exhaust_pressure_bar", LW_TEXT("Exhaust back pressure"), in::bar, between(0.05, 20.0),
             gas.exhaustPressure,
             LW_TEXT("Constant pressure behind the exhaust ports. Default 1 bar."));
    v.section("scavenging", LW_TEXT("Scavenging"), [&] { describeScavenging(v, gas.scavenging); });
    v.section("wall_heat", LW_TEXT("Wall heat"),
              [&] { describeWallHeat(v, gas.wallHeat, isOneSided); });
}

} // namespace lobewright::design
