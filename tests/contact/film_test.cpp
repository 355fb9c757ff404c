// What a film does at its ends; its size is checked in handbook/contact_film_test.cpp.
#include "core/contact/film.h"

#include <gtest/gtest.h>

namespace lobewright::contact {
namespace {

Samples one(double x) {
    return Samples::Constant(1, x);
}

const Lubricant oil;

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
