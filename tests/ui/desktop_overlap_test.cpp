// No text in a plot meets other text, a curve, a mark or the frame, and none is cut: every plot of
// every sample, on a small and on a large screen, with ordinary and with large letters.
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/drawn_text.h"
#include "ui/base/palette.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/window/arrangement.h"

#include <QApplication>
#include <QDir>
#include <QTest>

namespace lobewright::ui::test {
namespace {

/// Letters' boxes hold the line's whole height: what touches their edges is apart still.
QRectF letters(const QRectF& box) {
    return box.adjusted(1.0, 3.0, -1.0, -3.0);
}

QString placeOf(const DrawnText& text) {
    return QStringLiteral("“%1” at %2,%3").arg(text.text).arg(text.box.x()).arg(text.box.y());
}

/// Plots lower than this have no room for their own axes.
constexpr int leastHeight = 90; // [px] of the frame

/// What is wrong with the text of a plot. Grid lines lie behind everything.
QStringList faultsOf(QCustomPlot& plot) {
    const Drawn all = drawn(plot);
    const QColor grid = Palette::of(plot).grid;
    const QRectF whole = QRectF(plot.rect()).adjusted(-2.5, -2.5, 2.5, 2.5);
    QStringList faults;
    for (size_t i = 0; i < all.texts.size(); ++i) {
        const DrawnText& text = all.texts[i];
        const QRectF box = letters(text.box);
        if (!whole.contains(text.box))
            faults << placeOf(text) + QStringLiteral(" is cut");
        for (size_t k = i + 1; k < all.texts.size(); ++k) {
            if (box.intersects(letters(all.texts[k].box)) && all.texts[k].text != text.text)
                faults << placeOf(text) + QStringLiteral(" meets ") + placeOf(all.texts[k]);
        }
        for (const DrawnStroke& stroke : all.strokes) {
            if (stroke.colour != grid && meets(stroke, box)) {
                faults << placeOf(text) + QStringLiteral(" meets a line of ") +
                              stroke.colour.name();
                break;
            }
        }
    }
    return faults;
}

class OverlapTest : public WindowTest {
  protected:
    /// Every plot that can be seen now.
    QStringList faults() {
        QStringList found;
        for (QCustomPlot* plot : window_->findChildren<QCustomPlot*>()) {
            if (!plot->isVisible() || plot->visibleRegion().isEmpty() ||
                plot->axisRectCount() == 0 || plot->axisRect()->height() < leastHeight)
                continue;
            ++looked_;
            for (const QString& fault : faultsOf(*plot))
                found << plot->accessibleName() + QStringLiteral(": ") + fault;
        }
        found.removeDuplicates();
        return found;
    }
    void lookAtAll(QSize screen, const QString& what) {
        window_->resize(screen);
        for (const Arrangement& arrangement : arrangements()) {
            window_->arrange(arrangement.key);
            QTest::qWait(150);
            ASSERT_TRUE(waitUntilSolved());
            EXPECT_EQ(faults().join(QLatin1Char('\n')).toStdString(), "")
                << what.toStdString() << ", " << arrangement.key.toStdString() << ", "
                << screen.width();
        }
    }
    void open(const QString& file) {
        window_->document().open(file);
        ASSERT_TRUE(waitUntilSolved());
    }
    static QStringList sampleFiles() {
        const QDir folder(QString::fromStdString(lobewright::test::sourceFolder()) +
                          QStringLiteral("/samples"));
        QStringList files;
        for (const QString& name : folder.entryList({QStringLiteral("*.lobewright.json")}))
            files << folder.filePath(name);
        return files;
    }

    int looked_ = 0; ///< plots
};

} // namespace

TEST_F(OverlapTest, NoTextInAPlotMeetsAnything) {
    for (const QString& file : sampleFiles()) {
        open(file);
        for (const QSize screen : {QSize(1280, 800), QSize(2560, 1440)})
            lookAtAll(screen, QFileInfo(file).baseName());
    }
    EXPECT_GT(looked_, 100);
}

TEST_F(OverlapTest, NorDoLargeLetters) {
    const QFont before = QApplication::font();
    QFont large = before;
    large.setPointSizeF(1.5 * before.pointSizeF());
    QApplication::setFont(large);
    lookAtAll(QSize(1280, 800), QStringLiteral("large letters"));
    QApplication::setFont(before);
}

// The check sees what it is for.
TEST(Overlap, TextOnACurveIsFound) {
    QCustomPlot plot;
    plot.resize(300, 200);
    plot.addGraph()->setData({0.0, 1.0}, {0.5, 0.5});
    plot.xAxis->setRange(0.0, 1.0);
    plot.yAxis->setRange(0.0, 1.0);
    plot.show();
    plot.replot();
    EXPECT_EQ(faultsOf(plot).size(), 0) << faultsOf(plot).join(QLatin1Char('\n')).toStdString();
    auto* text = new QCPItemText(&plot);
    text->position->setCoords(0.5, 0.5);
    text->setText(QStringLiteral("on the curve"));
    plot.replot();
    EXPECT_EQ(faultsOf(plot).size(), 1);
}

} // namespace lobewright::ui::test
