#include "core/study/contours.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace lobewright::study {
namespace {

TEST(Contours, LieOnTheCircleOfARoundHill) {
    constexpr int size = 81;
    Eigen::ArrayXXd values(size, size);
    for (int i = 0; i < size; ++i) {
        for (int k = 0; k < size; ++k) {
            values(i, k) = (i - 40.0) * (i - 40.0) + (k - 40.0) * (k - 40.0);
        }
    }
    double length = 0.0;
    for (const ContourPiece& piece : contourPieces(values, 900.0)) {
        for (const GridPlace& place : {piece.from, piece.to}) {
            // Along an edge the hill bends by 1/4 at most, which is 1/4 by its slope of 60 here.
            EXPECT_NEAR(std::hypot(place.row - 40.0, place.column - 40.0), 30.0, 0.25 / 60.0 * 1.5);
        }
        length += std::hypot(piece.from.row - piece.to.row, piece.from.column - piece.to.column);
    }
    EXPECT_NEAR(length, 2.0 * 3.14159265358979 * 30.0, 0.1);
}

TEST(Contours, CutOffTheCornersThatDifferFromTheMiddleOfASaddle) {
    Eigen::ArrayXXd values(2, 2);
    values << 1.0, -1.0, //
        -1.0, 1.5;
    const auto pieces = contourPieces(values, 0.0); // middle above: the low corners are cut off
    ASSERT_EQ(pieces.size(), 2U);
    for (const ContourPiece& piece : pieces) {
        const double row = 0.5 * (piece.from.row + piece.to.row);
        const double column = 0.5 * (piece.from.column + piece.to.column);
        EXPECT_GT(std::abs(row - column), 0.3) << row << ' ' << column;
    }
    values(1, 1) = 0.5; // middle below: the high ones are
    for (const ContourPiece& piece : contourPieces(values, 0.0)) {
        const double row = 0.5 * (piece.from.row + piece.to.row);
        const double column = 0.5 * (piece.from.column + piece.to.column);
        EXPECT_GT(std::abs(row + column - 1.0), 0.3) << row << ' ' << column;
    }
}

TEST(Contours, LeaveOutCellsWithoutAValue) {
    Eigen::ArrayXXd values = Eigen::ArrayXXd::Zero(3, 3);
    values.col(2) = 1.0;
    EXPECT_EQ(contourPieces(values, 0.5).size(), 2U);
    values(0, 2) = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(contourPieces(values, 0.5).size(), 1U);
}

TEST(Contours, StandAtRoundLevels) {
    Eigen::ArrayXXd values(2, 2);
    values << 203.0, 241.0, 260.0, 297.0;
    EXPECT_EQ(roundLevels(values, 5), (std::vector<double>{220.0, 240.0, 260.0, 280.0}));
    values = 3.0;
    EXPECT_TRUE(roundLevels(values, 5).empty());
}

TEST(Grid, IsReadLinearlyAndBackFromAValue) {
    Eigen::ArrayXXd values(3, 2);
    values << 1.0, 2.0, //
        3.0, 5.0,       //
        4.0, 9.0;
    EXPECT_DOUBLE_EQ(valueAt(values, {0.5, 0.5}), 2.75);
    EXPECT_EQ(valueAt(values, {2.0, 1.0}), 9.0);
    ASSERT_TRUE(rowWith(values, 1.0, 7.0));
    EXPECT_DOUBLE_EQ(*rowWith(values, 1.0, 7.0), 1.5);
    EXPECT_DOUBLE_EQ(valueAt(values, {*rowWith(values, 0.3, 3.1), 0.3}), 3.1);
    EXPECT_FALSE(rowWith(values, 0.0, 4.1));
    values(0, 0) = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(valueAt(values, {1.0, 0.0}), 3.0); // the gap has no weight here
    EXPECT_FALSE(rowWith(values, 0.0, 2.0));
    EXPECT_DOUBLE_EQ(*rowWith(values, 0.0, 3.5), 1.5);
}

} // namespace
} // namespace lobewright::study
