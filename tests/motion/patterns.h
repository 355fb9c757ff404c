#pragma once

#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/laws.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

/// Patterns that several tests look at.
namespace lobewright::motion::test {

inline std::string name(Law law) {
    return testName(law);
}

inline std::string lawName(const testing::TestParamInfo<Law>& info) {
    return name(info.param);
}

inline Segment rise(double degrees, Law law, std::optional<double> endLift = {}) {
    return {SegmentKind::rise, degrees * units::degree, law, endLift};
}
inline Segment fall(double degrees, Law law, std::optional<double> endLift = {}) {
    return {SegmentKind::fall, degrees * units::degree, law, endLift};
}
inline Segment dwell(double degrees) {
    return {SegmentKind::dwell, degrees * units::degree, Law::harmonic, {}};
}

/// Two lobes with dwells at both ends: 82° up, 4°, 78° down, 16°.
inline Pattern dwelling(Law law) {
    return {2, SegmentShape{0.036, {rise(82, law), dwell(4), fall(78, law), dwell(16)}}};
}

/// One whole turn with three unequal rises, one of them in two stages with a rest between.
inline Pattern unequal(Law law) {
    return {1, SegmentShape{0.040,
                            {dwell(5), rise(55, law), fall(50, law), rise(30, law, 0.015),
                             dwell(10), rise(40, law, 0.030), fall(60, law, 0.005),
                             rise(35, law, 0.025), fall(65, law), dwell(10)}}};
}

} // namespace lobewright::motion::test
