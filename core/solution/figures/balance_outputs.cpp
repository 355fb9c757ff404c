#include "core/solution/figures/channels.h"
#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// Share of one piston's force below which an order is rounding, not shaking.
constexpr double silent = 1e-9;

/// Orders that are there at all, so that a balanced engine does not list twenty zeros.
void addOrders(FigureList& list, const std::string& key, const Message& label, const Unit& unit,
               const Samples& amplitudes, double scale) {
    for (Eigen::Index order = 0; order < amplitudes.size(); ++order) {
        if (amplitudes[order] > silent * scale) {
            list.add({fmt::format("{}_order_{}", key, order), &unit},
                     Message(LW_TEXT("%1, shaft order %2"), label, order), amplitudes[order]);
        }
    }
}

void addRemedy(FigureList& list, const balance::Remedy& remedy) {
    list.add({"shaking_residual"},
             LW_TEXT("Residual axial force of one cylinder, share of the inlet piston's"),
             remedy.residual);
    list.add({"best_exhaust_mass", &in::kg},
             LW_TEXT("Exhaust piston mass that leaves the least axial force"), remedy.exhaustMass);
    list.add({"best_exhaust_mass_residual"}, LW_TEXT("Residual axial force with that mass"),
             remedy.massResidual);
    list.add({"best_exhaust_lead", &in::shaftDegrees},
             LW_TEXT("Exhaust lead that leaves the least axial force"), remedy.exhaustLead);
    list.add({"best_exhaust_lead_residual"}, LW_TEXT("Residual axial force with that lead"),
             remedy.leadResidual);
    list.add({"both_residual"},
             LW_TEXT("Residual axial force with that lead and the best mass for it"),
             remedy.bothResidual);
}

} // namespace

void addBalanceChannels(ChannelList& list, const balance::Balance& balance) {
    const auto& shaking = balance.shaking;
    list.add({"shaking_force", &in::N}, LW_TEXT("Shaking force along the shaft"), "F",
             shaking.force);
    list.add({"rocking_moment_x", &in::Nm}, LW_TEXT("Rocking moment about x"), "M",
             shaking.momentX);
    list.add({"rocking_moment_y", &in::Nm}, LW_TEXT("Rocking moment about y"), "M",
             shaking.momentY);
}

void addRemedyChannels(ChannelList& list, const balance::Balance& balance,
                       const StageResults& results) {
    const auto& mechanism = results.pair().mechanism();
    const double further =
        balance.remedy.exhaustLead - mechanism.exhaustLead - mechanism.adjuster.setting;
    const double omega = results.omega();
    list.add({"acceleration_exhaust_best_lead", &in::metrePerSecond2},
             LW_TEXT("Acceleration of the exhaust piston with the best lead"), "ÿ",
             omega * omega * results.pair().lift(End::exhaust, results.theta + further).y2);
}

void addShakingFigures(FigureList& list, const balance::Balance& balance) {
    list.group("balance");
    list.add({"shaking_force_peak", &in::N}, LW_TEXT("Largest shaking force"),
             balance.highestForce);
    list.add({"rocking_moment_peak", &in::Nm}, LW_TEXT("Largest rocking moment"),
             balance.highestMoment);
    list.add({"piston_inertia_force_peak", &in::N},
             LW_TEXT("Largest inertia force of one piston, for comparison"), balance.pistonForce);
}

void addBalanceFigures(FigureList& list, const balance::Balance& balance,
                       const StageResults& results) {
    const loads::Loads& loads = results.loads;
    addShakingFigures(list, balance);
    addOrders(list, "shaking_force", LW_TEXT("Shaking force"), in::N, balance.orders.force,
              balance.pistonForce);
    addOrders(list, "rocking_moment_x", LW_TEXT("Rocking moment about x"), in::Nm,
              balance.orders.momentX, balance.pistonForce);
    addOrders(list, "rocking_moment_y", LW_TEXT("Rocking moment about y"), in::Nm,
              balance.orders.momentY, balance.pistonForce);
    const Eigen::Index shown = std::min<Eigen::Index>(loads.torqueOrders.size(), 25);
    addOrders(list, "torque", LW_TEXT("Total torque"), in::Nm, loads.torqueOrders.head(shown),
              1e6 * loads.peakToPeakTorque); // what is 1/1000 of the swing and more
    if (!results.pair().mechanism().isOneSided()) {
        addRemedy(list, balance.remedy);
    }
    list.add({"energy_fluctuation", &in::J}, LW_TEXT("Energy fluctuation within a revolution"),
             balance.energy.energy);
    list.add({"coefficient_of_fluctuation"}, LW_TEXT("Coefficient of speed fluctuation"),
             balance.fluctuation, LW_TEXT("no inertia is given"));
    for (const int percent : {1, 2, 5}) {
        list.add({fmt::format("inertia_for_{}_percent", percent), &in::kgm2},
                 Message(LW_TEXT("Moment of inertia for a speed fluctuation of %1"),
                         asTyped(percent, in::percent)),
                 balance::inertiaFor(balance.energy.energy, 0.01 * percent, results.omega()));
    }
}

} // namespace lobewright::solution
