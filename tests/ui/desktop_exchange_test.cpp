#include "core/editing/knot_edits.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/lift_import_plot.h"
#include "ui/dialogs/wheel_import_dialog.h"
#include "ui/plots/study/wheel_plot.h"
#include "ui/window/frames_dialog.h"

#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QProgressBar>
#include <QPushButton>
#include <QSet>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QThreadPool>
#include <QTimer>

#include <random>

namespace lobewright::ui::test {
namespace {

template <class Widget>
Widget& child(QDialog& dialog, const char* name) {
    auto* found = dialog.findChild<Widget*>(QString::fromLatin1(name));
    if (!found)
        throw std::runtime_error(std::string("no ") + name);
    return *found;
}

QByteArray contents(const QString& file) {
    QFile stream(file);
    return stream.open(QIODevice::ReadOnly) ? stream.readAll() : QByteArray();
}

void choose(QDialog& dialog, const char* name, int value) {
    auto& box = child<QComboBox>(dialog, name);
    box.setCurrentIndex(box.findData(value));
}

class ExportWindow : public ::testing::Test {
  protected:
    QString file(const char* name) const { return folder_.filePath(QString::fromLatin1(name)); }
    bool waitUntilIdle(const ExportDialog& dialog) {
        return QTest::qWaitFor([&] { return !dialog.isBusy(); }, 60000);
    }
    QTemporaryDir folder_;
};

TEST_F(ExportWindow, WritesEveryKindInTheBackground) {
    ExportDialog dialog(sampleDesign(), QStringLiteral("Sample"));
    dialog.show();
    QSignalSpy written(&dialog, &ExportDialog::written);
    for (const exchange::ExportWords& kind : exchange::exportWords) {
        choose(dialog, "kind", static_cast<int>(kind.kind));
        choose(dialog, "track", static_cast<int>(End::exhaust));
        child<QDoubleSpinBox>(dialog, "tolerance").setValue(20.0);
        EXPECT_EQ(child<QDoubleSpinBox>(dialog, "tolerance").isVisible(), kind.takesTolerance);
        EXPECT_EQ(child<QLineEdit>(dialog, "radii").isVisible(), kind.takesRadii);
        dialog.exportTo(file("track"));
        EXPECT_TRUE(dialog.isBusy());
        EXPECT_FALSE(child<QPushButton>(dialog, "go").isEnabled());
        ASSERT_TRUE(waitUntilIdle(dialog));
        ASSERT_TRUE(
            QTest::qWaitFor([&] { return child<QPushButton>(dialog, "go").isEnabled(); }, 5000));
        EXPECT_TRUE(contents(file("track")).contains("exhaust track")) << kind.key;
        EXPECT_TRUE(child<QLabel>(dialog, "message").text().startsWith("Written: track"));
    }
    EXPECT_EQ(written.count(), 6);
}

TEST_F(ExportWindow, AsksForWhatIsTyped) {
    ExportDialog dialog(sampleDesign(), QStringLiteral("Sample"));
    choose(dialog, "kind", static_cast<int>(exchange::ExportKind::inspection));
    child<QLineEdit>(dialog, "radii").setText(QStringLiteral("96; 104 110"));
    child<QDoubleSpinBox>(dialog, "step").setValue(2.0);
    const auto options = dialog.options();
    ASSERT_TRUE(options);
    ASSERT_EQ(options->radii.size(), 3U);
    EXPECT_NEAR(options->radii[2], 0.110, 1e-15);
    EXPECT_NEAR(*options->step, 2.0 * units::degree, 1e-15);
    child<QDoubleSpinBox>(dialog, "step").setValue(0.0);
    EXPECT_FALSE(dialog.options()->step) << "as usual";
    child<QLineEdit>(dialog, "radii").setText(QStringLiteral("96 wide"));
    EXPECT_FALSE(dialog.options());
    EXPECT_TRUE(child<QLabel>(dialog, "message").text().contains("radii must be numbers"));
}

TEST_F(ExportWindow, SaysWhyATrackCannotBeMade) {
    design::Design design = sampleDesign();
    design.mechanism.roller.radius = 0.110;
    ExportDialog dialog(design, QStringLiteral("Sample"));
    dialog.exportTo(file("track.step"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return child<QLabel>(dialog, "message").text().contains("undercuts"); }, 20000));
    EXPECT_FALSE(QFile::exists(file("track.step")));
}

TEST_F(ExportWindow, StoppingLeavesNoFile) {
    ExportDialog dialog(sampleDesign(), QStringLiteral("Sample"));
    choose(dialog, "kind", static_cast<int>(exchange::ExportKind::stl));
    child<QDoubleSpinBox>(dialog, "tolerance").setValue(0.05);
    dialog.exportTo(file("track.stl"));
    dialog.stop();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return child<QLabel>(dialog, "message").text().startsWith("Stopped"); }, 60000));
    EXPECT_FALSE(QFile::exists(file("track.stl")));
}

// A mesh far finer than anyone needs takes long enough to be watched and stopped half-way.
TEST_F(ExportWindow, ProgressRisesAndTheStopButtonEndsIt) {
    ExportDialog dialog(sampleDesign(), QStringLiteral("Sample"));
    dialog.show();
    choose(dialog, "kind", static_cast<int>(exchange::ExportKind::stl));
    child<QDoubleSpinBox>(dialog, "tolerance").setValue(0.02);
    auto* progress = dialog.findChild<QProgressBar*>();
    ASSERT_NE(progress, nullptr);
    EXPECT_FALSE(progress->isVisible());
    dialog.exportTo(file("track.stl"));
    EXPECT_TRUE(progress->isVisible());
    ASSERT_TRUE(QTest::qWaitFor([&] { return progress->value() > 0; }, 60000));
    EXPECT_TRUE(dialog.isBusy());
    auto& stop = child<QPushButton>(dialog, "stop");
    ASSERT_TRUE(stop.isEnabled());
    stop.click();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return child<QLabel>(dialog, "message").text().startsWith("Stopped"); }, 60000));
    EXPECT_FALSE(QFile::exists(file("track.stl")));
    EXPECT_FALSE(progress->isVisible());
    EXPECT_TRUE(child<QPushButton>(dialog, "go").isEnabled()) << "ready for another try";
}

// What was begun goes on without its window until it is next asked, and must not need it.
TEST_F(ExportWindow, ClosingWhileItWorksLeavesNoFile) {
    {
        ExportDialog dialog(sampleDesign(), QStringLiteral("Sample"));
        dialog.show();
        choose(dialog, "kind", static_cast<int>(exchange::ExportKind::stl));
        child<QDoubleSpinBox>(dialog, "tolerance").setValue(0.02);
        dialog.exportTo(file("track.stl"));
        ASSERT_TRUE(
            QTest::qWaitFor([&] { return dialog.findChild<QProgressBar*>()->value() > 0; }, 60000));
        dialog.reject();
    }
    ASSERT_TRUE(QThreadPool::globalInstance()->waitForDone(60000));
    EXPECT_FALSE(QFile::exists(file("track.stl")));
}

class ImportWindow : public WindowTest {
  protected:
    QString tableOf(const char* text) {
        QFile table(fileIn(QStringLiteral("table.csv")));
        EXPECT_TRUE(table.open(QIODevice::WriteOnly));
        table.write(text);
        return table.fileName();
    }
    /// A table of a gentle lobe, as someone might have measured it.
    QString measured(int rows) {
        QFile table(fileIn(QStringLiteral("lobe.csv")));
        EXPECT_TRUE(table.open(QIODevice::WriteOnly));
        table.write("angle;lift\n");
        for (int i = 0; i < rows; ++i) {
            const double phi = units::turn * i / rows;
            const double lift = 17.0 * (1.0 - std::cos(phi)) + 0.8 * std::sin(2.0 * phi);
            table.write(QStringLiteral("%1;%2\n")
                            .arg(180.0 * i / rows, 0, 'f', 4)
                            .arg(lift, 0, 'f', 4)
                            .replace('.', ',')
                            .toUtf8());
        }
        return table.fileName();
    }
};

TEST_F(ImportWindow, TableBecomesKnotsAsOneUndoStep) {
    LiftImportDialog dialog(window_->document(), window_.get());
    dialog.show();
    EXPECT_FALSE(child<QPushButton>(dialog, "use").isEnabled());
    ASSERT_TRUE(dialog.openTable(measured(180)));
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.fit().has_value(); }, 20000));
    EXPECT_EQ(dialog.fit()->pattern.lobes, 2);
    EXPECT_TRUE(child<QLabel>(dialog, "message").text().contains("Largest residual"));
    ASSERT_TRUE(child<QPushButton>(dialog, "use").isEnabled());
    const design::Design before = window_->document().design();
    child<QPushButton>(dialog, "use").click();
    EXPECT_FALSE(dialog.isVisible());
    motion::Pattern expected = dialog.fit()->pattern;
    expected.shape = editing::readable(std::get<motion::KnotShape>(expected.shape));
    EXPECT_EQ(window_->document().design().tracks.inlet, expected);
    EXPECT_EQ(window_->document().undoStack().undoText(), QStringLiteral("Import a lift table"));
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
}

// Of a noisy turn: the noise, a tolerance above it, the acceleration with what is left of it, and
// that the turn repeats; a tolerance below the noise is warned of.
TEST_F(ImportWindow, NoiseIsMeasuredShownAndNotFollowed) {
    QFile table(fileIn(QStringLiteral("noisy.csv")));
    ASSERT_TRUE(table.open(QIODevice::WriteOnly));
    std::mt19937 random(5);
    std::normal_distribution<double> noise(0.0, 0.012);
    for (int i = 0; i < 720; ++i) {
        const double lift = 17.0 * (1.0 - std::cos(units::turn * i / 360.0));
        table.write(QStringLiteral("%1,%2\n")
                        .arg(0.5 * i, 0, 'f', 1)
                        .arg(lift + noise(random), 0, 'f', 5)
                        .toUtf8());
    }
    table.close();
    LiftImportDialog dialog(window_->document(), window_.get());
    dialog.show();
    ASSERT_TRUE(dialog.openTable(table.fileName()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.fit().has_value(); }, 20000));
    EXPECT_EQ(dialog.fit()->pattern.lobes, 2);
    EXPECT_TRUE(dialog.fit()->withinTolerance);
    auto& tolerance = child<QDoubleSpinBox>(dialog, "tolerance");
    EXPECT_NEAR(tolerance.value(), dialog.fit()->proposedTolerance / units::micrometre, 0.01);
    EXPECT_GT(tolerance.value(), 36.0);
    const QString said = child<QLabel>(dialog, "message").text();
    EXPECT_TRUE(said.contains("Noise of the table")) << said.toStdString();
    EXPECT_TRUE(said.contains("mm/rad²")) << said.toStdString();
    auto* plot = dialog.findChild<LiftImportPlot*>();
    ASSERT_TRUE(plot);
    EXPECT_EQ(plot->acceleration().dataCount(), 720);
    // 17·2² mm/rad² at the crest, as near as a fit within that tolerance comes.
    bool isFound = false;
    EXPECT_NEAR(plot->acceleration().getValueRange(isFound).upper, 68.0, 2.0);
    EXPECT_GT(dialog.fit()->accelerationNoise, 0.0);
    tolerance.setValue(34.0);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            return child<QLabel>(dialog, "message").text().contains("follows noise") ||
                   child<QLabel>(dialog, "message").text().contains("beyond");
        },
        20000));
}

TEST_F(ImportWindow, TooTightAToleranceIsSaidAndNotUsed) {
    LiftImportDialog dialog(window_->document(), window_.get());
    ASSERT_TRUE(dialog.openTable(measured(60)));
    child<QSpinBox>(dialog, "knots").setValue(4);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.fit().has_value(); }, 20000));
    EXPECT_FALSE(dialog.fit()->withinTolerance);
    EXPECT_FALSE(child<QPushButton>(dialog, "use").isEnabled());
    EXPECT_TRUE(child<QLabel>(dialog, "message").text().contains("beyond the tolerance"));
    child<QSpinBox>(dialog, "knots").setValue(60);
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return child<QPushButton>(dialog, "use").isEnabled(); }, 20000));
}

TEST_F(ImportWindow, BadTablesNameTheLine) {
    LiftImportDialog dialog(window_->document(), window_.get());
    ASSERT_TRUE(dialog.openTable(tableOf("0,1\n10,high\n")));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return child<QLabel>(dialog, "message").text().startsWith("lines/2: "); }, 20000));
    EXPECT_FALSE(dialog.openTable(fileIn(QStringLiteral("none.csv"))));
}

/// Points of an invented wheel at two speeds.
constexpr const char* wheelPoints =
    "speed,flow,ratio,efficiency\n"
    "60000,0.030,1.25,0.66\n60000,0.050,1.24,0.75\n60000,0.070,1.18,0.70\n"
    "90000,0.045,1.62,0.67\n90000,0.070,1.60,0.76\n90000,0.105,1.42,0.69\n";

TEST_F(ImportWindow, WheelsPointsBecomeThoseOfTheDesignAsOneUndoStep) {
    ASSERT_TRUE(window_->openFile(QString::fromStdString(lobewright::test::sourceFolder()) +
                                  "/samples/turbocharged-works-generator.lobewright.json"));
    WheelImportDialog dialog(window_->document(), window_.get());
    dialog.show();
    EXPECT_FALSE(child<QPushButton>(dialog, "use").isEnabled());
    ASSERT_TRUE(dialog.openTable(tableOf(wheelPoints)));
    ASSERT_TRUE(dialog.wheel());
    EXPECT_EQ(child<QLabel>(dialog, "message").text(), QStringLiteral("6 points at 2 speeds."));
    EXPECT_EQ(dialog.plot().lineCount(), 2);
    EXPECT_EQ(dialog.plot().points().data()->size(), 6);
    child<QDoubleSpinBox>(dialog, "referenceTemperature").setValue(288.15);
    const design::Design before = window_->document().design();
    child<QPushButton>(dialog, "use").click();
    EXPECT_FALSE(dialog.isVisible());
    const gas::Wheel& wheel = window_->document().design().gas.supply.compressor.wheel;
    EXPECT_EQ(wheel.characteristic, gas::WheelCharacteristic::table);
    ASSERT_EQ(wheel.points.size(), 6U);
    EXPECT_EQ(wheel.points[4].pressureRatio, 1.60);
    EXPECT_NEAR(wheel.referenceTemperature, 288.15, 1e-9);
    EXPECT_EQ(window_->document().undoStack().undoText(),
              QStringLiteral("Import compressor points"));
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
}

TEST_F(ImportWindow, AWheelMakesACompressorOfAnotherSupplyAndSaysSo) {
    ASSERT_NE(window_->document().design().gas.supply.kind, gas::SupplyKind::compressor);
    WheelImportDialog dialog(window_->document(), window_.get());
    ASSERT_TRUE(dialog.openTable(tableOf(wheelPoints)));
    EXPECT_TRUE(child<QLabel>(dialog, "message").text().contains("becomes a compressor"));
    child<QPushButton>(dialog, "use").click();
    EXPECT_EQ(window_->document().design().gas.supply.kind, gas::SupplyKind::compressor);
}

TEST_F(ImportWindow, BadWheelTablesAreRefusedWithTheirLine) {
    WheelImportDialog dialog(window_->document(), window_.get());
    ASSERT_TRUE(dialog.openTable(tableOf("60000,0.030,1.25,0.66\n60000,0.050,1.24\n")));
    EXPECT_FALSE(dialog.wheel());
    EXPECT_TRUE(child<QLabel>(dialog, "message").text().startsWith("lines/2: "));
    EXPECT_FALSE(child<QPushButton>(dialog, "use").isEnabled());
    // two flows are no line
    ASSERT_TRUE(dialog.openTable(tableOf("60000,0.030,1.25,0.66\n60000,0.050,1.24,0.7\n")));
    EXPECT_FALSE(dialog.wheel());
    EXPECT_EQ(dialog.plot().lineCount(), 0);
    EXPECT_FALSE(dialog.openTable(fileIn(QStringLiteral("none.csv"))));
}

TEST_F(ImportWindow, AllWindowsStandInTheFileMenu) {
    QStringList seen;
    for (QAction* menu : window_->menuBar()->actions()) {
        if (!menu->text().contains("File"))
            continue;
        for (QAction* action : menu->menu()->actions()) {
            if (!action->text().contains("track…") && !action->text().contains("lift table…") &&
                !action->text().contains("compressor points…"))
                continue;
            onNextDialog([&](QDialog& dialog) { seen += dialog.windowTitle(); });
            action->trigger();
        }
    }
    EXPECT_EQ(seen, (QStringList{"Export a track", "Lift table to knots",
                                 "Measured points to compressor wheel"}));
}

class FramesWindow : public WindowTest {};

TEST_F(FramesWindow, WritesNumberedPicturesOfADrawingThatIsOutOfSight) {
    window_->arrange(QStringLiteral("claims"));
    window_->cursor().setAngle(1.0);
    FramesDialog dialog(window_->views(), window_->cursor(), QStringLiteral("sample"),
                        QStringLiteral("clock"), window_.get());
    dialog.show();
    EXPECT_EQ(child<QComboBox>(dialog, "drawing").currentData().toString(), "clock")
        << "the view that one is in is proposed";
    child<QSpinBox>(dialog, "frames").setValue(4);
    QSignalSpy written(&dialog, &FramesDialog::written);
    dialog.writeTo(folder_.path());
    EXPECT_EQ(written.count(), 1);
    QSet<QByteArray> different;
    for (int i = 1; i <= 4; ++i) {
        const QString file = fileIn(QStringLiteral("sample-clock-000%1.png").arg(i));
        EXPECT_EQ(QImage(file).size(), QSize(1280, 720)) << file.toStdString();
        different << contents(file);
    }
    EXPECT_EQ(different.size(), 4);
    EXPECT_NEAR(window_->cursor().angle(), 1.0, 1e-12);
}

TEST_F(FramesWindow, StopLeavesNothingBehind) {
    FramesDialog dialog(window_->views(), window_->cursor(), QStringLiteral("sample"), QString(),
                        window_.get());
    dialog.show();
    child<QSpinBox>(dialog, "frames").setValue(3600);
    QTimer::singleShot(50, &dialog, [&] { child<QPushButton>(dialog, "stop").click(); });
    dialog.writeTo(folder_.path());
    EXPECT_TRUE(QDir(folder_.path()).entryList({QStringLiteral("*.png")}).isEmpty());
    EXPECT_FALSE(child<QLabel>(dialog, "message").text().isEmpty());
}

} // namespace
} // namespace lobewright::ui::test
