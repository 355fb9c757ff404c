#include "core/gas/cycle/model.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

// The integrator must not step over a bend of the motion: every one is a stop, once, within the
// period that begins at the last closing.
TEST(Model, StopsAtEveryBendOfTheMotion) {
    for (const Engine& engine : {pumpEngine(), classroomEngine(), buoyEngine(), craneEngine()}) {
        const auto model = makeModel(engine.chamber, engine.settings,
                                     workingGas(engine.settings.fuel), engine.run);
        ASSERT_TRUE(model) << model.problems().front().message.english();
        const double period = engine.chamber.period();
        ASSERT_FALSE(engine.chamber.kinks().empty());
        EXPECT_EQ(model->stops.front().angle, model->start);
        EXPECT_EQ(model->stops.back().angle, model->start + period);
        for (std::size_t i = 1; i < model->stops.size(); ++i) {
            EXPECT_GT(model->stops[i].angle, model->stops[i - 1].angle);
        }
        for (const double kink : engine.chamber.kinks()) {
            const bool stands = std::ranges::any_of(model->stops, [&](const Stop& stop) {
                return std::fabs(std::remainder(stop.angle - kink, period)) < 1e-9;
            });
            EXPECT_TRUE(stands) << kink / units::degree;
        }
    }
}

} // namespace
} // namespace lobewright::gas
