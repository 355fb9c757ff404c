#include "core/claims/claims_basis.h"

#include "core/gas/models/fuel.h"
#include "core/gas/properties/properties.h"
#include "core/units.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

double cyclesPerReciprocation(StrokeCycle cycle) {
    return cycle == StrokeCycle::twoStroke ? 1.0 : 0.5;
}

std::optional<Derived> cyclesPerTurn(const ClaimedEngine& engine,
                                     std::vector<Message>& assumptions) {
    if (engine.eventsPerTurn && engine.cylinders) {
        return Derived{*engine.eventsPerTurn / *engine.cylinders,
                       LW_TEXT("c = power strokes per revolution/chambers"),
                       fmt::format("{:.6g}/{:.6g}", *engine.eventsPerTurn, *engine.cylinders)};
    }
    if (!engine.cycle) {
        return std::nullopt;
    }
    const bool isTwoStroke = *engine.cycle == StrokeCycle::twoStroke;
    const TextId formula = isTwoStroke
                               ? LW_TEXT("c = reciprocations per revolution, two-stroke")
                               : LW_TEXT("c = reciprocations per revolution/2, four-stroke");
    const double share = cyclesPerReciprocation(*engine.cycle);
    if (engine.reciprocations) {
        const double m = *engine.reciprocations;
        return Derived{m * share, formula, shown(m) + (isTwoStroke ? "" : "/2")};
    }
    const bool isAssumed = engine.drive != Drive::crank;
    if (isAssumed) {
        assumptions.emplace_back(
            LW_TEXT("One reciprocation per revolution, as on a crank: neither power strokes nor "
                    "reciprocations per revolution are given; a cam track with m lobes makes m."));
    }
    return Derived{share, Message(LW_TEXT("%1, on a crank"), formula),
                   std::string(isTwoStroke ? "1" : "1/2"), isAssumed};
}

std::optional<Derived> reciprocations(const ClaimedEngine& engine, const ClaimBasis& basis) {
    if (engine.reciprocations) {
        return Derived{*engine.reciprocations, LW_TEXT("m as given"),
                       fmt::format("{:.6g}", *engine.reciprocations)};
    }
    if (engine.drive == Drive::crank) {
        return Derived{1.0, LW_TEXT("m = 1 on a crank"), "1"};
    }
    if (!basis.cyclesPerTurn || !basis.cycle) {
        return std::nullopt;
    }
    const Derived& c = *basis.cyclesPerTurn;
    const bool isTwoStroke = *basis.cycle == StrokeCycle::twoStroke;
    return Derived{c.value / cyclesPerReciprocation(*basis.cycle),
                   isTwoStroke ? LW_TEXT("m = c, two-stroke") : LW_TEXT("m = 2·c, four-stroke"),
                   (isTwoStroke ? "" : "2·") + shown(c.value), c.assumed};
}

/// The stroke count that follows from cycles and reciprocations where it is not given.
std::optional<StrokeCycle> inferredCycle(const ClaimedEngine& engine,
                                         const std::optional<Derived>& cycles) {
    const auto m = engine.reciprocations          ? engine.reciprocations
                   : engine.drive == Drive::crank ? std::optional(1.0)
                                                  : std::nullopt;
    if (!m || !cycles) {
        return std::nullopt;
    }
    const double share = cycles->value / *m;
    const auto is = [&](double expected) {
        return std::abs(share - expected) <= roundingOfFigures * expected;
    };
    return is(1.0)   ? std::optional(StrokeCycle::twoStroke)
           : is(0.5) ? std::optional(StrokeCycle::fourStroke)
                     : std::nullopt;
}

std::optional<Derived> displacement(const ClaimedEngine& engine,
                                    std::vector<Message>& assumptions) {
    if (engine.displacement) {
        return Derived{engine.displacement->si, LW_TEXT("V_d as given"),
                       shown(engine.displacement->si, "m³")};
    }
    if (!engine.bore || !engine.stroke || !(engine.pistons || engine.cylinders)) {
        return std::nullopt;
    }
    const double pistons = engine.pistons ? *engine.pistons : *engine.cylinders;
    if (!engine.pistons) {
        assumptions.emplace_back(
            LW_TEXT("One piston per chamber: the number of pistons is not given."));
    }
    return Derived{pistons * units::pi / 4.0 * engine.bore->si * engine.bore->si *
                       engine.stroke->si,
                   LW_TEXT("V_d = pistons·π/4·bore²·stroke"),
                   fmt::format("{:.6g}·π/4·({})²·{}", pistons, shown(engine.bore->si, "m"),
                               shown(engine.stroke->si, "m")),
                   !engine.pistons};
}

void findSpeeds(const ClaimedFigures& figures, ClaimBasis& basis) {
    if (figures.power && figures.torque) {
        basis.lowestPowerSpeed = Derived{figures.power->si / figures.torque->si, "ω_min = P/T_max",
                                         fmt::format("{}/({})", shown(figures.power->si, "W"),
                                                     shown(figures.torque->si, "N·m"))};
    }
    if (figures.powerSpeed) {
        basis.powerSpeed = Derived{figures.powerSpeed->si, LW_TEXT("as given"),
                                   shown(turnsPerSecond(figures.powerSpeed->si), "1/s")};
    } else if (figures.maximumSpeed) {
        basis.powerSpeed = Derived{figures.maximumSpeed->si, LW_TEXT("highest speed"),
                                   shown(turnsPerSecond(figures.maximumSpeed->si), "1/s"), true};
        basis.powerSpeedBound = Bound::atLeast;
        basis.assumptions.emplace_back(
            LW_TEXT("Peak power at the highest speed: the speed of peak power is not given; "
                    "pressures and charge per cycle are at least what is shown."));
    } else if (basis.lowestPowerSpeed) {
        basis.powerSpeed = basis.lowestPowerSpeed;
        basis.powerSpeed->assumed = true;
        basis.powerSpeedBound = Bound::atMost;
        basis.assumptions.emplace_back(
            LW_TEXT("Peak power at the lowest speed at which the torque gives it: no speed is "
                    "given; pressures and charge per cycle are at most what is shown."));
    }
}

void findFuel(const Claims& claims, ClaimBasis& basis) {
    const bool isCompression = claims.engine.ignition == Ignition::compression;
    const gas::Fuel fuel =
        claims.engine.fuel.value_or(isCompression ? gas::Fuel::diesel : gas::Fuel::petrol);
    const gas::FuelData& data = gas::fuelData(fuel);
    if (!claims.engine.fuel) {
        basis.assumptions.push_back(isCompression ? LW_TEXT("Fuel diesel: none is given.")
                                                  : LW_TEXT("Fuel petrol: none is given."));
    }
    basis.heatingValue = data.lowerHeatingValue;
    basis.stoichiometricAir = gas::stoichiometricAirFuelRatio(data);
    const ClaimedFigures& figures = claims.figures;
    if (figures.airRatio) {
        basis.airRatio = figures.airRatio->si;
    } else {
        basis.assumptions.emplace_back(LW_TEXT(
            "Excess-air ratio λ = 1: none is given; a lean engine needs more air in proportion."));
    }
    if (figures.efficiency) {
        basis.efficiency = figures.efficiency->si;
    } else if (figures.fuelConsumption) {
        basis.efficiency = 1.0 / (figures.fuelConsumption->si * basis.heatingValue);
    } else {
        basis.assumptions.emplace_back(LW_TEXT("Brake thermal efficiency 30 %: neither efficiency "
                                               "nor fuel consumption is given [own estimate]."));
    }
}

void findAir(const ClaimedConditions& conditions, ClaimBasis& basis) {
    basis.ambientPressure = conditions.airPressure ? conditions.airPressure->si : 1e5;
    basis.ambientTemperature = conditions.airTemperature ? conditions.airTemperature->si : 298.15;
    basis.airDensity =
        basis.ambientPressure / (gas::dryAir().gasConstant() * basis.ambientTemperature);
    if (!conditions.airPressure || !conditions.airTemperature) {
        basis.assumptions.emplace_back(
            LW_TEXT("Ambient air at 1 bar and 298.15 K where it is not given [ISO 15550]."));
    }
}

} // namespace

std::string shown(double value, std::string_view unit) {
    return unit.empty() ? fmt::format("{:.6g}", value) : fmt::format("{:.6g} {}", value, unit);
}

double turnsPerSecond(double omega) {
    return omega / units::turn;
}

ClaimBasis claimBasis(const Claims& claims) {
    ClaimBasis basis;
    basis.cyclesPerTurn = cyclesPerTurn(claims.engine, basis.assumptions);
    basis.cycle = claims.engine.cycle ? claims.engine.cycle
                                      : inferredCycle(claims.engine, basis.cyclesPerTurn);
    basis.reciprocations = reciprocations(claims.engine, basis);
    basis.displacement = displacement(claims.engine, basis.assumptions);
    findSpeeds(claims.figures, basis);
    findFuel(claims, basis);
    findAir(claims.conditions, basis);
    return basis;
}

} // namespace lobewright::study
