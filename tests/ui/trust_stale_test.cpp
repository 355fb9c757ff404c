// Results of an earlier input are never taken for those of the present one.
#include "core/units.h"
#include "tests/ui/trust_dialogs.h"
#include "ui/window/figures_bar.h"

#include <QLabel>
#include <QProgressBar>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

namespace lobewright::ui::test {
namespace {

class StaleResults : public WindowTest {
  protected:
    /// An edit whose solution takes much longer than a blink: sixteen unevenly spaced cylinders on
    /// one plenum, with the best ignition to be found.
    void editSlowly() {
        Edit edit;
        edit.text = QStringLiteral("many cylinders");
        design::Design design = window_->document().design();
        constexpr int cylinders = 16;
        design.mechanism.cylinders = cylinders;
        design.mechanism.pitchRadius *= 6.0;
        std::vector<double> angles;
        for (int k = 0; k < cylinders; ++k) {
            angles.push_back(units::turn * k / cylinders + 0.02 * (k * k % 7));
        }
        design.mechanism.cylinderAngles = angles;
        design.gas.supply.kind = gas::SupplyKind::blower;
        design.gas.burn.bestTorque = true;
        design.running.speed *= 0.25;
        edit.replacement = design;
        ASSERT_TRUE(window_->document().apply(edit).empty());
    }
    QString state() const {
        for (const auto* label : window_->findChildren<QLabel*>("solveState"))
            return label->text();
        return {};
    }
    const QWidget& mark() const { return *window_->findChild<QWidget*>("staleMark"); }
    QToolButton& stop() const { return *window_->findChild<QToolButton*>("stopSolving"); }
};

TEST_F(StaleResults, AreSaidToBeSoFromTheFirstMomentAndMarkedWhileItLasts) {
    EXPECT_TRUE(state().startsWith("Solved in")) << state().toStdString();
    editSlowly();
    EXPECT_EQ(state(), "Solving: results are of the earlier input");
    ASSERT_TRUE(QTest::qWaitFor([&] { return mark().isVisible(); }, 5000));
    EXPECT_TRUE(mark().accessibleName().contains("earlier input"));
    EXPECT_TRUE(stop().isVisible());
    EXPECT_TRUE(window_->findChild<QProgressBar*>("solveProgress")->isVisible());
    EXPECT_FALSE(window_->findChild<FiguresBar*>()->isEnabled());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_FALSE(mark().isVisible());
    EXPECT_FALSE(stop().isVisible());
    EXPECT_TRUE(window_->findChild<FiguresBar*>()->isEnabled());
}

TEST_F(StaleResults, StayMarkedAfterStoppingUntilTheyAreSolvedAfterAll) {
    editSlowly();
    ASSERT_TRUE(QTest::qWaitFor([&] { return stop().isVisible(); }, 5000));
    stop().click();
    EXPECT_FALSE(window_->solver().isBusy());
    EXPECT_TRUE(mark().isVisible());
    EXPECT_EQ(state(), "Stopped: results are of the earlier input");
    EXPECT_EQ(stop().text(), "Solve");
    stop().click();
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_FALSE(mark().isVisible());
}

TEST_F(StaleResults, OfAQuickEditAreNotMarked) {
    ASSERT_TRUE(window_->document()
                    .apply({QStringLiteral("Change bore"), {{"/mechanism/bore_mm", 66.0}}, {}, {}})
                    .empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_TRUE(state().startsWith("Solved in"));
    EXPECT_FALSE(mark().isVisible());
}

} // namespace
} // namespace lobewright::ui::test
