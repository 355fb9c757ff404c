#include "core/contact/contact.h"
#include "core/contact/line_contact.h"
#include "core/loads/orders.h"
#include "core/track/track.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

using units::pi;

struct Machine {
    mechanism::OpposedPair pair;
    loads::Friction friction;
    Materials materials;
    Lubricant oil;
    RollerBearing bearing;
    Samples theta = loads::evenAngles(720);
    double omega = 188.5;
    loads::Loads loads;

    explicit Machine(const mechanism::Mechanism& m, double speed = 188.5)
        : pair(machines::pair(m, machines::pumpTrack())), omega(speed), loads(solve(speed)) {}
    loads::Loads solve(double speed) const {
        const traces::BurnAtIdc cycle{pair};
        const auto trace = cycle.trace();
        return loads::solveLoads(
            {pair, friction, speed, 1e5, theta, &trace, nullptr, cycle.breaks()});
    }
    Contact contact() const {
        auto made = solveContact(inputs());
        EXPECT_TRUE(made);
        return std::move(made).value();
    }
    Inputs inputs() const { return {pair, loads, materials, oil, bearing, omega}; }
};

// One place by hand: p₀ = √(N·E*/(π·L·R_rel)) with the load spread evenly over L.
TEST(TrackContact, StationsCarryTheNominalLinePressure) {
    const Machine machine(machines::pumpMechanism());
    const Contact contact = machine.contact();
    const double modulus = 206e9 / (2 * 0.91);
    EXPECT_NEAR(contact.modulus, modulus, 1.0);
    for (const End end : bothEnds) {
        const TrackContact& track = contact.track[end];
        const double rho[] = {0.0885, 0.095, 0.1015};
        for (std::size_t s = 0; s < 3; ++s) {
            EXPECT_DOUBLE_EQ(track.stations[s].rho, rho[s]);
            for (const Eigen::Index i : {10, 100, 175, 200, 500}) {
                const motion::Lift lift = machine.pair.lift(end, machine.theta(i));
                const double r = track::relativeRadius(lift, rho[s], 0.016, track::Flank::push);
                const double n = machine.loads.piston[end].contactForce(i);
                EXPECT_NEAR(track.stations[s].relativeRadius(i), r, 1e-15);
                EXPECT_NEAR(track.stations[s].pressure(i),
                            std::sqrt(n * modulus / (pi * 0.013 * r)), 1.0);
            }
        }
        EXPECT_NEAR(track.highestPressure->value, track.peakPressure.maxCoeff(),
                    1e-3 * track.peakPressure.maxCoeff());
        EXPECT_NEAR((track.deepestShear - 0.300283 * track.peakPressure).abs().maxCoeff(), 0.0,
                    1e-5 * track.highestPressure->value);
    }
}

// The harder the pitch curve bends, the more the edges differ from the middle.
TEST(TrackContact, WorstPlaceIsNamedWithItsStation) {
    const Machine machine(machines::pumpMechanism());
    const TrackContact track = machine.contact().track.inlet;
    const Place worst = *track.highestPressure;
    const auto& station = track.stations[static_cast<std::size_t>(worst.station)];
    EXPECT_NEAR(station.pressure.maxCoeff(), worst.value, 1e-3 * worst.value);
    EXPECT_GT(worst.value, 0.0);
    EXPECT_NEAR(*track.safety, 1500e6 / worst.value, 1e-12);
    EXPECT_EQ(track.passesPerTurn, 3.0);
    EXPECT_NEAR(track.passesPerHour, 3 * 188.5 / (2 * pi) * 3600, 1e-6);
    EXPECT_NEAR(*track.timeToCycles * track.passesPerHour / 3600.0, 5e7, 1.0);
}

TEST(TrackContact, HasNoPressureAndNoFilmWhereItLiftsOff) {
    const Machine machine(machines::pumpMechanism(), 500.0);
    const TrackContact track = machine.contact().track.inlet;
    const Samples& n = machine.loads.piston.inlet.contactForce;
    int free = 0;
    for (Eigen::Index i = 0; i < n.size(); ++i) {
        EXPECT_EQ(track.peakPressure(i) > 0.0, n(i) > 0.0);
        EXPECT_EQ(track.film(i) > 0.0, n(i) > 0.0);
        free += n(i) == 0.0;
    }
    EXPECT_GT(free, 0);
    EXPECT_GT(track.lowestFilm->value, 0.0);
    EXPECT_NEAR(track.lowestFilmRatio->value, track.lowestFilm->value / std::hypot(0.2e-6, 0.1e-6),
                1e-9);
}

TEST(TrackContact, PullFlankHasARadiusOfItsOwn) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    const Machine machine(m, 500.0);
    const TrackContact track = machine.contact().track.inlet;
    const loads::PistonLoads& piston = machine.loads.piston.inlet;
    int pulled = 0;
    for (Eigen::Index i = 0; i < machine.theta.size(); ++i) {
        const bool pull = piston.contactForce(i) < 0.0;
        pulled += pull;
        EXPECT_NEAR(track.stations[1].relativeRadius(i),
                    track::relativeRadius(machine.pair.lift(End::inlet, machine.theta(i)), 0.095,
                                          0.016, pull ? track::Flank::pull : track::Flank::push),
                    1e-15);
    }
    EXPECT_GT(pulled, 0);
}

TEST(TrackContact, UndercutIsReportedAndCarriesNoPressure) {
    auto m = machines::pumpMechanism();
    m.roller.radius = 0.120; // sharper than the crest of the lobe can carry
    const Machine machine(m, 100.0);
    const TrackContact track = machine.contact().track.inlet;
    ASSERT_TRUE(track.undercut);
    EXPECT_LE(track.undercut->value, 0.0);
    EXPECT_FALSE(track.peakPressure.isNaN().any());
    EXPECT_TRUE(track.peakPressure.isFinite().all());
}

TEST(TrackContact, SlipIsLargestAtAnEdge) {
    const Machine machine(machines::pumpMechanism());
    const TrackContact track = machine.contact().track.inlet;
    EXPECT_NE(track.highestSlip.station, Station::middle);
    // At rest of the track the slip is ω·L/2.
    EXPECT_NEAR(track.stations[0].slip(0), 188.5 * 0.0065, 1e-9);
    EXPECT_NEAR(track.highestPressureSlip.value, track.pressureSlip.maxCoeff(),
                1e-2 * track.highestPressureSlip.value);
}

TEST(TrackContact, GasLoadAloneIsTheSameOnOpenAndClosedTracks) {
    auto m = machines::pumpMechanism();
    m.pistonMass = {0.0, 0.0};
    const Machine open(m);
    m.closedTrack = true;
    const Machine closed(m);
    const Samples held = (open.loads.piston.inlet.demandedForce >= 0.0)
                             .select(open.contact().track.inlet.peakPressure -
                                         closed.contact().track.inlet.peakPressure,
                                     0.0);
    EXPECT_EQ(held.abs().maxCoeff(), 0.0);
}

TEST(CrownedTrackContact, BearsInTheMiddle) {
    auto m = machines::pumpMechanism();
    m.roller.crownRadius = 0.3;
    const Machine machine(m);
    const TrackContact track = machine.contact().track.inlet;
    EXPECT_EQ(track.highestPressure->station, Station::middle);
    EXPECT_EQ(track.lowestFilm->station, Station::middle);
    ASSERT_TRUE(track.truncation);
    EXPECT_GT(*track.truncation, 0.0);
    auto flat = machines::pumpMechanism();
    const Machine straight(flat);
    EXPECT_FALSE(straight.contact().track.inlet.truncation);
    EXPECT_GT(track.highestPressure->value,
              straight.contact().track.inlet.stations[1].pressure.maxCoeff());
}

// A crown so flat that the ellipse outgrows the roller ends at the straight roller.
TEST(CrownedTrackContact, BecomesTheStraightRollerAsTheCrownGrows) {
    auto m = machines::pumpMechanism();
    const Machine straight(m);
    m.roller.crownRadius = 1e5;
    const Machine flat(m);
    const Samples line = straight.contact().track.inlet.stations[1].pressure;
    const Samples crowned = flat.contact().track.inlet.stations[1].pressure;
    EXPECT_NEAR((line - crowned).abs().maxCoeff(), 0.0, 1e-6 * line.maxCoeff());
    EXPECT_GT(*flat.contact().track.inlet.truncation, 1.0);
}

TEST(RollerLife, FollowsTheRatingLifeWithTheMeanLoad) {
    Machine machine(machines::pumpMechanism());
    const RollerLife unrated = machine.contact().track.inlet.life;
    EXPECT_FALSE(unrated.life);
    EXPECT_FALSE(unrated.staticSafety);
    machine.bearing = {30e3, 40e3};
    const RollerLife life = machine.contact().track.inlet.life;
    const loads::PistonLoads& piston = machine.loads.piston.inlet;
    const Samples path = (0.095 * 0.095 + piston.lift.y1.square()).sqrt();
    const double p =
        std::pow((piston.contactForce.abs().pow(10.0 / 3.0) * path).sum() / path.sum(), 0.3);
    EXPECT_NEAR(life.equivalentLoad, p, 1e-2 * p); // samples blur the jump at IDC
    EXPECT_NEAR(life.turnsPerShaftTurn, path.mean() / 0.016, 1e-6 * life.turnsPerShaftTurn);
    EXPECT_NEAR(*life.ratingLife, std::pow(30e3 / life.equivalentLoad, 10.0 / 3.0), 1e-6);
    EXPECT_NEAR(*life.life, *life.ratingLife * 1e6 / (life.turnsPerShaftTurn * 188.5 / (2 * pi)),
                1.0);
    EXPECT_NEAR(*life.staticSafety, 40e3 / piston.contactForce.maxCoeff(),
                1e-3 * *life.staticSafety);
    EXPECT_NEAR(*life.staticStress, 4e9 / std::sqrt(*life.staticSafety), 1.0);
}

TEST(ContactMap, AgreesWithTheStations) {
    for (const bool crowned : {false, true}) {
        auto m = machines::pumpMechanism();
        if (crowned) {
            m.roller.crownRadius = 0.3;
        }
        const Machine machine(m);
        const TrackContact track = machine.contact().track.exhaust;
        const ContactMap map = contactMap(machine.inputs(), End::exhaust, 5);
        ASSERT_EQ(map.pressure.rows(), 720);
        ASSERT_EQ(map.pressure.cols(), 5);
        for (std::size_t s = 0; s < 3; ++s) {
            const auto column = static_cast<Eigen::Index>(2 * s);
            EXPECT_NEAR(map.rho(column), track.stations[s].rho, 1e-15);
            EXPECT_NEAR((map.pressure.col(column) - track.stations[s].pressure).abs().maxCoeff(),
                        0.0, 1e-9 * track.highestPressure->value);
        }
    }
}

TEST(ContactOverSpeeds, ContainsTheRunningSpeed) {
    const Machine machine(machines::pumpMechanism());
    const traces::BurnAtIdc cycle{machine.pair};
    const auto trace = cycle.trace();
    const loads::Inputs running{machine.pair,  machine.friction, 188.5,   1e5,
                                machine.theta, &trace,           nullptr, cycle.breaks()};
    const auto rows =
        contactOverSpeeds(running, machine.materials, machine.oil, {100.0, 188.5, 300.0});
    ASSERT_TRUE(rows);
    ASSERT_EQ(rows->size(), 3u);
    EXPECT_NEAR((*rows)[1].highestPressure.inlet,
                machine.contact().track.inlet.highestPressure->value, 1.0);
    EXPECT_GT((*rows)[0].lowestContactForce.inlet, (*rows)[2].lowestContactForce.inlet);
}

TEST(SolveContact, NamesAMaterialThatIsNotInTheTable) {
    Machine machine(machines::pumpMechanism());
    machine.materials.track = "cheese";
    const auto unknown = solveContact(machine.inputs());
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.problems()[0].path, "/materials/track");
    machine.materials.allowableStress = 900e6;
    const auto given = solveContact(machine.inputs());
    ASSERT_TRUE(given);
    EXPECT_EQ(given->track.inlet.allowableStress, 900e6);
    EXPECT_FALSE(given->track.inlet.timeToCycles);
}

TEST(SolveContact, NeedsAWidthThatCarriesLoad) {
    Machine machine(machines::pumpMechanism());
    auto m = machines::pumpMechanism();
    m.roller.edgeRelief = 0.007;
    const auto pair = machines::pair(m, machines::pumpTrack());
    const auto none =
        solveContact({pair, machine.loads, machine.materials, machine.oil, machine.bearing, 188.5});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problems()[0].path, "/mechanism/roller/edge_relief_mm");
}

} // namespace
} // namespace lobewright::contact
