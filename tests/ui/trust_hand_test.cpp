// Keyboard and wheel do what they say, and nothing in passing.
#include "tests/ui/trust_dialogs.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_panel.h"
#include "ui/window/figures_bar.h"
#include "ui/window/pane_grid.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QTest>
#include <QToolButton>
#include <QWheelEvent>

namespace lobewright::ui::test {
namespace {

void turnWheel(QWidget& widget) {
    const QPointF at = widget.rect().center();
    for (int i = 0; i < 3; ++i) {
        QWheelEvent event(at, widget.mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&widget, &event);
    }
}

class Hand : public WindowTest {
  protected:
    QLineEdit& searchLine() { return *window_->numbers().findChild<QLineEdit*>(); }
    /// Path of the input that has the keyboard after searching for a text.
    std::string found(const QString& text) {
        window_->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        window_->numbers().focusSearch();
        QTest::keyClicks(&searchLine(), text);
        QTest::keyClick(&searchLine(), Qt::Key_Return);
        for (QWidget* w = QApplication::focusWidget(); w; w = w->parentWidget()) {
            if (const auto* editor = qobject_cast<FieldEditor*>(w))
                return editor->field().path;
        }
        return {};
    }
};

TEST_F(Hand, SearchGoesToTheInputOfThatName) {
    EXPECT_EQ(found("Exhaust lead"), "/mechanism/exhaust_lead_deg");
    EXPECT_EQ(found("bore"), "/mechanism/bore_mm");
    EXPECT_EQ(found("Roller width"), "/mechanism/roller/width_mm");
}

TEST_F(Hand, SearchFindsChecksListsAndTexts) {
    EXPECT_EQ(found("Closed track"), "/mechanism/closed_track");
    EXPECT_TRUE(qobject_cast<QCheckBox*>(QApplication::focusWidget()));
    EXPECT_EQ(found("Fuel"), "/gas/fuel");
    EXPECT_TRUE(qobject_cast<QComboBox*>(QApplication::focusWidget()));
    EXPECT_EQ(found("Title"), "/title");
}

TEST_F(Hand, SearchSaysThatNothingWasFound) {
    const auto* nothing = window_->numbers().findChild<QLabel*>("nothingFound");
    ASSERT_TRUE(nothing);
    EXPECT_FALSE(nothing->isVisible());
    EXPECT_EQ(found("xyzzy"), "");
    EXPECT_TRUE(nothing->isVisible());
    EXPECT_TRUE(nothing->text().contains("xyzzy"));
    searchLine().clear();
    EXPECT_FALSE(nothing->isVisible());
}

// In large letters of a long language the panel is narrower than its inputs.
TEST_F(Hand, InputsWiderThanTheirPanelCanBeReached) {
    NumberPanel panel;
    panel.show(window_->document().design());
    panel.setOpenChapters({"running", "inlet-track"});
    panel.resize(150, 400);
    static_cast<QWidget&>(panel).show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&panel));
    auto* area = panel.findChild<QScrollArea*>();
    ASSERT_TRUE(area);
    EXPECT_TRUE(QTest::qWaitFor([&] { return area->horizontalScrollBar()->maximum() > 0; }));
    EXPECT_TRUE(area->horizontalScrollBar()->isVisible());
}

TEST_F(Hand, WheelOverAnUnfocusedListOrNumberChangesNothing) {
    window_->arrange("claims");
    QTest::qWait(50);
    int lists = 0;
    for (auto* box : window_->findChildren<QComboBox*>()) {
        if (!box->isVisible() || box->hasFocus() || box->count() < 2)
            continue;
        box->setCurrentIndex(0);
        turnWheel(*box);
        EXPECT_EQ(box->currentIndex(), 0) << box->accessibleName().toStdString();
        ++lists;
    }
    EXPECT_GT(lists, 0);
    ExportDialog dialog(window_->document().design(), "mine", window_.get());
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    auto& tolerance = *dialog.findChild<QDoubleSpinBox*>("tolerance");
    dialog.findChild<QComboBox*>("track")->setFocus();
    const double before = tolerance.value();
    turnWheel(tolerance);
    EXPECT_EQ(tolerance.value(), before);
}

TEST_F(Hand, SpaceAfterEnlargingDoesNotBringAllBack) {
    window_->arrange("student");
    QTest::qWait(50);
    QToolButton* enlarge = nullptr;
    for (auto* button : window_->findChildren<QToolButton*>()) {
        if (button->text() == QLatin1String("Enlarge") && button->isVisible() && !enlarge)
            enlarge = button;
    }
    ASSERT_TRUE(enlarge);
    enlarge->setFocus(); // as the tabulator goes there
    QTest::keyClick(enlarge, Qt::Key_Space);
    EXPECT_EQ(enlarge->text(), "Back to all panes");
    QWidget* focus = QApplication::focusWidget();
    ASSERT_TRUE(focus);
    QTest::keyClick(focus, Qt::Key_Space);
    EXPECT_EQ(enlarge->text(), "Back to all panes");
}

TEST_F(Hand, ListOfFiguresFollowsTheFigureOfTheStatusBar) {
    FiguresPanel& panel = shownFigures();
    Q_EMIT window_->findChild<FiguresBar*>()->workingWanted("imep_bar");
    ASSERT_TRUE(panel.currentItem());
    EXPECT_EQ(panel.currentItem()->data(0, Qt::UserRole).toString(), "imep_bar");
    const QString first = panel.topLevelItem(0)->child(0)->data(0, Qt::UserRole).toString();
    ASSERT_NE(first, "imep_bar");
    Q_EMIT window_->findChild<FiguresBar*>()->workingWanted(first);
    EXPECT_EQ(panel.currentItem()->data(0, Qt::UserRole).toString(), first);
}

TEST(FirstSteps, AreThoseOfTheArrangement) {
    EXPECT_EQ(firstStepsIn("student"), "first-student.md");
    EXPECT_EQ(firstStepsIn("reviewer"), "first-reviewer.md");
    EXPECT_EQ(firstStepsIn("lobes"), "first-designer.md");
}

TEST(SampleNotes, AreIntroducedByAWholeSentence) {
    const QTemporaryDir folder;
    QSettings().clear();
    QSettings().setValue("window/hintSeen", true);
    MainWindow window(MainWindow::Options{folder.filePath("recovery"), true});
    window.show();
    window.openSomething();
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->text().contains("buoy", Qt::CaseInsensitive)) {
            action->trigger();
            break;
        }
    }
    const QString text = window.findChild<QLabel*>("hintText")->text();
    EXPECT_TRUE(text.contains("hydrogen")) << text.toStdString();
    EXPECT_TRUE(text.endsWith('.')) << text.toStdString();
}

} // namespace
} // namespace lobewright::ui::test
