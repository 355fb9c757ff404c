#include "core/exchange/stl_file.h"
#include "core/exchange/track_mesh.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <Eigen/Geometry>

#include <bit>
#include <cstring>
#include <map>
#include <set>

namespace lobewright::exchange {
namespace {

using namespace testing;
using units::micrometre;
using units::millimetre;

Mesh meshed(const TrackPart& part, double chordError) {
    SilentMonitor monitor;
    auto mesh = trackMesh(part, chordError, monitor);
    EXPECT_TRUE(mesh) << listed(mesh.problems());
    return std::move(mesh).value();
}

/// What a reader of binary STL sees.
struct Facet {
    Eigen::Vector3f normal;
    std::array<std::array<float, 3>, 3> corners;
};

std::vector<Facet> facets(const std::string& bytes) {
    std::uint32_t count = 0;
    std::memcpy(&count, bytes.data() + 80, 4);
    EXPECT_EQ(bytes.size(), 84 + 50 * std::size_t{count});
    std::vector<Facet> result(count);
    for (std::size_t i = 0; i < count; ++i) {
        const char* place = bytes.data() + 84 + 50 * i;
        std::memcpy(result[i].normal.data(), place, 12);
        std::memcpy(result[i].corners.data(), place + 12, 36);
    }
    return result;
}

Eigen::Vector3d corner(const Facet& facet, std::size_t i) {
    return Eigen::Vector3d(facet.corners[i][0], facet.corners[i][1], facet.corners[i][2]) *
           millimetre;
}

struct Case {
    std::string name;
    design::Design design;
    End end;
    double chordError;
};

void PrintTo(const Case& each, std::ostream* out) {
    *out << each.name;
}

class TrackStl : public ::testing::TestWithParam<Case> {
  protected:
    void SetUp() override {
        part_ = part(GetParam().design, GetParam().end);
        facets_ = facets(stlBytes(*part_, meshed(*part_, GetParam().chordError), 1e-6));
    }
    std::optional<TrackPart> part_;
    std::vector<Facet> facets_;
};

TEST_P(TrackStl, EveryEdgeIsSharedByTwoTrianglesThatPassItInOppositeDirections) {
    using Corner = std::array<float, 3>;
    std::map<std::pair<Corner, Corner>, int> passages;
    for (const Facet& facet : facets_) {
        for (std::size_t i = 0; i < 3; ++i) {
            ++passages[{facet.corners[i], facet.corners[(i + 1) % 3]}];
        }
    }
    std::size_t bad = 0;
    for (const auto& [edge, count] : passages) {
        const auto back = passages.find({edge.second, edge.first});
        bad += count != 1 || back == passages.end() || back->second != 1 ? 1 : 0;
    }
    EXPECT_EQ(bad, 0U) << "of " << passages.size();
}

// By the divergence theorem the volume under outward triangles is positive, and it must be that of
// the swept ring; normals agree with the order of the corners.
TEST_P(TrackStl, NormalsPointOutward) {
    double volume = 0.0, area = 0.0;
    for (const Facet& facet : facets_) {
        const Eigen::Vector3d a = corner(facet, 0), b = corner(facet, 1), c = corner(facet, 2);
        const Eigen::Vector3d cross = (b - a).cross(c - a);
        volume += a.dot(cross) / 6.0;
        area += 0.5 * cross.norm();
        ASSERT_GT(cross.normalized().dot(facet.normal.cast<double>()), 0.9);
    }
    const double swept = sweptVolume(*part_, 1440, 12);
    EXPECT_NEAR(volume, swept, 1e-4 * swept + area * GetParam().chordError);
}

/// How far a point near the surface is from it: flank, cylinder or plane, whichever is nearest.
double fromSurface(const TrackPart& part, const Eigen::Vector3d& point) {
    const double s = std::hypot(point.x(), point.y());
    const double height = part.end == End::inlet ? point.z() : -point.z();
    double nearest = std::min(std::abs(s - part.faceOuter), std::abs(s - part.boreRadius));
    nearest = std::min({nearest, std::abs(s - part.faceInner), std::abs(height - part.backHeight)});
    if (part.isClosed()) {
        nearest = std::min(nearest, std::abs(height - part.frontHeight));
    }
    for (const FlankForm& form : part.flanks) {
        if (nearest > 1e-9) {
            nearest = std::min(nearest, std::abs(gap(form, point)));
        }
    }
    return nearest;
}

TEST_P(TrackStl, StraysNoFurtherThanTheChordErrorAsked) {
    std::mt19937 random(11);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    std::uniform_int_distribution<std::size_t> which(0, facets_.size() - 1);
    double worst = 0.0;
    for (int i = 0; i < 6000; ++i) {
        const Facet& facet = facets_[which(random)];
        const Eigen::Vector3d a = corner(facet, 0), b = corner(facet, 1), c = corner(facet, 2);
        double u = share(random), v = share(random);
        if (u + v > 1.0) {
            u = 1.0 - u;
            v = 1.0 - v;
        }
        worst = std::max(worst, fromSurface(*part_, a + u * (b - a) + v * (c - a)));
        worst = std::max(worst, fromSurface(*part_, (a + b + c) / 3.0));
        worst = std::max(worst, fromSurface(*part_, 0.5 * (a + b)));
    }
    EXPECT_LE(worst, GetParam().chordError);
    // Not much finer than asked either, or the file is larger than it need be.
    EXPECT_GT(worst, 0.3 * GetParam().chordError);
}

INSTANTIATE_TEST_SUITE_P(
    Tracks, TrackStl,
    ::testing::Values(Case{"OpenInlet", design::testing::sample(), End::inlet, 5e-6},
                      Case{"Fine", designWith(skewTrack()), End::inlet, 1e-6},
                      Case{"OpenExhaust", designWith(skewTrack()), End::exhaust, 20e-6},
                      Case{"ClosedInlet", designWith(knotTrack(), true), End::inlet, 10e-6},
                      Case{"ClosedExhaust", designWith(skewTrack(), true), End::exhaust, 50e-6},
                      Case{"Parabolic", designWith(parabolicTrack()), End::inlet, 10e-6}),
    [](const auto& tested) { return tested.param.name; });

// A chord is off by the square of its length: along and across, the triangles go as the inverse of
// the error allowed.
TEST(TrackMesh, TrianglesGoAsTheInverseOfTheChordError) {
    const TrackPart track = part(designWith(skewTrack()));
    const auto count = [&](double error) {
        return static_cast<double>(meshed(track, error).triangles.size());
    };
    const double ratio = count(0.2e-6) / count(1e-6);
    EXPECT_GT(ratio, 4.0);
    EXPECT_LT(ratio, 6.5);
}

TEST(StlFile, NamesDesignUnitsAndTolerance) {
    design::Design design = design::testing::sample();
    design.title = std::string(70, 'x') + "ü";
    const TrackPart track = part(design);
    const std::string head = stlBytes(track, meshed(track, 1e-4), 1e-4).substr(0, 80);
    EXPECT_TRUE(head.starts_with("Lobewright, mm, chord 100 um, inlet track: xxxx")) << head;
    EXPECT_FALSE(head.starts_with("solid")) << "the mark of the other kind of STL";
}

TEST(TrackMesh, RefusesChordErrorsBelowWhatFilesCanTell) {
    SilentMonitor monitor;
    const auto mesh = trackMesh(part(design::testing::sample()), 1e-9, monitor);
    ASSERT_FALSE(mesh);
    EXPECT_EQ(mesh.problems().front().path, "/tolerance_um");
}

// At 0.01 µm the digits of the surface run out; dividing on took all memory.
TEST(TrackMesh, RefusesWhatTakesMoreTrianglesThanAnyProgramReads) {
    SilentMonitor monitor;
    const auto mesh = trackMesh(part(design::testing::sample()), 1e-8, monitor);
    ASSERT_FALSE(mesh);
    EXPECT_EQ(mesh.problems().front().path, "/tolerance_um");
    EXPECT_EQ(mesh.problems().front().message.english(),
              "a mesh within 0.01 µm has more than 4 million triangles; allow a coarser tolerance");
    const auto fine = trackMesh(part(design::testing::sample()), 1e-7, monitor);
    ASSERT_TRUE(fine);
    EXPECT_GT(fine->triangles.size(), 100000u);
    EXPECT_LT(fine->triangles.size(), mostTriangles);
}

TEST(TrackMesh, StopsWhenAskedAtEveryStage) {
    struct Stopper final : Monitor {
        explicit Stopper(int left) : left_(left) {}
        bool step(double fraction, const Message&) override {
            EXPECT_GE(fraction, 0.0);
            EXPECT_LE(fraction, 1.0);
            return left_-- > 0;
        }
        int left_;
    };
    const TrackPart track = part(design::testing::sample());
    int stages = 0;
    for (;; ++stages) {
        Stopper stopper(stages);
        const auto mesh = trackMesh(track, 1e-4, stopper);
        if (mesh) {
            break;
        }
        EXPECT_EQ(mesh.problems().front().message.english(), "cancelled");
    }
    EXPECT_GE(stages, 3);
}

} // namespace
} // namespace lobewright::exchange
