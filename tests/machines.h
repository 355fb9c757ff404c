#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/ports/events.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <vector>

/// Machines that several test folders share.
namespace lobewright::machines {

using motion::Law;
using motion::Segment;
using motion::SegmentKind;

/// Rise and return without dwells, mirror images of each other.
inline motion::Pattern wave(int lobes, double stroke, Law law = Law::harmonic) {
    const double half = units::pi / lobes;
    return {lobes,
            motion::SegmentShape{
                stroke, {{SegmentKind::rise, half, law, {}}, {SegmentKind::fall, half, law, {}}}}};
}

/// Rise, dwell inside, return, dwell outside [degrees].
inline motion::Pattern lobe(int lobes, double stroke, double rise, double inner, double fall,
                            double outer, Law law = Law::modifiedSine) {
    constexpr double degree = units::degree;
    return {lobes, motion::SegmentShape{stroke,
                                        {{SegmentKind::rise, rise * degree, law, {}},
                                         {SegmentKind::dwell, inner * degree, law, {}},
                                         {SegmentKind::fall, fall * degree, law, {}},
                                         {SegmentKind::dwell, outer * degree, law, {}}}}};
}

inline motion::LiftCurve curve(const motion::Pattern& pattern) {
    auto made = motion::LiftCurve::make(pattern);
    EXPECT_TRUE(made) << (made ? "" : made.problems().front().message.english());
    return std::move(made).value();
}

/// A small two-lobe, three-cylinder pump engine.
inline mechanism::Mechanism pumpMechanism() {
    mechanism::Mechanism m;
    m.cylinders = 3;
    m.pitchRadius = 0.095;
    m.bore = 0.064;
    m.clearance = 0.0075;
    m.exhaustLead = 6.0 * units::degree;
    m.roller = {0.016, 0.014, {}, 0.0005};
    m.pistonMass = {0.62, 0.66};
    return m;
}
inline motion::Pattern pumpTrack() {
    return lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0);
}
inline ports::Rows pumpPorts() {
    return {{{0.0075, 0.0075, 0.012, 10, 0.0015, 0.7}}, {{0.0105, 0.0105, 0.012, 9, 0.0015, 0.7}}};
}

inline mechanism::OpposedPair pair(const mechanism::Mechanism& mechanism,
                                   const motion::Pattern& inlet, const motion::Pattern& exhaust) {
    auto made = mechanism::OpposedPair::make(mechanism, {curve(inlet), curve(exhaust)});
    EXPECT_TRUE(made) << (made ? "" : made.problems().front().message.english());
    return std::move(made).value();
}
inline mechanism::OpposedPair pair(const mechanism::Mechanism& mechanism,
                                   const motion::Pattern& both) {
    return pair(mechanism, both, both);
}
inline ports::PortTiming timing(const ports::Rows& rows, const mechanism::OpposedPair& pair) {
    auto made = ports::PortTiming::make(rows, pair);
    EXPECT_TRUE(made) << (made ? "" : made.problems().front().message.english());
    return std::move(made).value();
}

} // namespace lobewright::machines
