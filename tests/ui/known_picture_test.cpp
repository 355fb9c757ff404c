#include "core/design/ranged_inputs.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/picture_dialog.h"
#include "ui/picture/picture_file.h"
#include "ui/picture/picture_view.h"
#include "ui/picture/readings_table.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPdfWriter>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>
#include <QWheelEvent>

#include <random>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

constexpr double perMillimetre = 150.0 / 25.4; ///< pixels of the drawing
constexpr double askew = 3.0;                  ///< it lies on the glass by so much [°]
constexpr double repetition = 180.0;           ///< of the unrolled track on the sheet [mm]
const QSize sheet(1500, 1500);

/// From millimetres of the drawing to its pixels.
QTransform onSheet() {
    QTransform place;
    place.translate(750.0, 700.0);
    place.rotate(askew);
    place.scale(perMillimetre, perMillimetre);
    return place;
}

/// Section of one cylinder beside the shaft axis, both dead centres of the inlet piston drawn, a
/// scale bar, and one repetition of the unrolled inlet track below.
void draw(QPainter& painter, const design::Design& design) {
    const double bore = design.mechanism.bore * 1e3, pitch = design.mechanism.pitchRadius * 1e3;
    const double stroke = std::get<motion::SegmentShape>(design.tracks.inlet.shape).stroke * 1e3;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(Qt::black, 0.25));
    painter.setTransform(onSheet(), true);
    painter.drawLine(QPointF(-110.0, 0.0), QPointF(110.0, 0.0)); // shaft axis
    painter.drawRect(QRectF(-80.0, -pitch - 0.5 * bore, 160.0, bore));
    painter.drawLine(QPointF(-100.0, -pitch), QPointF(100.0, -pitch));
    for (const double at : {-70.0, -70.0 + stroke})
        painter.drawLine(QPointF(at, -pitch - 0.5 * bore), QPointF(at, -pitch + 0.5 * bore));
    painter.drawLine(QPointF(-100.0, 20.0), QPointF(100.0, 20.0)); // 200 mm
    const auto curve = motion::LiftCurve::make(design.tracks.inlet);
    QPolygonF lobe;
    for (int i = 0; i <= 400; ++i) {
        lobe << QPointF(-90.0 + repetition * i / 400.0,
                        80.0 - 1e3 * curve->at(curve->period() * i / 400.0).y);
    }
    painter.drawPolyline(lobe);
}

class PictureTest : public WindowTest {
  protected:
    QString drawing() {
        QImage image(sheet, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        draw(painter, sampleDesign());
        painter.end();
        const QString file = fileIn(QStringLiteral("section.png"));
        image.save(file);
        return file;
    }
    void ask(std::function<void(PictureDialog&)> act) {
        ASSERT_TRUE(activate());
        bool isAsked = false;
        onNextDialog([&isAsked, act = std::move(act)](QDialog& dialog) {
            isAsked = true;
            // On a loaded machine it takes the keyboard a moment after it is shown.
            ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
            act(dynamic_cast<PictureDialog&>(dialog));
        });
        QTest::keyClick(window_.get(), Qt::Key_M, Qt::ControlModifier);
        ASSERT_TRUE(isAsked);
    }
    static void choose(PictureDialog& dialog, PictureTool tool) {
        QTest::mouseClick(
            dialog.findChild<QToolButton*>(QStringLiteral("tool%1").arg(static_cast<int>(tool))),
            Qt::LeftButton);
    }
    /// As a person does: the wheel brings the place near, then a click, up to a pixel off.
    void click(PictureView& view, const QPointF& millimetres) {
        std::uniform_real_distribution<double> tremble(-0.7, 0.7);
        QPointF pixel = onSheet().map(millimetres);
        pixel += QPointF(tremble(hand_), tremble(hand_));
        view.showAll();
        const picture::Place place{pixel.x(), pixel.y()};
        for (int notch = 0; notch < 8; ++notch) {
            const QPointF at = view.shown(place);
            QWheelEvent wheel(at, view.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                              Qt::NoScrollPhase, false);
            QApplication::sendEvent(&view, &wheel);
        }
        QTest::mouseClick(&view, Qt::LeftButton, {}, view.shown(place).toPoint());
    }
    void setScale(PictureDialog& dialog) {
        choose(dialog, PictureTool::scale);
        click(dialog.view(), {-100.0, 20.0});
        click(dialog.view(), {100.0, 20.0});
        auto* length = dialog.findChild<QLineEdit*>(QStringLiteral("length"));
        // Whatever window the display has made the active one meanwhile.
        EXPECT_TRUE(QTest::qWaitFor([&] { return dialog.focusWidget() == length; }));
        QTest::keyClicks(length, QStringLiteral("200"));
        QTest::keyClick(length, Qt::Key_Return);
    }
    static void sendTo(PictureDialog& dialog, int row, const char* path) {
        auto* table = dialog.findChild<QTableWidget*>(QStringLiteral("readings"));
        auto* box = dynamic_cast<QComboBox*>(table->cellWidget(row, 3));
        ASSERT_NE(box, nullptr);
        const int index = box->findData(QString::fromLatin1(path));
        ASSERT_GE(index, 0) << path;
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
    }
    void expectMeasured(const char* path, double truth) {
        const auto known = design::knownOf(window_->document().design(), path);
        EXPECT_EQ(known.origin, design::Origin::measured) << path;
        EXPECT_EQ(known.source, "section.png");
        ASSERT_TRUE(known.low && known.high) << path;
        EXPECT_LE(*known.low, truth) << path;
        EXPECT_GE(*known.high, truth) << path;
        EXPECT_GE(number(path), *known.low);
        EXPECT_LE(number(path), *known.high);
        // 2 pixels of 0.17 mm and as many of 200 mm.
        EXPECT_LE(*known.high - *known.low, 1.2) << path;
    }

    std::mt19937 hand_{5};
};

} // namespace

TEST_F(PictureTest, SectionGivesBoreStrokeAndPitchRadiusWithinTheirRanges) {
    const double bore = number("/mechanism/bore_mm"), stroke = number("/tracks/inlet/stroke_mm"),
                 pitch = number("/mechanism/pitch_radius_mm");
    const design::Design before = window_->document().design();
    const int index = window_->document().undoStack().index();
    ask([&](PictureDialog& dialog) {
        ASSERT_TRUE(dialog.openPicture(drawing()));
        PictureView& view = dialog.view();
        setScale(dialog);
        choose(dialog, PictureTool::axis);
        click(view, {-105.0, 0.0});
        click(view, {105.0, 0.0});
        choose(dialog, PictureTool::across);
        click(view, {-60.0, -pitch - 0.5 * bore});
        click(view, {-50.0, -pitch + 0.5 * bore}); // not quite opposite
        choose(dialog, PictureTool::along);
        click(view, {-70.0, -pitch});
        click(view, {-70.0 + stroke, -pitch + 10.0});
        choose(dialog, PictureTool::fromAxis);
        click(view, {90.0, -pitch});
        ASSERT_EQ(view.marks().readings.size(), 3U);
        sendTo(dialog, 0, "/mechanism/bore_mm");
        sendTo(dialog, 1, "/tracks/inlet/stroke_mm");
        sendTo(dialog, 2, "/mechanism/pitch_radius_mm");
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("apply")), Qt::LeftButton);
    });
    expectMeasured("/mechanism/bore_mm", bore);
    expectMeasured("/tracks/inlet/stroke_mm", stroke);
    expectMeasured("/mechanism/pitch_radius_mm", pitch);
    ASSERT_EQ(window_->document().undoStack().index(), index + 1);
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
}

TEST_F(PictureTest, TracedLobeGoesThroughTheLiftImport) {
    const auto truth = motion::LiftCurve::make(window_->document().design().tracks.inlet);
    ask([&](PictureDialog& dialog) {
        ASSERT_TRUE(dialog.openPicture(drawing()));
        setScale(dialog);
        choose(dialog, PictureTool::curve);
        for (int i = 0; i <= 40; ++i) {
            const double share = i / 40.0;
            click(dialog.view(),
                  {-90.0 + repetition * share, 80.0 - 1e3 * truth->at(truth->period() * share).y});
        }
        QTest::keyClick(&dialog.view(), Qt::Key_Return);
        ASSERT_EQ(dialog.view().marks().readings.size(), 1U);
        onNextDialog([](QDialog& next) {
            auto& import = dynamic_cast<LiftImportDialog&>(next);
            ASSERT_TRUE(QTest::qWaitFor([&] { return !import.isBusy() && import.fit(); }, 30000));
            QTest::mouseClick(import.findChild<QPushButton*>(QStringLiteral("use")),
                              Qt::LeftButton);
        });
        Q_EMIT dialog.findChild<ReadingsTable*>()->lobeWanted(0, End::inlet);
    });
    const auto& traced = window_->document().design().tracks.inlet;
    ASSERT_TRUE(std::holds_alternative<motion::KnotShape>(traced.shape));
    EXPECT_EQ(traced.lobes, sampleDesign().tracks.inlet.lobes);
    const auto back = motion::LiftCurve::make(traced);
    ASSERT_TRUE(back);
    // Two pixels, square to the curve on the sheet.
    const double two = 2.0 / perMillimetre;
    for (int i = 0; i < 360; ++i) {
        const double angle = truth->period() * i / 360.0;
        const double slope = 1e3 * truth->at(angle).y1 * truth->period() / repetition;
        const double miss = 1e3 * (back->at(angle).y - truth->at(angle).y) / std::hypot(1.0, slope);
        EXPECT_LE(std::abs(miss), two) << i;
    }
}

TEST_F(PictureTest, TracedLobeGoesToATrackThatTheEngineHas) {
    PictureMarks marks;
    marks.readings.push_back({PictureTool::curve, {{0.0, 0.0}, {1.0, 1.0}}, {}});
    const auto offered = [&](const design::Design& design) {
        ReadingsTable readings;
        readings.setDesign(design);
        readings.show(marks);
        const auto* table = readings.findChild<QTableWidget*>();
        const auto* box = dynamic_cast<QComboBox*>(table->cellWidget(0, 3));
        QStringList tracks;
        for (int i = 1; i < box->count(); ++i)
            tracks << box->itemText(i);
        return tracks.join(QStringLiteral(" | "));
    };
    design::Design design = window_->document().design();
    EXPECT_EQ(offered(design).toStdString(), "Inlet track… | Exhaust track…");
    design.mechanism.arrangement = mechanism::Arrangement::oneSided;
    EXPECT_EQ(offered(design).toStdString(), "Track…");
}

TEST_F(PictureTest, PageOfAPdfIsMeasuredLikeAPicture) {
    const QString file = fileIn(QStringLiteral("section.pdf"));
    {
        QPdfWriter writer(file);
        writer.setPageSize(QPageSize(QSizeF(sheet) * 72.0 / 150.0, QPageSize::Point));
        writer.setPageMargins({});
        writer.setResolution(150);
        QPainter painter(&writer);
        painter.drawText(200, 200, QStringLiteral("cover"));
        writer.newPage();
        draw(painter, sampleDesign());
    }
    const LoadedPicture page = loadPicture(file, 1);
    ASSERT_EQ(page.problem.toStdString(), "");
    EXPECT_EQ(page.pages, 2);
    // 200 dots an inch: the scale bar ends where it was drawn.
    ASSERT_NEAR(page.image.width(), sheet.width() * 200.0 / 150.0, 2.0);
    const QPointF end = onSheet().map(QPointF(0.0, 20.0)) * (200.0 / 150.0);
    int darkest = 255;
    for (int off = -3; off <= 3; ++off)
        darkest = std::min(darkest, qGray(page.image.pixel(end.toPoint() + QPoint(0, off))));
    EXPECT_LT(darkest, 128);
    EXPECT_FALSE(loadPicture(file, 2).problem.isEmpty());
    ask([&](PictureDialog& dialog) {
        EXPECT_TRUE(dialog.openPicture(file, 1));
        EXPECT_FALSE(dialog.openPicture(fileIn(QStringLiteral("none.pdf"))));
        EXPECT_FALSE(dialog.openPicture(fileIn(QStringLiteral("none.png"))));
        EXPECT_FALSE(dialog.findChild<QLabel*>(QStringLiteral("message"))->text().isEmpty());
    });
}

TEST_F(PictureTest, EveryClickIsUndoneAndPlacesCanBeMoved) {
    ask([&](PictureDialog& dialog) {
        ASSERT_TRUE(dialog.openPicture(drawing()));
        PictureView& view = dialog.view();
        choose(dialog, PictureTool::circle);
        click(view, {0.0, 0.0});
        click(view, {20.0, 0.0});
        QTest::keyClick(&view, Qt::Key_Return); // a circle needs three
        EXPECT_EQ(view.marks().open.size(), 2U);
        click(view, {10.0, 10.0});
        QTest::keyClick(&view, Qt::Key_Return);
        ASSERT_EQ(view.marks().readings.size(), 1U);
        view.undo();
        EXPECT_EQ(view.marks().open.size(), 3U);
        view.undo();
        EXPECT_EQ(view.marks().open.size(), 2U);
        view.redo();
        view.redo();
        ASSERT_EQ(view.marks().readings.size(), 1U);
        const picture::Place before = view.marks().readings[0].places[2];
        QTest::keyClick(&view, Qt::Key_Right);
        EXPECT_DOUBLE_EQ(view.marks().readings[0].places[2].x, before.x + 1.0);
        view.showAll();
        const QPointF at = view.shown(view.marks().readings[0].places[0]);
        const double was = view.marks().readings[0].places[0].x;
        drag(view, at, at + QPointF(12.0, 0.0));
        const double now = view.marks().readings[0].places[0].x;
        EXPECT_NEAR(view.shown({now, 0.0}).x() - view.shown({was, 0.0}).x(), 12.0, 1e-6);
        view.undo();
        EXPECT_DOUBLE_EQ(view.marks().readings[0].places[0].x, was);
        // Escape gives up what is begun, and only then the dialog.
        click(view, {30.0, 30.0});
        QTest::keyClick(&view, Qt::Key_Escape);
        EXPECT_TRUE(view.marks().open.empty());
        EXPECT_TRUE(dialog.isVisible());
    });
}
