#include "core/track/cutter_path.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <limits>

using namespace lobewright;
using namespace lobewright::track;
using motion::LiftCurve;

namespace {

constexpr double pitchRadius = 0.095;
const Roller roller{0.016, 0.014, {}, 0.0005};

LiftCurve harmonicWave() {
    return LiftCurve::make({2, motion::HarmonicShape{{{1, -0.018, 0.0}}}}).value();
}

double micrometres(double metres) {
    return metres / units::micrometre;
}

} // namespace

// Own brute-force search in another language: roller 16, pitch radius 95, width 14, lift 36 mm
// harmonic, two lobes: 61 µm with a 10 mm cutter, 41 µm with a 20 mm cutter.
TEST(CutterPath, AnotherRadiusLeavesErrorsAtTheEdges) {
    const LiftCurve curve = harmonicWave();
    for (Flank flank : {Flank::push, Flank::pull}) {
        const EdgeDeviations thin = *edgeDeviations(curve, pitchRadius, roller, 0.010, flank);
        const EdgeDeviations thick = *edgeDeviations(curve, pitchRadius, roller, 0.020, flank);
        EXPECT_NEAR(micrometres(std::max(thin.inner.magnitude(), thin.outer.magnitude())), 61.0,
                    0.5);
        EXPECT_NEAR(micrometres(std::max(thick.inner.magnitude(), thick.outer.magnitude())), 41.0,
                    0.5);
        EXPECT_GT(thin.inner.most, 0.0) << "a thinner cutter leaves material at the inner edge";
        EXPECT_LT(thick.inner.least, 0.0) << "a thicker cutter gouges the inner edge";
    }
}
