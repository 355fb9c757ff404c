#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/ports/events.h"
#include "core/samples.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/solution/solution.h"

#include <string>
#include <vector>

namespace lobewright::solution {

/// Collects channels, with their written names and in their units; shape of each: (samples).
class ChannelList {
  public:
    explicit ChannelList(Eigen::Index samples) : samples_(samples) {}
    /// `values` in SI; those that are not finite become gaps. `label` without the side.
    void add(QuantityId id, Message label, std::string symbol, const Samples& values);
    void append(ChannelList more);
    /// Where both sides have a channel, its label names the side.
    std::vector<Channel> take();

  private:
    Eigen::Index samples_;
    std::vector<Channel> channels_;
};

/// Angles, lifts with derivatives, pressure angles, relative radii, volume and port areas.
/// theta, chi: shape (samples) [rad]; `lifts` at theta; speed: ω [rad/s].
void addMotionChannels(ChannelList& list, const ports::PortTiming& timing,
                       const PerEnd<motion::LiftSamples>& lifts, const Samples& theta,
                       const Samples& chi, double speed);

/// Pressure, temperature and masses of the chamber; gaps where there is no gas solution.
void addGasChannels(ChannelList& list, const gas::CycleSolution* gas, const Samples& theta);

/// Supply, flows through the ports and their enthalpies, heat transfer; gaps without a gas
/// solution.
void addFlowChannels(ChannelList& list, const StageResults& results);

/// Forces on both pistons of cylinder 1.
void addLoadChannels(ChannelList& list, const StageResults& results);

/// What the contact force is made of: inertia, gas, rings; and the force that the motion demands
/// even where the roller has lifted off.
void addForceDetailChannels(ChannelList& list, const StageResults& results);

/// Torque of each piston, of cylinder 1 and of the engine.
void addTorqueChannels(ChannelList& list, const StageResults& results);

/// The agreed contact channels: largest nominal pressure and thinnest film of each side.
void addContactChannels(ChannelList& list, const contact::Contact& contact,
                        const mechanism::OpposedPair& pair);
/// Pressures along the width, shear, film ratio, slip and pressure × slip.
void addContactDetailChannels(ChannelList& list, const contact::Contact& contact,
                              const mechanism::OpposedPair& pair);

/// Thrust of the only track of a one-sided engine.
void addThrustChannel(ChannelList& list, const StageResults& results);
/// All rollers on the exhaust track, which the adjuster holds.
void addAdjusterChannels(ChannelList& list, const StageResults& results);

/// Shaking force and rocking moments of the whole engine.
void addBalanceChannels(ChannelList& list, const balance::Balance& balance);
/// The exhaust piston with the lead that leaves the least axial force.
void addRemedyChannels(ChannelList& list, const balance::Balance& balance,
                       const StageResults& results);

} // namespace lobewright::solution
