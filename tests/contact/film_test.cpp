#include "core/contact/film.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

Samples one(double x) {
    return Samples::Constant(1, x);
}

const Lubricant oil;

// Exponents of the formula: twice the speed gives 2^0.70 of the film, twice the load 2^−0.13.
TEST(LineFilm, GrowsWithSpeedAndHardlyShrinksWithLoad) {
    const double h = lineFilm(oil, one(5000), 0.02, one(10), one(0.0134), 113e9)(0);
    EXPECT_NEAR(lineFilm(oil, one(5000), 0.02, one(20), one(0.0134), 113e9)(0) / h,
                std::pow(2.0, 0.70), 1e-12);
    EXPECT_NEAR(lineFilm(oil, one(10000), 0.02, one(10), one(0.0134), 113e9)(0) / h,
                std::pow(2.0, -0.13), 1e-12);
}

TEST(EllipticalFilm, GrowsWithSpeedAndHardlyShrinksWithLoad) {
    const double h = ellipticalFilm(oil, one(5000), one(10), one(10), one(0.0134), 113e9)(0);
    EXPECT_NEAR(ellipticalFilm(oil, one(5000), one(10), one(20), one(0.0134), 113e9)(0) / h,
                std::pow(2.0, 0.68), 1e-12);
    EXPECT_NEAR(ellipticalFilm(oil, one(10000), one(10), one(10), one(0.0134), 113e9)(0) / h,
                std::pow(2.0, -0.073), 1e-12);
}

TEST(Film, IsAbsentWithoutLoadOrSpeed) {
    EXPECT_EQ(lineFilm(oil, one(0), 0.02, one(10), one(0.0134), 113e9)(0), 0.0);
    EXPECT_EQ(lineFilm(oil, one(10), 0.02, one(0), one(0.0134), 113e9)(0), 0.0);
    EXPECT_EQ(ellipticalFilm(oil, one(0), one(3), one(10), one(0.0134), 113e9)(0), 0.0);
    EXPECT_EQ(ellipticalFilm(oil, one(10), one(3), one(0), one(0.0134), 113e9)(0), 0.0);
}

TEST(Film, DoesNotCareAboutTheDirectionOfRolling) {
    EXPECT_EQ(lineFilm(oil, one(10), 0.02, one(-3), one(0.0134), 113e9)(0),
              lineFilm(oil, one(10), 0.02, one(3), one(0.0134), 113e9)(0));
}

} // namespace
} // namespace lobewright::contact
