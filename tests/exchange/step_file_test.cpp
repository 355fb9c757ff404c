#include "core/exchange/step_file.h"
#include "core/units.h"
#include "tests/exchange/parts.h"

#include <BRepAdaptor_Surface.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Reader.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <filesystem>
#include <fstream>
#include <unistd.h>
#include <vector>

namespace lobewright::exchange {
namespace {

using namespace testing;
using units::micrometre;
using units::millimetre;

constexpr double tolerance = 1.0 * micrometre;

std::string written(const TrackPart& part) {
    SilentMonitor monitor;
    auto text = stepText(part, tolerance, monitor);
    EXPECT_TRUE(text) << listed(text.problems());
    return std::move(text).value();
}

/// As another program would read it.
TopoDS_Shape readBack(const std::string& text) {
    for (Message_SequenceOfPrinters::Iterator printer(::Message::DefaultMessenger()->Printers());
         printer.More(); printer.Next()) {
        printer.Value()->SetTraceLevel(Message_Fail);
    }
    const auto file = std::filesystem::temp_directory_path() /
                      ("lobewright_step_" + std::to_string(::getpid()) + ".step");
    std::ofstream(file, std::ios::binary) << text;
    STEPControl_Reader reader;
    EXPECT_EQ(reader.ReadFile(file.c_str()), IFSelect_RetDone);
    EXPECT_GT(reader.TransferRoots(), 0);
    std::filesystem::remove(file);
    return reader.OneShape();
}

int count(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
    int found = 0;
    for (TopExp_Explorer at(shape, kind); at.More(); at.Next()) {
        ++found;
    }
    return found;
}

double volume(const TopoDS_Shape& shape) {
    GProp_GProps properties;
    BRepGProp::VolumeProperties(shape, properties, 1e-6);
    return properties.Mass() * millimetre * millimetre * millimetre;
}

Eigen::Vector3d metres(const gp_Pnt& point) {
    return Eigen::Vector3d(point.X(), point.Y(), point.Z()) * millimetre;
}

/// The faces that the roller runs on.
std::vector<BRepAdaptor_Surface> trackFaces(const TopoDS_Shape& shape) {
    std::vector<BRepAdaptor_Surface> faces;
    for (TopExp_Explorer at(shape, TopAbs_FACE); at.More(); at.Next()) {
        BRepAdaptor_Surface face(TopoDS::Face(at.Current()));
        if (face.GetType() == GeomAbs_BSplineSurface) {
            faces.push_back(face);
        }
    }
    return faces;
}

/// The flank that a face belongs to: push on the outer side of the roller's axis, pull on the
/// inner.
const FlankForm& flankOf(const TrackPart& part, const BRepAdaptor_Surface& face) {
    const Eigen::Vector3d middle =
        metres(face.Value(0.5 * (face.FirstUParameter() + face.LastUParameter()),
                          0.5 * (face.FirstVParameter() + face.LastVParameter())));
    const double angle = std::atan2(middle.y(), middle.x());
    const double axis = part.placement().axial(part.curve().at(part.placement().turned - angle).y);
    const bool isAbove = part.end == End::inlet ? middle.z() > axis : middle.z() < axis;
    return part.flanks[isAbove ? 1 : 0];
}

struct Case {
    std::string name;
    design::Design design;
    End end;
};

void PrintTo(const Case& each, std::ostream* out) {
    *out << each.name;
}

std::vector<Case> cases() {
    return {{"OpenInlet", design::testing::sample(), End::inlet},
            {"OpenExhaust", designWith(skewTrack()), End::exhaust},
            {"ClosedInlet", designWith(harmonicTrack(), true), End::inlet},
            {"ClosedExhaust", designWith(skewTrack(), true), End::exhaust},
            {"ParabolicInlet", designWith(parabolicTrack()), End::inlet},
            {"KnotsInOneTurn", designWith(knotTrack(), true), End::inlet}};
}

class StepSolid : public ::testing::TestWithParam<Case> {
  protected:
    void SetUp() override {
        part_ = part(GetParam().design, GetParam().end);
        shape_ = readBack(written(*part_));
    }
    std::optional<TrackPart> part_;
    TopoDS_Shape shape_;
};

// One test for each part, so that each is written and read once.
TEST_P(StepSolid, ReadBackIsTheTrack) {
    const TrackPart& p = *part_;
    EXPECT_EQ(count(shape_, TopAbs_SOLID), 1);
    EXPECT_EQ(count(shape_, TopAbs_SHELL), 1);
    EXPECT_TRUE(BRepCheck_Analyzer(shape_).IsValid());

    const double integrated = sweptVolume(p, 1440, 12);
    EXPECT_NEAR(volume(shape_) / integrated, 1.0, 1e-4);

    const std::vector<BRepAdaptor_Surface> faces = trackFaces(shape_);
    ASSERT_EQ(faces.size() % p.flanks.size(), 0U);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    const int each = 10000 / static_cast<int>(faces.size()) + 1;
    double worst = 0.0;
    for (const BRepAdaptor_Surface& face : faces) {
        const FlankForm& form = flankOf(p, face);
        for (int i = 0; i < each; ++i) {
            const double u = face.FirstUParameter() +
                             share(random) * (face.LastUParameter() - face.FirstUParameter());
            const double v = face.FirstVParameter() +
                             share(random) * (face.LastVParameter() - face.FirstVParameter());
            worst = std::max(worst, std::abs(gap(form, metres(face.Value(u, v)))));
        }
    }
    EXPECT_LT(worst, 1.0 * micrometre);
    RecordProperty("worst_nm", std::to_string(worst * 1e9));
}

// A roller at 720 places of the turn, against the faces as read: across the width, the nearest
// point of the face along the track must touch it.
TEST_P(StepSolid, RollerTouchesAndNeverCuts) {
    const TrackPart& p = *part_;
    double deepest = 0.0, widest = 0.0;
    const std::vector<BRepAdaptor_Surface> faces = trackFaces(shape_);
    for (const FlankForm& form : p.flanks) {
        std::vector<const BRepAdaptor_Surface*> own;
        for (const BRepAdaptor_Surface& face : faces) {
            if (&flankOf(p, face) == &form) {
                own.push_back(&face);
            }
        }
        ASSERT_FALSE(own.empty());
        for (int i = 0; i < 720; ++i) {
            const double phi = units::turn * i / 720.0;
            const double beta = form.placement.polarAngle(phi);
            const double axis = form.placement.axial(form.curve.at(phi).y);
            for (double share : {0.0, 0.5, 1.0}) {
                double nearest = 1.0;
                for (const BRepAdaptor_Surface* face : own) {
                    const double v = face->FirstVParameter() +
                                     share * (face->LastVParameter() - face->FirstVParameter());
                    const auto distance = [&](double u) {
                        const Eigen::Vector3d at = metres(face->Value(u, v));
                        const double along = at.x() * std::cos(beta) + at.y() * std::sin(beta);
                        const double across = at.y() * std::cos(beta) - at.x() * std::sin(beta);
                        return along < 0.0 ? 1.0
                                           : std::hypot(across, at.z() - axis) - p.roller.radius;
                    };
                    const double first = face->FirstUParameter(), last = face->LastUParameter();
                    constexpr int steps = 60;
                    int best = 0;
                    for (int k = 0; k <= steps; ++k) {
                        const double here = distance(first + (last - first) * k / steps);
                        if (here < distance(first + (last - first) * best / steps)) {
                            best = k;
                        }
                    }
                    std::uintmax_t tries = 60;
                    const auto refined = boost::math::tools::brent_find_minima(
                        distance, first + (last - first) * std::max(best - 1, 0) / steps,
                        first + (last - first) * std::min(best + 1, steps) / steps, 40, tries);
                    nearest = std::min(
                        {nearest, refined.second, distance(first + (last - first) * best / steps)});
                }
                deepest = std::min(deepest, nearest);
                widest = std::max(widest, nearest);
            }
        }
    }
    EXPECT_GT(deepest, -2.0 * micrometre);
    EXPECT_LT(widest, 2.0 * micrometre);
}

INSTANTIATE_TEST_SUITE_P(Tracks, StepSolid, ::testing::ValuesIn(cases()),
                         [](const auto& tested) { return tested.param.name; });

TEST(StepFile, NamesDesignUnitsAndTolerance) {
    design::Design design = design::testing::sample();
    design.title = "Pumpe Größe 3 “A” 'x' \\ 2";
    std::string text = written(part(design));
    std::erase(text, '\n'); // the writer breaks long lines
    EXPECT_EQ(text.substr(0, 13), "ISO-10303-21;");
    EXPECT_NE(text.find("Gr\\X2\\00F6\\X0\\\\X2\\00DF\\X0\\e 3"), std::string::npos)
        << text.substr(0, 1500);
    EXPECT_NE(text.find("within 1 um of the exact envelope"), std::string::npos);
    EXPECT_NE(text.find("SI_UNIT(.MILLI.,.METRE.)"), std::string::npos);
}

// A monitor that stops at once.
TEST(StepFile, StopsWhenAsked) {
    struct Stopper final : Monitor {
        bool step(double, const Message&) override { return false; }
    } stopper;
    const auto text = stepText(part(design::testing::sample()), tolerance, stopper);
    ASSERT_FALSE(text);
    EXPECT_EQ(text.problems().front().message.english(), "cancelled");
}

} // namespace
} // namespace lobewright::exchange
