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

/// Of a pane in the densest arrangements and of an enlarged one, on a small screen and a large one.
constexpr QSize paneSizes[] = {{411, 160}, {470, 206}, {636, 340}, {1270, 660}, {1100, 420}};

class OverlapTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        before_ = QApplication::font();
    }
    void TearDown() override {
        QApplication::setFont(before_);
        WindowTest::TearDown();
    }
    void enlargeLetters() {
        QFont large = before_;
        large.setPointSizeF(1.5 * before_.pointSizeF());
        QApplication::setFont(large);
    }
    /// Every plot that can be seen now.
    QStringList faults() { return faultsIn(*window_); }
    QStringList faultsIn(QWidget& place) {
        QStringList found;
        QList<QCustomPlot*> plots = place.findChildren<QCustomPlot*>();
        if (auto* own = qobject_cast<QCustomPlot*>(&place))
            plots << own;
        for (QCustomPlot* plot : plots) {
            if (!plot->isVisible() || plot->visibleRegion().isEmpty() || plot->axisRectCount() == 0)
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
    /// Every view that holds a plot, also those that no arrangement shows. They leave their panes:
    /// no arrangement is shown afterwards.
    void lookAtEveryView(const QString& what) {
        window_->resize(2560, 1440);
        for (const Views::View& view : window_->views().all()) {
            const bool isPlot =
                qobject_cast<QCustomPlot*>(view.widget) || view.widget->findChild<QCustomPlot*>();
            if (!isPlot)
                continue;
            view.widget->setParent(window_.get());
            view.widget->show();
            view.widget->raise();
            for (const QSize pane : paneSizes) {
                // No pane is made smaller than what stands in it.
                const QSize size = pane.expandedTo(view.widget->minimumSizeHint());
                view.widget->setGeometry(QRect(QPoint(0, 0), size));
                QTest::qWait(40);
                EXPECT_EQ(faultsIn(*view.widget).join(QLatin1Char('\n')).toStdString(), "")
                    << what.toStdString() << ", " << view.key.toStdString() << ", " << size.width()
                    << " × " << size.height();
            }
            view.widget->hide();
        }
    }
    void open(const QString& file) {
        window_->document().open(file);
        ASSERT_TRUE(waitUntilSolved());
    }
    void lookAtSamples(const QStringList& files, const QString& what = {}) {
        for (const QString& file : files) {
            open(file);
            for (const QSize screen : {QSize(1280, 800), QSize(2560, 1440)})
                lookAtAll(screen, QFileInfo(file).baseName() + what);
        }
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
    QFont before_;
};

/// The same of every sample: minutes.
class OverlapOfAll : public OverlapTest {};

} // namespace

TEST_F(OverlapTest, NoTextInAPlotMeetsAnything) {
    const QStringList files = sampleFiles();
    lookAtSamples({files.first(), files.last()});
    EXPECT_GT(looked_, 60);
}

TEST_F(OverlapTest, NorDoLargeLetters) {
    enlargeLetters();
    lookAtAll(QSize(1280, 800), QStringLiteral("large letters"));
}

TEST_F(OverlapTest, NorInAViewOfAnySize) {
    lookAtEveryView(QStringLiteral("first sample"));
    EXPECT_GT(looked_, 100);
}

TEST_F(OverlapTest, NorInAViewOfAnySizeWithLargeLetters) {
    enlargeLetters();
    lookAtEveryView(QStringLiteral("large letters"));
}

TEST_F(OverlapOfAll, NoTextInAPlotMeetsAnything) {
    lookAtSamples(sampleFiles());
    EXPECT_GT(looked_, 100);
}

TEST_F(OverlapOfAll, NorDoLargeLetters) {
    enlargeLetters();
    lookAtSamples(sampleFiles(), QStringLiteral(", large letters"));
}

TEST_F(OverlapOfAll, NorInAViewOfAnySize) {
    for (const QString& file : sampleFiles()) {
        open(file);
        lookAtEveryView(QFileInfo(file).baseName());
    }
}

TEST_F(OverlapOfAll, NorInAViewOfAnySizeWithLargeLetters) {
    enlargeLetters();
    for (const QString& file : sampleFiles()) {
        open(file);
        lookAtEveryView(QFileInfo(file).baseName() + QStringLiteral(", large letters"));
    }
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
