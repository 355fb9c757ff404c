#include "core/exchange/track_drawing.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <gmock/gmock.h>

#include <dl_creationadapter.h>
#include <dl_dxf.h>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <unistd.h>

namespace lobewright::exchange {
namespace {

using namespace testing;
using ::testing::HasSubstr;
using units::millimetre;

/// What dxflib finds in a drawing.
class Drawing final : public DL_CreationAdapter {
  public:
    std::set<std::string> layers;
    std::map<std::string, std::vector<Eigen::Vector2d>> lines; ///< [mm], by layer
    std::map<std::string, int> polylines;
    std::vector<std::string> texts, comments;
    int insertUnits = 0;

    void addLayer(const DL_LayerData& layer) override { layers.insert(layer.name); }
    void addPolyline(const DL_PolylineData&) override {
        current_ = getAttributes().getLayer();
        ++polylines[current_];
    }
    void addVertex(const DL_VertexData& vertex) override {
        lines[current_].emplace_back(vertex.x, vertex.y);
    }
    void addText(const DL_TextData& text) override { texts.push_back(text.text); }
    void addComment(const std::string& comment) override { comments.push_back(comment); }
    void setVariableInt(const std::string& key, int value, int) override {
        if (key == "$INSUNITS") {
            insertUnits = value;
        }
    }

  private:
    std::string current_;
};

Drawing readBack(const std::string& text) {
    const auto file = std::filesystem::temp_directory_path() /
                      ("lobewright_dxf_" + std::to_string(::getpid()) + ".dxf");
    std::ofstream(file, std::ios::binary) << text;
    Drawing drawing;
    DL_Dxf reader;
    EXPECT_TRUE(reader.in(file.string(), &drawing));
    std::filesystem::remove(file);
    return drawing;
}

Drawing drawn(const TrackPart& part, const DrawingOptions& options) {
    SilentMonitor monitor;
    const auto text = trackDrawing(part, options, monitor);
    EXPECT_TRUE(text) << listed(text.problems());
    return readBack(*text);
}

struct Extent {
    double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
};
Extent extent(const std::vector<Eigen::Vector2d>& points) {
    Extent e;
    for (const Eigen::Vector2d& p : points) {
        e = {std::min(e.left, p.x()), std::max(e.right, p.x()), std::min(e.low, p.y()),
             std::max(e.high, p.y())};
    }
    return e;
}

TEST(TrackDrawing, HasTheLayersAndExtentsOfTheTrack) {
    const design::Design design = designWith(skewTrack(), true);
    for (End end : {End::inlet, End::exhaust}) {
        const TrackPart track = part(design, end);
        const Drawing drawing = drawn(track, {{0.094, 0.104}, 1e-6});
        EXPECT_EQ(drawing.insertUnits, 4) << "millimetres";
        EXPECT_EQ(drawing.layers,
                  (std::set<std::string>{"0", "PITCH_CURVE", "PUSH_FLANK_R94", "PUSH_FLANK_R104",
                                         "PULL_FLANK_R94", "PULL_FLANK_R104", "FACES", "NOTES"}));
        // Lifts 0 … 34 mm, roller 24 mm: the flanks reach from −24 to 34 − 24 and from 24 to 58.
        const double up = end == End::inlet ? 1.0 : -1.0;
        const auto expect = [&](const std::string& layer, double radius, double outer,
                                double inner) {
            ASSERT_EQ(drawing.polylines.at(layer), 1) << layer;
            const Extent e = extent(drawing.lines.at(layer));
            EXPECT_NEAR(e.left, 0.0, 1e-8) << layer;
            EXPECT_NEAR(e.right, units::turn * radius, 1e-6) << layer;
            EXPECT_NEAR(e.low, std::min(up * outer, up * inner), 1e-6) << layer;
            EXPECT_NEAR(e.high, std::max(up * outer, up * inner), 1e-6) << layer;
        };
        expect("PITCH_CURVE", 104.0, 0.0, 34.0);
        expect("PUSH_FLANK_R94", 94.0, -24.0, 10.0);
        expect("PUSH_FLANK_R104", 104.0, -24.0, 10.0);
        expect("PULL_FLANK_R104", 104.0, 24.0, 58.0);
        const Extent faces = extent(drawing.lines.at("FACES"));
        EXPECT_NEAR(up * (end == End::inlet ? faces.low : faces.high),
                    track.backHeight / millimetre, 1e-6);
        EXPECT_NEAR(faces.right, units::turn * track.faceOuter / millimetre, 1e-6);
    }
}

// Wrapped back onto its cylinder, every vertex lies on the flank, and the middle of every chord no
// further from it than asked.
TEST(TrackDrawing, FlanksWrapBackOntoTheTrack) {
    constexpr double tolerance = 2e-6, radius = 0.094;
    const TrackPart track = part(designWith(skewTrack()), End::exhaust);
    const Drawing drawing = drawn(track, {{radius}, tolerance});
    const auto& points = drawing.lines.at("PUSH_FLANK_R94");
    const auto wrapped = [&](const Eigen::Vector2d& mm) {
        const Eigen::Vector2d p = mm * millimetre;
        return Eigen::Vector3d(radius * std::cos(p.x() / radius), radius * std::sin(p.x() / radius),
                               p.y());
    };
    double worst = 0.0;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        EXPECT_NEAR(gap(track.flanks[0], wrapped(points[i])), 0.0, 2e-12);
        worst = std::max(
            worst, std::abs(gap(track.flanks[0], wrapped(0.5 * (points[i] + points[i + 1])))));
    }
    EXPECT_LE(worst, tolerance);
    EXPECT_GT(worst, 0.2 * tolerance) << "finer than asked";
}

// Seen from outside with the exhaust end up, arc length grows to the right with the direction of
// rotation, so the inlet's pattern runs to the left: right of a crest lies the rise.
TEST(TrackDrawing, PitchCurveHasTheHandOfThePart) {
    for (End end : {End::inlet, End::exhaust}) {
        const TrackPart track = part(designWith(skewTrack()), end);
        const Drawing drawing = drawn(track, {{}, 1e-5});
        const double lead = track.placement().turned;
        for (const Eigen::Vector2d& p : drawing.lines.at("PITCH_CURVE")) {
            const double polar = p.x() * millimetre / track.pitchRadius;
            const double lift = track.curve().at(lead - polar).y / millimetre;
            EXPECT_NEAR(p.y(), end == End::inlet ? lift : -lift, 1e-8);
        }
    }
}

TEST(TrackDrawing, NamesDesignUnitsAndTolerance) {
    design::Design design = design::testing::sample();
    design.title = "Größe 3\nline";
    const Drawing drawing = drawn(part(design), {{}, 5e-6});
    const std::string all = [&] {
        std::string joined;
        for (const std::string& text : drawing.texts) {
            joined += text + "\n";
        }
        return joined;
    }();
    EXPECT_THAT(all, HasSubstr("Design: Gr\\U+00F6\\U+00DFe 3 line"));
    EXPECT_THAT(all, HasSubstr("Units: millimetres"));
    EXPECT_THAT(all, HasSubstr("chords stay within 5 um"));
}

TEST(TrackDrawing, RefusesRadiiOutsideTheFace) {
    SilentMonitor monitor;
    const auto text = trackDrawing(part(design::testing::sample()), {{0.104, 0.2}, 1e-6}, monitor);
    ASSERT_FALSE(text);
    EXPECT_EQ(text.problems().front().path, "/radii_mm/1");
}

} // namespace
} // namespace lobewright::exchange
