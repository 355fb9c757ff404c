#include "core/balance/remedy.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

using units::degree;

TEST(Remedy, EqualMassCancelsEqualTracksWithoutLead) {
    auto m = machines::pumpMechanism();
    m.exhaustLead = 0.0;
    const Remedy found = remedy(machines::pair(m, machines::pumpTrack()));
    EXPECT_NEAR(found.residual, 0.04 / 0.62, 1e-12);
    EXPECT_NEAR(found.exhaustMass, 0.62, 1e-12);
    EXPECT_LT(found.massResidual, cancelled);
}

// y_e'' = y_i''·S_e/S_i: the mass that cancels is m_i·S_i/S_e.
TEST(Remedy, MassMakesUpForAnUnequalStroke) {
    auto m = machines::pumpMechanism();
    m.exhaustLead = 0.0;
    const Remedy found =
        remedy(machines::pair(m, machines::wave(2, 0.036), machines::wave(2, 0.030)));
    EXPECT_NEAR(found.exhaustMass, 0.62 * 36.0 / 30.0, 1e-12);
    EXPECT_LT(found.massResidual, cancelled);
}

// Equal masses on equal harmonic tracks: a lead leaves 2·sin(N·δ/2); no mass helps beyond cos Nδ,
// which leaves sin Nδ; taking the lead away cancels.
TEST(Remedy, OnlyTheLeadCancelsWhatALeadLeaves) {
    auto m = machines::pumpMechanism();
    m.pistonMass = {0.6, 0.6};
    const Remedy found = remedy(machines::pair(m, machines::wave(2, 0.036)));
    EXPECT_NEAR(found.residual, 2 * std::sin(6 * degree), 1e-12);
    EXPECT_NEAR(found.exhaustMass, 0.6 * std::cos(12 * degree), 1e-12);
    EXPECT_NEAR(found.massResidual, std::sin(12 * degree), 1e-12);
    EXPECT_NEAR(found.exhaustLead, 0.0, 1e-7);
    EXPECT_LT(found.leadResidual, cancelled);
    EXPECT_LT(found.bothResidual, cancelled);
}

TEST(Remedy, LeadAndMassTogetherCancelEqualTracks) {
    const Remedy found = remedy(machines::pair(machines::pumpMechanism(), machines::pumpTrack()));
    EXPECT_NEAR(found.exhaustLead, 0.0, 1e-7);
    EXPECT_NEAR(found.leadResidual, 0.04 / 0.62, 1e-6);
    EXPECT_LT(found.bothResidual, cancelled);
    EXPECT_GT(found.massResidual, 0.01);
}

TEST(Remedy, CountsTheAdjusterIntoTheLead) {
    auto m = machines::pumpMechanism();
    m.adjuster.setting = 3 * degree;
    EXPECT_NEAR(remedy(machines::pair(m, machines::pumpTrack())).exhaustLead, 0.0, 1e-7);
}

TEST(Remedy, UnlikeTracksCannotBeCancelled) {
    const Remedy found = remedy(
        machines::pair(machines::pumpMechanism(), machines::wave(2, 0.036, motion::Law::harmonic),
                       machines::wave(2, 0.036, motion::Law::polynomial4567)));
    EXPECT_GT(found.bothResidual, 0.05);
    EXPECT_LE(found.bothResidual, found.leadResidual + 1e-12);
    EXPECT_LE(found.massResidual, found.residual + 1e-12);
}

} // namespace
} // namespace lobewright::balance
