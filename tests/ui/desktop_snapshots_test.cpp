#include "core/design/snapshot.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/panels/snapshots_panel.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class SnapshotsTest : public WindowTest {
  protected:
    QTreeWidget& list() { return *window_->snapshots().findChild<QTreeWidget*>(); }
    QLineEdit& entry() { return *window_->snapshots().findChild<QLineEdit*>(); }
    const std::vector<design::Snapshot>& kept() { return window_->document().design().snapshots; }
    void setBore(double mm) {
        ASSERT_TRUE(
            window_->document()
                .apply({QStringLiteral("Change bore"), {{"/mechanism/bore_mm", mm}}, {}, {}})
                .empty());
    }
    /// By the keyboard alone, as the shortcut list says.
    void take(const QString& name) {
        ASSERT_TRUE(activate());
        QTest::keyClick(window_.get(), Qt::Key_T, Qt::ControlModifier);
        ASSERT_TRUE(QTest::qWaitFor([this] { return entry().hasFocus(); }));
        QTest::keyClicks(&entry(), name); // over the selected proposal
        QTest::keyClick(&entry(), Qt::Key_Return);
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ASSERT_TRUE(activate());
        list().setFocus();
        ASSERT_TRUE(QTest::qWaitFor([this] { return list().hasFocus(); }));
        QTest::keyClick(&list(), key, modifiers);
    }
};

} // namespace

TEST_F(SnapshotsTest, TakenUnderItsNameAsOneUndoStep) {
    const design::Design before = window_->document().design();
    take(QStringLiteral("narrow"));
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].name, "narrow");
    EXPECT_EQ(kept()[0].design, before);
    EXPECT_TRUE(design::isDateTime(kept()[0].taken)) << kept()[0].taken;
    EXPECT_EQ(window_->document().undoStack().undoText(), QStringLiteral("Take snapshot “narrow”"));
    EXPECT_EQ(list().topLevelItem(0)->text(1), QStringLiteral("as now"));
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
    EXPECT_EQ(list().topLevelItemCount(), 0);
}

TEST_F(SnapshotsTest, NameTakenTwiceIsRefusedAndStaysToBeMended) {
    take(QStringLiteral("narrow"));
    take(QStringLiteral("narrow"));
    EXPECT_EQ(kept().size(), 1U);
    EXPECT_EQ(entry().text(), QStringLiteral("narrow"));
}

TEST_F(SnapshotsTest, RestoredByTheKeyboardAndUndone) {
    const double bore = number("/mechanism/bore_mm");
    take(QStringLiteral("as drawn"));
    setBore(bore + 2.0);
    EXPECT_NE(list().topLevelItem(0)->text(1), QStringLiteral("as now"));
    press(Qt::Key_Return);
    EXPECT_DOUBLE_EQ(number("/mechanism/bore_mm"), bore);
    EXPECT_EQ(kept().size(), 1U); // it stays in the list
    EXPECT_EQ(window_->document().undoStack().undoText(),
              QStringLiteral("Restore snapshot “as drawn”"));
    window_->document().undoStack().undo();
    EXPECT_DOUBLE_EQ(number("/mechanism/bore_mm"), bore + 2.0);
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(SnapshotsTest, ComparedAsBaselineWithItsOwnFigures) {
    const double bore = number("/mechanism/bore_mm");
    take(QStringLiteral("narrow"));
    setBore(bore + 2.0);
    press(Qt::Key_Return, Qt::ShiftModifier);
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return window_->baseline().solution() != nullptr; }, 60000));
    EXPECT_EQ(window_->baseline().name(), QStringLiteral("narrow"));
    EXPECT_NEAR(window_->baseline().solution()->design.mechanism.bore * 1e3, bore, 1e-9);
}

TEST_F(SnapshotsTest, TheBaselineIsMarkedAndNamed) {
    take(QStringLiteral("narrow"));
    setBore(number("/mechanism/bore_mm") + 2.0);
    take(QStringLiteral("wide"));
    list().setCurrentItem(list().topLevelItem(0));
    press(Qt::Key_Return, Qt::ShiftModifier);
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return window_->baseline().solution() != nullptr; }, 60000));
    EXPECT_EQ(list().topLevelItem(0)->text(1), QStringLiteral("baseline"));
    EXPECT_EQ(list().topLevelItem(1)->text(1), QStringLiteral("as now"));
    const auto* name = window_->findChild<QLabel*>("baselineName");
    ASSERT_TRUE(name && name->isVisible());
    EXPECT_EQ(name->text(), QStringLiteral("Baseline: narrow"));
}

TEST_F(SnapshotsTest, ASampleIsTheBaselineByItsName) {
    auto* samples = window_->findChild<QMenu*>("sampleBaselines");
    ASSERT_TRUE(samples);
    QAction* last = samples->actions().back();
    last->trigger();
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return window_->baseline().solution() != nullptr; }, 60000));
    EXPECT_EQ(window_->baseline().name(), last->text());
    EXPECT_NE(window_->baseline().solution()->design, window_->document().design());
}

TEST_F(SnapshotsTest, ExchangeWithTheBaselineLosesNone) {
    take(QStringLiteral("first"));
    press(Qt::Key_Return, Qt::ShiftModifier);
    ASSERT_TRUE(
        QTest::qWaitFor([this] { return window_->baseline().solution() != nullptr; }, 60000));
    setBore(number("/mechanism/bore_mm") + 1.0);
    window_->document().apply(
        {QStringLiteral("Exchange"), {}, window_->baseline().solution()->design, {}});
    EXPECT_EQ(kept().size(), 1U);
}

TEST_F(SnapshotsTest, RenamedInPlaceAndDeleted) {
    take(QStringLiteral("narrow"));
    press(Qt::Key_F2);
    auto* editor = list().findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QStringLiteral("slim"));
    QTest::keyClick(editor, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([this] { return kept()[0].name == "slim"; }));
    EXPECT_EQ(list().topLevelItem(0)->text(0), QStringLiteral("slim"));
    press(Qt::Key_Delete);
    EXPECT_TRUE(kept().empty());
    window_->document().undoStack().undo();
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept()[0].name, "slim");
}

TEST_F(SnapshotsTest, TravelInTheFile) {
    take(QStringLiteral("narrow"));
    setBore(number("/mechanism/bore_mm") + 1.0);
    const QString file = fileIn(QStringLiteral("kept.lobewright.json"));
    ASSERT_TRUE(window_->saveTo(file));
    const design::Design saved = window_->document().design();
    ASSERT_TRUE(window_->openFile(file));
    EXPECT_EQ(window_->document().design(), saved);
    EXPECT_EQ(list().topLevelItemCount(), 1);
}
