#include "core/mechanism/folded_angles.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

namespace lobewright::mechanism {
namespace {

using units::pi;

TEST(FoldedAngles, GiveBackEveryCylinder) {
    for (const int cylinders : {1, 2, 3, 5, 7}) {
        Mechanism m = machines::pumpMechanism();
        m.cylinders = cylinders;
        const OpposedPair pair = machines::pair(m, machines::pumpTrack());
        Samples theta(803);
        theta << Samples::LinSpaced(800, -1.0, 7.0), 0.0, pi, 2.0 * pi;
        const FoldedAngles folded(pair.period(), theta, cylinderLags(m));
        const Samples places = pair.lift(End::exhaust, folded.places()).y;
        for (std::size_t k = 0; k < static_cast<std::size_t>(cylinders); ++k) {
            const Samples direct =
                pair.lift(End::exhaust, theta - 2.0 * pi * static_cast<double>(k) / cylinders).y;
            EXPECT_NEAR((folded.unfolded(places, k) - direct).abs().maxCoeff(), 0.0, 1e-14);
        }
    }
}

// Two lobes, three cylinders: a grid that fits both falls onto the grid of one period.
TEST(FoldedAngles, AreNoMoreThanOnePeriodOfAFittingGrid) {
    const OpposedPair pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Samples theta = Samples::LinSpaced(720, 0.0, 2.0 * pi * 719.0 / 720.0);
    EXPECT_EQ(FoldedAngles(pair.period(), theta, cylinderLags(pair.mechanism())).places().size(),
              360);
}

TEST(FoldedAngles, FoldBackWhatTheyUnfold) {
    const Samples theta = Samples::LinSpaced(50, 0.0, 7.0);
    const FoldedAngles folded(pi, theta, {0.0});
    const Samples values = (2.0 * theta).sin();
    EXPECT_NEAR((folded.unfolded(folded.folded(values), 0) - values).abs().maxCoeff(), 0.0, 1e-14);
}

} // namespace
} // namespace lobewright::mechanism
