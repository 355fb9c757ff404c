#include "core/exchange/track_tables.h"
#include "core/track/cutter_path.h"
#include "core/track/undercut.h"
#include "core/units.h"
#include "tests/exchange/parts.h"
#include "tests/exchange/tables.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace lobewright::exchange {
namespace {

using namespace testing;
using ::testing::HasSubstr;
using units::degree;
using units::micrometre;
using units::millimetre;

ReadTable read(const Result<std::string>& text) {
    EXPECT_TRUE(text) << listed(text.problems());
    return readTable(*text);
}

TEST(LiftTable, HoldsLiftAndDerivativesPerDegreeOverOneTurn) {
    SilentMonitor monitor;
    const TrackPart track = part(design::testing::sample());
    const ReadTable table = read(liftTable(track, 0.5 * degree, monitor));
    ASSERT_EQ(table.rows.size(), 721U);
    EXPECT_THAT(table.head(), HasSubstr("Design: Biogas pump set"));
    EXPECT_THAT(table.head(), HasSubstr("Units: millimetres and degrees"));
    EXPECT_THAT(table.head(), HasSubstr("Tolerance: "));
    double highest = 0.0;
    for (std::size_t i = 0; i < 720; ++i) {
        const double angle = 0.5 * static_cast<double>(i);
        EXPECT_NEAR(table.at(i, "pattern_angle_deg"), angle, 1e-9);
        const motion::Lift lift = track.curve().at(angle * degree);
        EXPECT_NEAR(table.at(i, "lift_mm"), lift.y * 1e3, 6e-7);
        EXPECT_NEAR(table.at(i, "velocity_mm_per_deg"), lift.y1 * 1e3 * degree, 1e-8);
        EXPECT_NEAR(table.at(i, "acceleration_mm_per_deg2"), lift.y2 * 1e3 * degree * degree, 1e-9);
        highest = std::max(highest, table.at(i, "lift_mm"));
    }
    EXPECT_NEAR(highest, 34.0, 1e-6); // stroke of the sample
}

/// Every row but its angles is that of the first row.
void expectClosed(const ReadTable& table, std::size_t first, std::size_t last) {
    EXPECT_NEAR(table.at(last, "pattern_angle_deg") - table.at(first, "pattern_angle_deg"), 360.0,
                1e-9);
    for (const std::string& name : table.names) {
        if (name == "rotary_angle_deg") {
            EXPECT_NEAR(std::abs(table.at(last, name) - table.at(first, name)), 360.0, 1e-6);
        } else if (name != "flank" && name != "pattern_angle_deg") {
            EXPECT_NEAR(table.at(last, name), table.at(first, name), 2e-6) << name;
        }
    }
}

// A dwell at outer dead centre closes the pattern; a step that does not divide the turn all the
// less ends before it.
TEST(LiftTable, ComesRoundToItsFirstRow) {
    SilentMonitor monitor;
    const TrackPart track = part(design::testing::sample());
    for (const double step : {0.5, 0.7}) {
        const ReadTable table = read(liftTable(track, step * degree, monitor));
        expectClosed(table, 0, table.rows.size() - 1);
    }
}

TEST(CutterTable, ComesRoundToItsFirstRow) {
    SilentMonitor monitor;
    const TrackPart track = part(designWith(skewTrack(), true));
    for (const std::optional<double> step :
         {std::optional<double>(), std::optional(0.7 * degree)}) {
        const ReadTable table = read(cutterTable(track, {0.010, 1e-6, step}, monitor));
        std::size_t pull = 0;
        while (table.text(pull, "flank") == "push") {
            ++pull;
        }
        expectClosed(table, 0, pull - 1);
        expectClosed(table, pull, table.rows.size() - 1);
    }
}

TEST(LiftTable, RefusesStepsOutOfRange) {
    SilentMonitor monitor;
    for (double step : {0.0, -1.0, 0.0005, 91.0, std::nan("")}) {
        const auto text = liftTable(part(design::testing::sample()), step * degree, monitor);
        ASSERT_FALSE(text) << step;
        EXPECT_EQ(text.problems().front().path, "/step_deg");
    }
}

// The distance of the finished flank from the path is the cutter's radius at the pitch radius:
// every point of the flank there stays at least c away from the axis of the cutter, and touches it.
TEST(CutterTable, CutterTouchesTheFlankAtThePitchRadius) {
    SilentMonitor monitor;
    for (const auto& [end, isClosed] : {std::pair{End::inlet, false}, {End::exhaust, true}}) {
        const TrackPart track = part(designWith(skewTrack(), isClosed), end);
        const double cutter = 0.010;
        const ReadTable table = read(cutterTable(track, {cutter, 1e-6, 0.25 * degree}, monitor));
        ASSERT_EQ(table.rows.size(), 1441U * track.flanks.size());
        for (const FlankForm& form : track.flanks) {
            const std::string word = form.flank == track::Flank::push ? "push" : "pull";
            double closest = 1.0;
            for (std::size_t i = 0; i < table.rows.size(); i += 40) {
                if (table.text(i, "flank") != word) {
                    continue;
                }
                const double beta = table.at(i, "rotary_angle_deg") * degree;
                const double z = table.at(i, "axial_mm") * millimetre;
                const double phi = table.at(i, "pattern_angle_deg") * degree;
                const auto distance = [&](double at) {
                    const auto s = track::surface(form.curve, Samples::Constant(1, at),
                                                  Samples::Constant(1, track.pitchRadius),
                                                  form.rollerRadius, form.flank, form.placement);
                    const Eigen::Vector3d p = s.points.col(0);
                    return std::hypot(p.y() * std::cos(beta) - p.x() * std::sin(beta), p.z() - z);
                };
                std::uintmax_t steps = 60;
                const auto nearest = boost::math::tools::brent_find_minima(distance, phi - 0.15,
                                                                           phi + 0.15, 40, steps);
                closest = std::min(closest, nearest.second);
                const double alpha = std::atan(form.curve.at(phi).y1 / track.pitchRadius);
                const double gamma = beta - form.placement.polarAngle(phi);
                const double skew = std::sin(alpha) * std::sin(gamma);
                EXPECT_NEAR(nearest.second, cutter,
                            1.01 * cutter * (1.0 - std::sqrt(1.0 - skew * skew)) + 1.5e-9)
                    << phi;
            }
            EXPECT_LT(closest, 1.0);
        }
    }
}

TEST(CutterTable, OffsetIsWhatTheRotaryAngleContains) {
    SilentMonitor monitor;
    const TrackPart track = part(designWith(skewTrack()), End::exhaust);
    const ReadTable table = read(cutterTable(track, {0.010, 1e-6, 1.0 * degree}, monitor));
    double largest = 0.0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const double phi = table.at(i, "pattern_angle_deg") * degree;
        const double beta = track.placement().polarAngle(phi);
        const double offset = table.at(i, "offset_mm") * millimetre;
        EXPECT_NEAR(beta + std::atan(offset / track.pitchRadius),
                    table.at(i, "rotary_angle_deg") * degree, 2e-8);
        const double alpha = std::atan(track.curve().at(phi).y1 / track.pitchRadius);
        EXPECT_NEAR(offset, (0.010 - track.roller.radius) * std::sin(alpha), 1e-9);
        largest = std::max(largest, std::abs(offset));
    }
    EXPECT_GT(largest, 1e-3);
}

// Straight between rows, as a control moves its axes.
TEST(CutterTable, RowsStandCloseEnoughForTheTolerance) {
    SilentMonitor monitor;
    const TrackPart track = part(design::testing::sample());
    constexpr double tolerance = 3e-6;
    const ReadTable table = read(cutterTable(track, {track.roller.radius, tolerance, {}}, monitor));
    EXPECT_THAT(table.head(), HasSubstr("within 3 um"));
    double worst = 0.0;
    for (std::size_t i = 0; i + 1 < table.rows.size(); ++i) {
        const double phi =
            0.5 * (table.at(i, "pattern_angle_deg") + table.at(i + 1, "pattern_angle_deg")) *
            degree;
        const double axial = 0.5 * (table.at(i, "axial_mm") + table.at(i + 1, "axial_mm"));
        const motion::Lift lift = track.curve().at(phi);
        // the vertical distance, seen along the path
        worst = std::max(worst, std::abs(axial * millimetre - lift.y) * track.pitchRadius /
                                    std::hypot(track.pitchRadius, lift.y1));
    }
    EXPECT_LE(worst, tolerance + 1e-9);
    EXPECT_GT(worst, 0.2 * tolerance);
}

TEST(CutterTable, TellsTheErrorThatAnotherRadiusLeaves) {
    SilentMonitor monitor;
    const TrackPart track = part(design::testing::sample());
    const auto edges = track::cutterDeviations(track.curve(), track.pitchRadius, track.roller,
                                               0.012, track::Flank::push);
    ASSERT_TRUE(edges);
    const ReadTable thin = read(cutterTable(track, {0.012, 1e-5, {}}, monitor));
    EXPECT_THAT(thin.head(),
                HasSubstr(fmt::format("{:+.3f} um at 94 mm", edges->inner.most / micrometre)));
    const ReadTable same = read(cutterTable(track, {track.roller.radius, 1e-5, {}}, monitor));
    EXPECT_THAT(same.head(), HasSubstr("0.000 um at 94 mm"));
}

TEST(CutterTable, RefusesCuttersThatCannotMakeTheTrack) {
    SilentMonitor monitor;
    const TrackPart open = part(design::testing::sample());
    const auto hollow =
        track::largestCutterRadius(open.curve(), open.pitchRadius, open.roller, track::Flank::push);
    ASSERT_TRUE(hollow);
    EXPECT_TRUE(cutterTable(open, {0.999 * hollow->value, 1e-4, {}}, monitor));
    const TrackPart closed = part(designWith(skewTrack(), true));
    for (const auto& [track, cutter] :
         {std::pair{&open, 1.001 * hollow->value}, {&open, 0.0}, {&closed, 0.0241}}) {
        const auto text = cutterTable(*track, {cutter, 1e-4, {}}, monitor);
        ASSERT_FALSE(text) << cutter;
        EXPECT_EQ(text.problems().front().path, "/cutter_radius_mm");
    }
}

TEST(InspectionTable, PointsLieOnTheTrackWithNormalsToTheRollerAxis) {
    SilentMonitor monitor;
    for (End end : {End::inlet, End::exhaust}) {
        const TrackPart track = part(designWith(skewTrack(), true), end);
        const ReadTable table = read(inspectionTable(track, {0.096, 0.110}, 7.5 * degree, monitor));
        ASSERT_EQ(table.rows.size(), 2U * 48U * 2U);
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            const FlankForm& form = track.flanks[table.text(i, "flank") == "push" ? 0 : 1];
            const Eigen::Vector3d p(table.at(i, "x_mm"), table.at(i, "y_mm"), table.at(i, "z_mm"));
            const Eigen::Vector3d n(table.at(i, "normal_x"), table.at(i, "normal_y"),
                                    table.at(i, "normal_z"));
            EXPECT_NEAR(gap(form, p * millimetre), 0.0, 1.5e-9);
            EXPECT_NEAR(std::hypot(p.x(), p.y()), table.at(i, "radius_mm"), 1e-6);
            EXPECT_NEAR(n.norm(), 1.0, 1e-8);
            // One roller radius along the normal stands the axis, on the radial line at β.
            const double beta =
                form.placement.polarAngle(table.at(i, "pattern_angle_deg") * degree);
            const Eigen::Vector3d axis = p + track.roller.radius / millimetre * n;
            EXPECT_NEAR(axis.y() * std::cos(beta) - axis.x() * std::sin(beta), 0.0, 2e-6);
            EXPECT_NEAR(std::hypot(axis.x(), axis.y()), table.at(i, "roller_position_mm"), 2e-6);
            EXPECT_GT(table.at(i, "relative_radius_mm"), 0.0);
        }
    }
}

// The planar approximation, made here as it is named: the pitch curve drawn on the unrolled
// cylinder, offset by the roller's radius at right angles, wrapped again. Its distance from the
// exact flank is found by brute force.
TEST(InspectionTable, PlanarApproximationStraysAsBruteForceSays) {
    SilentMonitor monitor;
    const TrackPart track = part(designWith(skewTrack()));
    const FlankForm& form = track.flanks[0];
    const double s = 0.096, r = track.roller.radius;
    const ReadTable table = read(inspectionTable(track, {s}, 3.0 * degree, monitor));
    double largest = 0.0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const double phi = table.at(i, "pattern_angle_deg") * degree;
        const motion::Lift lift = form.curve.at(phi);
        // tangent of the unrolled curve (s·φ, y): (s, y'); normal to the outer side: (y', −s)
        const double length = std::hypot(s, lift.y1);
        const double arc = s * phi + r * lift.y1 / length, height = lift.y - r * s / length;
        const double polar = form.placement.polarAngle(arc / s);
        const Eigen::Vector3d planar(s * std::cos(polar), s * std::sin(polar), height);
        // gap is positive in the metal; the column counts outward from it
        const double outside = -gap(form, planar) / micrometre;
        EXPECT_NEAR(table.at(i, "planar_deviation_um"), outside, 2e-4 + 0.02 * std::abs(outside));
        largest = std::max(largest, std::abs(outside));
    }
    EXPECT_GT(largest, 0.5) << "the two surfaces differ";
}

TEST(InspectionTable, RefusesRadiiOutsideTheFace) {
    SilentMonitor monitor;
    const auto text =
        inspectionTable(part(design::testing::sample()), {0.05}, 5.0 * degree, monitor);
    ASSERT_FALSE(text);
    EXPECT_EQ(text.problems().front().path, "/radii_mm/0");
}

} // namespace
} // namespace lobewright::exchange
