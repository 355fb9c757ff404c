// Nothing that is written in the window may be cut off or written over, at the smallest screen that
// the window is made for.
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/drawn_text.h"
#include "ui/plots/base/readout_strip.h"
#include "ui/plots/turn/torque_plot.h"
#include "ui/window/arrangement.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitterHandle>
#include <QStatusBar>
#include <QTest>
#include <QVBoxLayout>

namespace lobewright::ui::test {
namespace {

constexpr QSize smallScreen(1280, 800);

QString nameOf(const QWidget& widget) {
    QStringList names;
    for (const QWidget* w = &widget; w && !w->isWindow(); w = w->parentWidget()) {
        names.prepend(w->objectName().isEmpty() ? QString::fromLatin1(w->metaObject()->className())
                                                : w->objectName());
    }
    return names.mid(qMax(0, names.size() - 4)).join(QLatin1Char('/'));
}

/// The part of a widget that no parent hides; content of a scroll area may be out of sight.
QRect seenPart(const QWidget& widget) {
    return widget.visibleRegion().boundingRect();
}

bool scrolls(const QWidget& widget) {
    for (const QWidget* w = widget.parentWidget(); w; w = w->parentWidget()) {
        const auto* area = qobject_cast<const QAbstractScrollArea*>(w);
        if (area && (area->horizontalScrollBar()->maximum() > 0 ||
                     area->verticalScrollBar()->maximum() > 0))
            return true;
    }
    return false;
}

struct Written {
    QString where;
    DrawnText text; ///< box in pixels of the window
};

std::vector<Written> writtenIn(QWidget& window) {
    std::vector<Written> all;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->isWindow() || seenPart(*widget).isEmpty())
            continue;
        for (DrawnText& text : drawnText(*widget)) {
            // Of rows that are half scrolled away only the seen half is written anywhere.
            text.box &= QRectF(seenPart(*widget));
            if (text.box.isEmpty())
                continue;
            const QPointF origin = widget->mapTo(&window, QPoint(0, 0));
            text.box.translate(origin);
            if (!text.clip.isNull())
                text.clip.translate(origin);
            all.push_back({nameOf(*widget), text});
        }
    }
    return all;
}

/// What is written in widgets that do not scroll and leaves its widget, or was shortened.
QStringList cutOff(QWidget& window) {
    QStringList found;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->isWindow() || seenPart(*widget).isEmpty())
            continue;
        const bool isScrolled = scrolls(*widget);
        const QRectF room = QRectF(seenPart(*widget)).adjusted(-1.5, -2.5, 1.5, 2.5);
        const QString given = widget->property("text").toString();
        for (const DrawnText& text : drawnText(*widget)) {
            const QRectF own =
                text.clip.isNull() ? room : room & text.clip.adjusted(-1.5, -3, 1.5, 3);
            const bool shortened =
                text.text.endsWith(QChar(0x2026)) && !given.contains(QChar(0x2026));
            if ((!isScrolled && !own.contains(text.box)) || shortened) {
                found << QStringLiteral("%1: “%2” %3,%4 %5×%6 in %7×%8")
                             .arg(nameOf(*widget), text.text)
                             .arg(text.box.x())
                             .arg(text.box.y())
                             .arg(text.box.width())
                             .arg(text.box.height())
                             .arg(own.width())
                             .arg(own.height());
            }
        }
    }
    return found;
}

QStringList writtenOver(QWidget& window) {
    QStringList found;
    const auto all = writtenIn(window);
    for (size_t i = 0; i < all.size(); ++i) {
        for (size_t j = i + 1; j < all.size(); ++j) {
            const QRectF &a = all[i].text.box, &b = all[j].text.box;
            // Boxes hold the line's full height; letters that touch boxes' edges are apart still.
            const QRectF both = a.adjusted(1, 3, -1, -3) & b.adjusted(1, 3, -1, -3);
            if (!both.isEmpty() && all[i].text.text != all[j].text.text) {
                found << QStringLiteral("“%1” (%2) and “%3” (%4)")
                             .arg(all[i].text.text, all[i].where, all[j].text.text, all[j].where);
            }
        }
    }
    return found;
}

/// Pairs of neighbours in one parent that lie on each other.
QStringList overlapping(QWidget& window) {
    QStringList found;
    QWidgetList parents = window.findChildren<QWidget*>();
    parents << &window;
    for (const QWidget* parent : parents) {
        if (!parent->isVisible())
            continue;
        QWidgetList children;
        for (QObject* child : parent->children()) {
            auto* widget = qobject_cast<QWidget*>(child);
            // A splitter's handle reaches over its neighbours so that it can be gripped.
            if (widget && widget->isVisible() && !widget->isWindow() &&
                !qobject_cast<QSplitterHandle*>(widget))
                children << widget;
        }
        for (int i = 0; i < children.size(); ++i) {
            for (int j = i + 1; j < children.size(); ++j) {
                if (children[i]->geometry().intersects(children[j]->geometry()))
                    found << nameOf(*children[i]) + QStringLiteral(" and ") + nameOf(*children[j]);
            }
        }
    }
    return found;
}

std::string listed(QStringList found) {
    found.removeDuplicates();
    return found.join(QLatin1Char('\n')).toStdString();
}

/// Points of studies that came just now get their lines: each level of layouts asks the next.
void layOutWhatCame() {
    constexpr int levels = 8;
    for (int level = 0; level < levels; ++level)
        QApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
}

class FitTest : public WindowTest {
  protected:
    void showAt(const Arrangement& arrangement, const QString& theme) {
        window_->setTheme(theme);
        window_->resize(smallScreen);
        window_->arrange(arrangement.key);
        window_->cursor().setAngle(1.08);
        window_->statusBar()->clearMessage(); // lies over the foot for a while
        QTest::qWait(300);
        ASSERT_TRUE(waitUntilSolved());
        layOutWhatCame();
        ASSERT_EQ(window_->size(), smallScreen) << arrangement.key.toStdString();
    }
};

} // namespace

TEST_F(FitTest, NothingWrittenIsCutOffAtTheSmallestScreen) {
    for (const Arrangement& arrangement : arrangements()) {
        showAt(arrangement, QStringLiteral("light"));
        EXPECT_EQ(listed(cutOff(*window_)), "") << "in " << arrangement.key.toStdString();
    }
}

TEST_F(FitTest, NothingWrittenIsCutOffBesideABaseline) {
    window_->keepBaseline();
    Edit edit;
    edit.changes = {{"/mechanism/exhaust_lead_deg", 9.0}};
    window_->document().apply(edit);
    ASSERT_TRUE(waitUntilSolved());
    for (const Arrangement& arrangement : arrangements()) {
        showAt(arrangement, QStringLiteral("dark"));
        EXPECT_EQ(listed(cutOff(*window_)), "") << "in " << arrangement.key.toStdString();
        EXPECT_EQ(listed(overlapping(*window_)), "") << "in " << arrangement.key.toStdString();
    }
}

TEST_F(FitTest, NothingIsWrittenOverSomethingElse) {
    for (const Arrangement& arrangement : arrangements()) {
        showAt(arrangement, QStringLiteral("light"));
        EXPECT_GT(writtenIn(*window_).size(), 40U) << "in " << arrangement.key.toStdString();
        EXPECT_EQ(listed(writtenOver(*window_)), "") << "in " << arrangement.key.toStdString();
    }
}

// What a roller off its track leaves undone is in the brake torque all the same: no comparison.
TEST_F(WindowTest, TorquePlotSaysThatARollerHasLifted) {
    auto& strip = *view("torque").findChild<ReadoutStrip*>();
    const auto says = [&](const QString& sentence) {
        const QString words = sentence.section('(', 1).section(QRegularExpression("[%)]"), 0, 0);
        const auto texts = drawnText(strip);
        return std::ranges::any_of(
            texts, [&](const DrawnText& drawn) { return drawn.text.contains('(' + words); });
    };
    const QString lifted = TorquePlot::tr("mean %1 %3 (a roller has lifted), peak to peak %2 %3");
    const QString compared = TorquePlot::tr("mean %1 (at the shaft %4), peak to peak %2 %3");
    EXPECT_TRUE(says(compared));
    EXPECT_FALSE(says(lifted));
    Edit edit;
    edit.changes = {{"/running/speed_rpm", 2000.0}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    QTest::qWait(100);
    EXPECT_TRUE(says(lifted));
    EXPECT_FALSE(says(compared));
}

TEST_F(FitTest, NoWidgetsOverlapAtTheSmallestScreen) {
    for (const Arrangement& arrangement : arrangements()) {
        showAt(arrangement, QStringLiteral("light"));
        EXPECT_EQ(listed(overlapping(*window_)), "") << "in " << arrangement.key.toStdString();
    }
}

// At twice the scale a screen of 1280 x 800 holds half of that; the least size was 1019 x 613.
TEST_F(FitTest, HalfTheSmallestScreenHoldsTheWindow) {
    const QSize half = smallScreen / 2;
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        window_->resize(half);
        QTest::qWait(200);
        layOutWhatCame();
        EXPECT_EQ(window_->size(), half) << arrangement.key.toStdString();
        for (const char* name : {"play", "caution", "solveState"}) {
            const auto* part = window_->findChild<QWidget*>(QString::fromLatin1(name));
            ASSERT_TRUE(part) << name;
            EXPECT_EQ(seenPart(*part), part->rect()) << name;
        }
        // What needs more room is reached by scrolling.
        auto* scroll = window_->findChild<QScrollArea*>(QStringLiteral("centreScroll"));
        ASSERT_TRUE(scroll);
        const QSize needed = scroll->widget()->minimumSizeHint();
        EXPECT_GE(scroll->horizontalScrollBar()->maximum() + scroll->viewport()->width(),
                  needed.width());
        EXPECT_GE(scroll->verticalScrollBar()->maximum() + scroll->viewport()->height(),
                  needed.height());
    }
    window_->resize(smallScreen);
    QTest::qWait(200);
    auto* scroll = window_->findChild<QAbstractScrollArea*>(QStringLiteral("centreScroll"));
    EXPECT_EQ(scroll->horizontalScrollBar()->maximum(), 0);
    EXPECT_EQ(scroll->verticalScrollBar()->maximum(), 0);
}

TEST_F(FitTest, ADialogThatNeedsMoreThanTheScreenScrolls) {
    QDialog dialog(window_.get());
    auto* column = new QVBoxLayout(&dialog);
    auto* large = new QLabel(QStringLiteral("large"), &dialog);
    large->setMinimumSize(5000, 4000);
    column->addWidget(large);
    auto* below = new QPushButton(QStringLiteral("below"), &dialog);
    column->addWidget(below);
    dialog.show();
    QTest::qWait(100);
    const QSize room = window_->screen()->availableSize();
    EXPECT_LE(dialog.width(), room.width());
    EXPECT_LE(dialog.height(), room.height());
    auto* scroll = dialog.findChild<QScrollArea*>();
    ASSERT_TRUE(scroll);
    scroll->ensureWidgetVisible(below);
    EXPECT_FALSE(below->visibleRegion().isEmpty());
}

/// The checks above see what they are for.
TEST(Fit, ShortLabelsAndOverlapsAreFound) {
    QWidget window;
    window.resize(300, 100);
    QLabel narrow(QStringLiteral("much too long for its place"), &window);
    narrow.setGeometry(0, 0, 40, 20);
    QLabel over(QStringLiteral("written over"), &window);
    over.setGeometry(5, 4, 90, 20);
    window.show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    EXPECT_EQ(cutOff(window).size(), 1);
    EXPECT_EQ(writtenOver(window).size(), 1);
    EXPECT_EQ(overlapping(window).size(), 1);
}

} // namespace lobewright::ui::test
