// Random hands on the whole window. LOBEWRIGHT_MONKEY_MINUTES makes it go on for as long, and
// LOBEWRIGHT_MONKEY_SEED repeats a run.
#include "core/design/file.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/scene/base/turn_view.h"
#include "ui/window/arrangement.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTest>

#include <cstdio>
#include <malloc.h>
#include <random>

namespace lobewright::ui::test {
namespace {

/// Memory in use by this process's own data [MB].
double memoryInUse() {
    malloc_trim(0);
    QFile file(QStringLiteral("/proc/self/statm"));
    if (!file.open(QIODevice::ReadOnly))
        return 0.0;
    const QList<QByteArray> pages = file.readAll().split(' ');
    return (pages[1].toDouble() - pages[2].toDouble()) * 4096.0 / 1e6;
}

/// Acts on the window at random; the same seed gives the same acts.
class Hands {
  public:
    Hands(MainWindow& window, unsigned seed) : window_(window), random_(seed) {}

    void act() {
        switch (upTo(13)) {
        case 0:
        case 1:
        case 2:
            return dragSomething();
        case 3:
        case 4:
            return typeKey();
        case 5:
            return changeNumber();
        case 6:
            return arrange();
        case 7:
            return useAction();
        case 8:
            return resize();
        case 9:
            return turnWheel();
        case 10:
            return undoOrRedo();
        case 11:
            return changeChoice();
        default:
            return QTest::qWait(upTo(30));
        }
    }
    int edits() const { return edits_; }

  private:
    int upTo(int most) { return std::uniform_int_distribution<>(0, most)(random_); }

    template <class Widget>
    Widget* anyOf() {
        QList<Widget*> seen;
        for (auto* widget : window_.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->isEnabled() && widget->width() > 4 &&
                !widget->visibleRegion().isEmpty())
                seen << widget;
        }
        return seen.isEmpty() ? nullptr : seen[upTo(static_cast<int>(seen.size()) - 1)];
    }

    void dragSomething() {
        const quint64 before = window_.document().revision();
        if (auto* view = upTo(2) ? anyOf<TurnView>() : nullptr; view && !view->handles().empty()) {
            const auto count = static_cast<int>(view->handles().size());
            const QPointF at = view->handles()[static_cast<size_t>(upTo(count - 1))].at;
            drag(*view, at, at + QPointF(upTo(60) - 30, upTo(60) - 30), true,
                 upTo(2) ? Qt::NoModifier : Qt::ShiftModifier);
        } else if (auto* widget = anyOf<QWidget>(); widget && !isDangerous(*widget)) {
            const QPointF at(upTo(widget->width()), upTo(widget->height()));
            drag(*widget, at, at + QPointF(upTo(80) - 40, upTo(80) - 40));
        }
        edits_ += window_.document().revision() != before ? 1 : 0;
    }

    /// Opens a menu or a dialog, or lets marked text be dragged away: their loops would hold the
    /// hands.
    static bool isDangerous(const QWidget& widget) {
        for (const QWidget* w = &widget; w; w = w->parentWidget()) {
            if (qobject_cast<const QAbstractButton*>(w) || qobject_cast<const QMenuBar*>(w) ||
                qobject_cast<const QMenu*>(w) || qobject_cast<const QComboBox*>(w) ||
                qobject_cast<const QLabel*>(w))
                return true;
        }
        return false;
    }

    void typeKey() {
        static constexpr Qt::Key keys[] = {
            Qt::Key_Left,   Qt::Key_Right,  Qt::Key_Up,     Qt::Key_Down,
            Qt::Key_Tab,    Qt::Key_Home,   Qt::Key_End,    Qt::Key_PageDown,
            Qt::Key_PageUp, Qt::Key_Escape, Qt::Key_1,      Qt::Key_7,
            Qt::Key_Period, Qt::Key_Plus,   Qt::Key_Insert, Qt::Key_Delete};
        QWidget* focus = QApplication::focusWidget();
        if (!focus || focus->window() != &window_)
            focus = anyOf<TurnView>();
        if (focus) {
            QTest::keyClick(focus, keys[upTo(static_cast<int>(std::size(keys)) - 1)],
                            upTo(3) ? Qt::NoModifier : Qt::ShiftModifier);
        }
    }

    void changeNumber() {
        if (auto* box = anyOf<QAbstractSpinBox>()) {
            const quint64 before = window_.document().revision();
            box->setFocus();
            for (int i = 0; i <= upTo(3); ++i)
                upTo(1) ? box->stepUp() : box->stepDown();
            QTest::keyClick(box, Qt::Key_Return);
            edits_ += window_.document().revision() != before ? 1 : 0;
        }
    }

    void arrange() {
        const auto& all = arrangements();
        window_.arrange(all[static_cast<size_t>(upTo(static_cast<int>(all.size()) - 1))].key);
    }

    /// Actions that open no dialog and keep the document.
    void useAction() {
        QList<QAction*> safe;
        for (QMenu* menu : window_.menuBar()->findChildren<QMenu*>()) {
            for (QAction* action : menu->actions()) {
                const bool asks = action->text().contains(QChar(0x2026)) || action->menu() ||
                                  action->isSeparator() || !action->isEnabled();
                const QString home = menu->title();
                if (!asks &&
                    (home.contains(QLatin1String("View")) || home.contains(QLatin1String("Turn")) ||
                     home.contains(QLatin1String("Baseline")) ||
                     menu->objectName() == QLatin1String("everyView")) &&
                    !action->text().contains(QLatin1String("screen")))
                    safe << action;
            }
        }
        if (!safe.isEmpty())
            safe[upTo(static_cast<int>(safe.size()) - 1)]->trigger();
    }

    void resize() { window_.resize(900 + upTo(1000), 600 + upTo(600)); }

    void turnWheel() {
        if (auto* widget = anyOf<QWidget>(); widget && !isDangerous(*widget)) {
            const QPointF at = widget->rect().center();
            QWheelEvent event(at, widget->mapToGlobal(at), {}, {0, upTo(1) ? 120 : -120},
                              Qt::NoButton, upTo(2) ? Qt::NoModifier : Qt::ControlModifier,
                              Qt::NoScrollPhase, false);
            QApplication::sendEvent(widget, &event);
        }
    }

    void undoOrRedo() {
        auto& stack = window_.document().undoStack();
        upTo(2) ? stack.undo() : stack.redo();
    }

    void changeChoice() {
        if (auto* box = anyOf<QComboBox>(); box && box->count() > 0) {
            const int index = upTo(box->count() - 1);
            box->setCurrentIndex(index);
            Q_EMIT box->activated(index);
        }
    }

    MainWindow& window_;
    std::mt19937 random_;
    int edits_ = 0;
};

unsigned seedOfRun() {
    const int given = qEnvironmentVariableIntValue("LOBEWRIGHT_MONKEY_SEED");
    return given > 0 ? static_cast<unsigned>(given) : 20U;
}

class MonkeyTest : public WindowTest {};

} // namespace

// Nothing crashes, no memory piles up, no edit is lost: undone to the start it is the design that
// was opened, redone to the end it is the design that was made.
TEST_F(MonkeyTest, RandomHandsLoseNothing) {
    const double minutes = qEnvironmentVariableIntValue("LOBEWRIGHT_MONKEY_MINUTES");
    window_->document().undoStack().setUndoLimit(0);
    const design::Design opened = window_->document().design();
    Hands hands(*window_, seedOfRun());
    QElapsedTimer clock;
    clock.start();
    double warm = 0.0;
    const qint64 length = static_cast<qint64>(minutes * 60e3);
    for (int i = 0; i < 600 || clock.elapsed() < length; ++i) {
        hands.act();
        QApplication::processEvents();
        ASSERT_TRUE(window_->isVisible()) << "act " << i;
        if (i % 500 == 499 && length > 0) {
            ASSERT_TRUE(waitUntilSolved()) << "act " << i;
            const double now = memoryInUse();
            if (warm == 0.0 && clock.elapsed() > length / 4)
                warm = now;
            std::printf("%6.1f min %7d acts %6d edits %7.1f MB\n",
                        static_cast<double>(clock.elapsed()) / 60e3, i + 1, hands.edits(), now);
            std::fflush(stdout);
        }
    }
    EXPECT_GT(hands.edits(), 20);
    ASSERT_TRUE(waitUntilSolved());
    const double end = memoryInUse();
    if (warm > 0.0) {
        EXPECT_LT(end, 1.3 * warm + 50.0) << "undo steps and caches alone do not take that much";
    }

    auto& stack = window_->document().undoStack();
    window_->document().finishEdit();
    const design::Design made = window_->document().design();
    const int steps = stack.index();
    while (stack.canUndo())
        stack.undo();
    EXPECT_TRUE(window_->document().design() == opened);
    while (stack.index() < steps)
        stack.redo();
    EXPECT_TRUE(window_->document().design() == made);
}

} // namespace lobewright::ui::test
