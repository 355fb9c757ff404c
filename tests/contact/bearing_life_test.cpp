#include "core/contact/bearing_life.h"

#include <gtest/gtest.h>

namespace lobewright::contact {
namespace {

TEST(EquivalentLoad, OfAConstantLoadIsThatLoad) {
    EXPECT_NEAR(equivalentLoad(Samples::Constant(7, -1200.0), Samples::LinSpaced(7, 1.0, 2.0)),
                1200.0, 1e-9);
}

TEST(EquivalentLoad, CountsTurnsNotTime) {
    Samples load(2), turns(2);
    load << 1000.0, 3000.0;
    turns << 3.0, 1.0;
    Samples repeated(4);
    repeated << 1000.0, 1000.0, 1000.0, 3000.0;
    EXPECT_NEAR(equivalentLoad(load, turns), equivalentLoad(repeated, Samples::Ones(4)), 1e-9);
}

} // namespace
} // namespace lobewright::contact
