// The scene on the program's own samples, solved for real.
#include "core/units.h"
#include "tests/ui/scene_fixture.h"
#include "ui/scene/base/phase.h"
#include "ui/scene/section/cylinder_circle.h"
#include "ui/scene/section/section_view.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/tracks/adjuster_panel.h"
#include "ui/scene/tracks/liner_map.h"
#include "ui/scene/tracks/unrolled_tracks.h"
#include "ui/scene/walk/student_walk.h"

#include <QTableWidget>
#include <gtest/gtest.h>

#include <cmath>
#include <ctime>
#include <map>

namespace lobewright::ui::test {
namespace {

constexpr double deg = units::degree;

class Sample : public ::testing::TestWithParam<const char*> {
  protected:
    SolutionPointer solved() const {
        static std::map<std::string, SolutionPointer> known;
        auto& solution = known[GetParam()];
        if (!solution)
            solution = solvedSample(GetParam());
        return solution;
    }
    QString pictureName(const char* view, bool dark, int width) const {
        return QStringLiteral("%1-%2-%3-%4")
            .arg(QString::fromLatin1(GetParam()).section(QLatin1Char('-'), 0, 0),
                 QString::fromLatin1(view), dark ? QStringLiteral("dark") : QStringLiteral("light"))
            .arg(width);
    }
};

// What the scene reads between samples agrees with the gas cycle's own dense output.
TEST_P(Sample, PressureShownIsThePressureSolved) {
    ShownEngine engine;
    engine.setSolution(solved());
    ASSERT_TRUE(engine.solution()->gas);
    double peak = 0.0, worst = 0.0;
    for (double theta = 0.01; theta < units::turn; theta += 0.0173) {
        const auto gas = engine.gasAt(theta);
        ASSERT_TRUE(gas);
        const double exact = engine.solution()->gas->trace->pressure(theta) / units::bar;
        peak = std::max(peak, exact);
        worst = std::max(worst, std::abs(gas->pressure - exact));
        EXPECT_GE(gas->burntShare, 0.0);
        EXPECT_LE(gas->burntShare, 1.0);
    }
    // Linear between samples of half a degree: some thousandths of the peak.
    EXPECT_LT(worst, 0.01 * peak);
}

TEST_P(Sample, PhasesFollowOneAnotherAsThePortsOpenAndClose) {
    ShownEngine engine;
    engine.setSolution(solved());
    for (double theta = 0.0; theta < units::turn; theta += 0.5 * deg) {
        const bool inlet = engine.timing().area(End::inlet, theta) > 0.0;
        const bool exhaust = engine.timing().area(End::exhaust, theta) > 0.0;
        const Phase phase = phaseAt(engine, theta);
        const bool closed =
            phase == Phase::compression || phase == Phase::burning || phase == Phase::expansion;
        // At the very event rounding may put the two on different sides.
        const auto events = engine.eventsSince(theta);
        bool nearEvent = false;
        for (const End end : bothEnds) {
            for (const double event : {events.opens(end), events.closes(end)}) {
                nearEvent = nearEvent ||
                            std::abs(std::remainder(theta - event, engine.pair().period())) < 1e-6;
            }
        }
        if (!nearEvent) {
            EXPECT_EQ(closed, !inlet && !exhaust) << theta / deg;
            EXPECT_EQ(phase == Phase::scavenging, inlet && exhaust) << theta / deg;
        }
    }
}

TEST_P(Sample, WalkTellsEveryStepWithNumbers) {
    ShownEngine engine;
    engine.setSolution(solved());
    const auto steps = walkSteps(engine);
    EXPECT_GE(steps.size(), 6U);
    for (std::size_t i = 0; i < steps.size(); ++i) {
        EXPECT_FALSE(steps[i].text.contains(QStringLiteral("nan")));
        EXPECT_FALSE(steps[i].text.contains(QStringLiteral("  ")));
        EXPECT_GE(steps[i].theta, steps[std::max<std::size_t>(i, 1) - 1].theta);
    }
}

TEST_P(Sample, AdjusterShowsTheCompressionRatio) {
    AdjusterPanel panel;
    panel.showSolution(solved());
    const auto* table = panel.findChild<QTableWidget*>();
    for (int row = 0; row < table->rowCount(); ++row)
        EXPECT_FALSE(table->item(row, 4)->text().isEmpty()) << row;
}

// Playing and dragging have to stay fluent: 30 frames a second leave 33 ms of the processor for
// everything, whatever else the machine does.
TEST_P(Sample, AFrameOfEveryViewIsPaintedInAFewMilliseconds) {
    TurnCursor cursor;
    SectionView section(cursor);
    UnrolledTracks tracks(cursor);
    CylinderCircle circle(cursor);
    for (TurnView* view : std::initializer_list<TurnView*>{&section, &tracks, &circle}) {
        view->resize(900, 500);
        view->showSolution(solved());
        QPixmap target(view->size());
        view->render(&target);
        std::vector<double> times;
        for (int i = 0; i < 21; ++i) {
            cursor.setAngle(0.3 * i);
            const std::clock_t start = std::clock();
            view->render(&target);
            times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
        }
        std::nth_element(times.begin(), times.begin() + 10, times.end());
        RecordProperty(view->objectName().toStdString() + "_ms", std::to_string(times[10]));
        EXPECT_LT(times[10], 33.0) << view->objectName().toStdString();
    }
}

TEST_P(Sample, PicturesShowTheThemeAndTheirWords) {
    for (const bool dark : {false, true}) {
        for (const QSize size : {QSize(420, 280), QSize(960, 540)}) {
            TurnCursor cursor;
            cursor.setAngle(75.0 * deg);
            SectionView section(cursor);
            UnrolledTracks tracks(cursor);
            CylinderCircle circle(cursor);
            LinerMap liner(cursor);
            for (TurnView* view :
                 std::initializer_list<TurnView*>{&section, &tracks, &circle, &liner}) {
                useTones(*view, dark);
                view->resize(size);
                view->showSolution(solved());
                expectPicture(*view,
                              pictureName(view->objectName().toLatin1(), dark, size.width()));
                EXPECT_FALSE(view->handles().empty() && view != &circle);
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Samples, Sample,
                         ::testing::Values("biogas-pump-set", "hydrogen-buoy-generator",
                                           "classroom-model", "sketched-lobes-blown",
                                           "unequal-lobes", "harbour-crane-auxiliary",
                                           "terrace-sprayer"),
                         [](const auto& sample) {
                             std::string name = sample.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

} // namespace
} // namespace lobewright::ui::test
