// What stands around the panes: playing by Space, the permanent caution, rows that say nothing.
#include "tests/ui/desktop_fixture.h"
#include "ui/base/type_scale.h"
#include "ui/help/help_window.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/end_labels.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/turn/torque_plot.h"
#include "ui/window/arrangement.h"

#include <QLabel>
#include <QLineEdit>
#include <QStatusBar>
#include <QTest>
#include <QToolButton>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class FrameTest : public WindowTest {
  protected:
    FieldEditor* editor(const std::string& path) {
        for (FieldEditor* each : window_->numbers().findChildren<FieldEditor*>()) {
            if (each->path() == path)
                return each;
        }
        return nullptr;
    }
    /// Presses Space where the keyboard is put; whether the shaft turned or stopped by it.
    bool playsFrom(QWidget& widget) {
        widget.setFocus();
        const bool before = window_->cursor().isPlaying();
        QTest::keyClick(&widget, Qt::Key_Space);
        const bool isPlayed = window_->cursor().isPlaying() != before;
        window_->cursor().setPlaying(false);
        return isPlayed;
    }
};

QTreeWidgetItem* rowOf(FiguresPanel& panel, const QString& figure) {
    for (int i = 0; i < panel.topLevelItemCount(); ++i) {
        for (int k = 0; k < panel.topLevelItem(i)->childCount(); ++k) {
            if (panel.topLevelItem(i)->child(k)->data(0, Qt::UserRole).toString() == figure)
                return panel.topLevelItem(i)->child(k);
        }
    }
    return nullptr;
}

} // namespace

TEST_F(FrameTest, SpacePlaysFromEveryViewAndFromNumbers) {
    for (const Views::View& view : window_->views().all()) {
        if (view.widget->isVisible() && view.widget->focusPolicy() != Qt::NoFocus) {
            EXPECT_TRUE(playsFrom(*view.widget)) << view.key.toStdString();
        }
    }
    auto& speed = *editor("/running/speed_rpm")->findChild<NumberEdit*>();
    EXPECT_TRUE(playsFrom(speed));
    EXPECT_EQ(speed.text(), QStringLiteral("1000"));
    EXPECT_TRUE(playsFrom(shownFigures()));
}

TEST_F(FrameTest, SpaceStaysWhatItIsInTextAndOnButtons) {
    auto& search = *window_->numbers().findChild<QLineEdit*>();
    EXPECT_FALSE(playsFrom(search));
    EXPECT_EQ(search.text(), QStringLiteral(" "));
    search.clear();
    // Behind a number that is being typed stands its unit.
    auto& speed = *editor("/running/speed_rpm")->findChild<NumberEdit*>();
    speed.setFocus();
    speed.selectAll();
    QTest::keyClicks(&speed, QStringLiteral("1100"));
    QTest::keyClick(&speed, Qt::Key_Space);
    EXPECT_FALSE(window_->cursor().isPlaying());
    EXPECT_EQ(speed.text(), QStringLiteral("1100 "));
    QTest::keyClick(&speed, Qt::Key_Escape);
    auto& caution = *window_->findChild<QToolButton*>(QStringLiteral("caution"));
    EXPECT_FALSE(playsFrom(caution)); // it opens the page instead
}

TEST_F(FrameTest, TheCautionIsAlwaysInSightAndOpensItsPage) {
    auto& caution = *window_->findChild<QToolButton*>(QStringLiteral("caution"));
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        QTest::qWait(20);
        EXPECT_FALSE(caution.visibleRegion().isEmpty()) << arrangement.key.toStdString();
    }
    EXPECT_FALSE(caution.toolTip().isEmpty());
    EXPECT_GT(caution.mapTo(window_.get(), QPoint(0, 0)).x(), window_->width() / 2);
    QTest::mouseClick(&caution, Qt::LeftButton);
    auto* help = window_->findChild<HelpWindow*>();
    ASSERT_NE(help, nullptr);
    EXPECT_TRUE(help->isVisible());
    help->close();
}

// A message is whole over what always stands at the foot, and leaves nothing behind.
TEST_F(FrameTest, MessagesLieOverTheFoot) {
    window_->resize(1280, 800);
    auto& message = *window_->findChild<QLabel*>(QStringLiteral("footMessage"));
    const QSize before = window_->centralWidget()->size();
    window_->statusBar()->showMessage(QString(90, QLatin1Char('m')));
    EXPECT_TRUE(message.isVisible());
    EXPECT_GE(message.width(), message.sizeHint().width());
    EXPECT_EQ(window_->centralWidget()->size(), before);
    window_->statusBar()->clearMessage();
    EXPECT_FALSE(message.isVisible());
}

// Rows of features that are not used make room; the search finds them, and what is given comes out.
TEST_F(FrameTest, InputsThatAreNotUsedAreFoldedUntilWanted) {
    const std::string inertia = "/running/inertia_kg_m2";
    ASSERT_NE(editor(inertia), nullptr);
    EXPECT_TRUE(editor(inertia)->isHidden());
    EXPECT_FALSE(editor("/running/speed_rpm")->isHidden());
    auto& search = *window_->numbers().findChild<QLineEdit*>();
    search.setText(QStringLiteral("inertia"));
    EXPECT_FALSE(editor(inertia)->isHidden());
    search.clear();
    EXPECT_TRUE(editor(inertia)->isHidden());
    window_->numbers().goTo(QString::fromStdString(inertia));
    EXPECT_FALSE(editor(inertia)->isHidden());
}

TEST_F(FrameTest, ASearchThatFindsNothingOffersTheHelp) {
    auto& search = *window_->numbers().findChild<QLineEdit*>();
    auto& offer = *window_->numbers().findChild<QToolButton*>(QStringLiteral("searchHelp"));
    EXPECT_TRUE(offer.isHidden());
    search.setText(QStringLiteral("dissociation"));
    ASSERT_TRUE(offer.isVisible());
    QTest::mouseClick(&offer, Qt::LeftButton);
    auto* help = window_->findChild<HelpWindow*>();
    ASSERT_NE(help, nullptr);
    EXPECT_TRUE(help->isVisible());
    EXPECT_NE(help->page(), QStringLiteral("contents.md"));
    help->close();
    search.clear();
    EXPECT_TRUE(offer.isHidden());
}

TEST_F(FrameTest, AnInputThatIsGivenComesOut) {
    const std::string inertia = "/running/inertia_kg_m2";
    Edit edit;
    edit.changes = {{inertia, 0.5}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    EXPECT_FALSE(editor(inertia)->isHidden());
}

TEST_F(FrameTest, AButtonShowsAllInputsOfItsSection) {
    for (auto* more :
         window_->numbers().findChildren<QToolButton*>(QStringLiteral("unusedInputs"))) {
        EXPECT_FALSE(more->toolTip().isEmpty());
        if (more->isVisible())
            more->click();
    }
    EXPECT_FALSE(editor("/running/inertia_kg_m2")->isHidden());
}

TEST_F(FrameTest, ResultsOfAnAdjusterThatIsNoneAreFolded) {
    FiguresPanel& panel = shownFigures();
    const auto row = [&] { return rowOf(panel, QStringLiteral("overlap_change_axial_deg")); };
    ASSERT_NE(row(), nullptr);
    EXPECT_TRUE(row()->isHidden());
    EXPECT_FALSE(rowOf(panel, QStringLiteral("displacement_cm3"))->isHidden());
    panel.setFilter(QStringLiteral("overlap"));
    EXPECT_FALSE(row()->isHidden());
    panel.setFilter({});
    EXPECT_TRUE(row()->isHidden());
    // The last row of the group shows them.
    QTreeWidgetItem* group = row()->parent();
    Q_EMIT panel.itemClicked(group->child(group->childCount() - 1), 0);
    EXPECT_FALSE(row()->isHidden());
    Edit edit;
    edit.changes = {{"/mechanism/adjuster/setting_deg", 2.0}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_FALSE(row()->isHidden());
}

// Too low for numbers the curve stays, with its value above it.
TEST_F(FrameTest, ALowPlotIsASparkline) {
    auto& plot = dynamic_cast<TorquePlot&>(view(QStringLiteral("torque")));
    plot.setParent(window_.get());
    plot.show();
    plot.setGeometry(0, 0, 470, 400);
    QTest::qWait(50);
    EXPECT_FALSE(plot.canvas().isSparkline());
    EXPECT_FALSE(plot.canvas().lane().isEmpty());
    plot.setGeometry(0, 0, 470, 140);
    QTest::qWait(50);
    EXPECT_TRUE(plot.canvas().isSparkline());
    EXPECT_TRUE(plot.canvas().lane().isEmpty());
    EXPECT_GT(plot.canvas().inside().height(), 40.0);
    plot.setGeometry(0, 0, 470, 400);
    QTest::qWait(50);
    EXPECT_FALSE(plot.canvas().isSparkline());
    EXPECT_TRUE(plot.canvas().xAxis->tickLabels());
}

TEST(LowFrames, AxesGoAndComeBack) {
    QCustomPlot plot;
    new LowFrames(plot);
    plot.resize(300, 240);
    plot.show();
    plot.replot();
    EXPECT_TRUE(plot.xAxis->visible());
    EXPECT_FALSE(plot.xAxis2->visible());
    plot.resize(300, 100);
    QTest::qWait(50);
    EXPECT_FALSE(plot.xAxis->visible());
    EXPECT_FALSE(plot.yAxis->visible());
    plot.resize(300, 240);
    QTest::qWait(50);
    EXPECT_TRUE(plot.xAxis->visible());
    EXPECT_TRUE(plot.yAxis->visible());
    EXPECT_FALSE(plot.xAxis2->visible()); // was not there before
}

TEST(EndLabels, MoveApartAndStayInside) {
    const auto placed = spreadOut({50.0, 48.0, 52.0, 10.0}, 14.0, 8.0, 100.0);
    ASSERT_EQ(placed.size(), 4u);
    EXPECT_EQ(placed[3], 10.0);
    EXPECT_LE(placed[1] + 14.0, placed[0] + 1e-9);
    EXPECT_LE(placed[0] + 14.0, placed[2] + 1e-9);
    for (const double y : spreadOut({99.0, 99.0, 98.0}, 14.0, 8.0, 100.0)) {
        EXPECT_GE(y, 8.0);
        EXPECT_LE(y, 100.0);
    }
}

// 12, 14, 17 and 22 px at 10.5 points on 96 dots an inch.
TEST(TypeScale, HasFourSizesAroundTheOneThatIsChosen) {
    QFont base;
    base.setPointSizeF(10.5);
    const double pixels = 96.0 / 72.0;
    EXPECT_NEAR(sized(base, TypeSize::small).pointSizeF() * pixels, 12.0, 1e-9);
    EXPECT_NEAR(sized(base, TypeSize::body).pointSizeF() * pixels, 14.0, 1e-9);
    EXPECT_NEAR(sized(base, TypeSize::heading).pointSizeF() * pixels, 17.0, 1e-9);
    EXPECT_NEAR(sized(base, TypeSize::title).pointSizeF() * pixels, 22.0, 1e-9);
}
