#include "tests/ui/desktop_fixture.h"
#include "ui/dialogs/goal_dialog.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_edit.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

constexpr auto supply = "/gas/supply/pressure_bar";

class GoalTest : public WindowTest {
  protected:
    template <class Widget>
    Widget& part(QDialog& dialog, const char* name) {
        auto* found = dialog.findChild<Widget*>(QLatin1String(name));
        if (!found)
            throw std::runtime_error(std::string("no ") + name);
        return *found;
    }
    void type(QDialog& dialog, const char* line, const QString& text) {
        auto& edit = part<QLineEdit>(dialog, line);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
    }
    void choose(QDialog& dialog, const char* box, const QString& data) {
        auto& list = part<QComboBox>(dialog, box);
        ASSERT_GE(list.findData(data), 0) << data.toStdString();
        list.setCurrentIndex(list.findData(data));
    }
    void search(QDialog& dialog) {
        QTest::mouseClick(&part<QPushButton>(dialog, "search"), Qt::LeftButton);
        auto& goal = dynamic_cast<GoalDialog&>(dialog);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !goal.isBusy(); }, 120000));
    }
    /// As Ctrl+G opens it.
    void ask(std::function<void(QDialog&)> act) {
        ASSERT_TRUE(activate());
        bool isAsked = false;
        onNextDialog([&isAsked, act = std::move(act)](QDialog& dialog) {
            isAsked = true;
            act(dialog);
        });
        QTest::keyClick(window_.get(), Qt::Key_G, Qt::ControlModifier);
        ASSERT_TRUE(isAsked);
    }
    double figure(const char* name) { return *window_->solution()->figure(name)->value; }
};

} // namespace

// What the dialog proposes is what it reads: "1,028.3" would be 1.0283.
TEST_F(GoalTest, ProposedNumbersAboveAThousandAreReadAsTheyStand) {
    const double stress = figure("peak_contact_pressure_inlet_MPa");
    ASSERT_GT(stress, 1000.0);
    ask([&](QDialog& dialog) {
        choose(dialog, "result", QStringLiteral("peak_contact_pressure_inlet_MPa"));
        const auto read = readNumber(part<QLineEdit>(dialog, "target").text());
        ASSERT_TRUE(read);
        EXPECT_NEAR(*read, stress, 1e-4 * stress);
        dialog.reject();
    });
}

TEST_F(GoalTest, ReachedBySupplyPressureAndUndoneInOneStep) {
    const design::Design before = window_->document().design();
    const double power = figure("brake_power_kW");
    const double target = std::round(10.0 * power * 1.1) / 10.0;
    const int index = window_->document().undoStack().index();
    ask([&](QDialog& dialog) {
        EXPECT_EQ(part<QComboBox>(dialog, "result").currentData().toString(),
                  QStringLiteral("brake_power_kW"));
        choose(dialog, "input", QString::fromLatin1(supply));
        type(dialog, "target", QString::number(target));
        type(dialog, "from", QStringLiteral("1.05"));
        type(dialog, "to", QStringLiteral("1.4"));
        EXPECT_FALSE(part<QPushButton>(dialog, "apply").isEnabled());
        search(dialog);
        EXPECT_EQ(part<QListWidget>(dialog, "solutions").count(), 1);
        // What else changes: the peak pressure goes up with the supply.
        EXPECT_GT(part<QTableWidget>(dialog, "changes").rowCount(), 10);
        ASSERT_TRUE(part<QPushButton>(dialog, "apply").isEnabled());
        QTest::mouseClick(&part<QPushButton>(dialog, "apply"), Qt::LeftButton);
    });
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_NEAR(figure("brake_power_kW"), target, 1e-4 * target);
    ASSERT_EQ(window_->document().undoStack().index(), index + 1);
    window_->document().undoStack().undo();
    EXPECT_EQ(window_->document().design(), before);
}

TEST_F(GoalTest, SaysWhatIsNearestWhereTheTargetIsOutOfReach) {
    const int index = window_->document().undoStack().index();
    ask([&](QDialog& dialog) {
        choose(dialog, "input", QString::fromLatin1(supply));
        type(dialog, "target", QStringLiteral("900"));
        type(dialog, "from", QStringLiteral("1.1"));
        type(dialog, "to", QStringLiteral("1.3"));
        search(dialog);
        const QString text = part<QLabel>(dialog, "message").text();
        EXPECT_TRUE(text.startsWith(QStringLiteral("Not reachable: the largest is")))
            << text.toStdString();
        EXPECT_TRUE(text.contains(QStringLiteral("at 1.3"))) << text.toStdString();
        EXPECT_FALSE(part<QPushButton>(dialog, "apply").isEnabled());
    });
    EXPECT_EQ(window_->document().undoStack().index(), index);
}

TEST_F(GoalTest, TwoValuesAreBothOfferedAndTheChosenOneIsTaken) {
    // The indicated work has a highest value over the start of combustion: below it two starts.
    const double now = figure("indicated_power_kW");
    double applied = 0.0;
    ask([&](QDialog& dialog) {
        choose(dialog, "result", QStringLiteral("indicated_power_kW"));
        choose(dialog, "input", QStringLiteral("/gas/burn/start_deg"));
        type(dialog, "target", QString::number(0.97 * now, 'g', 6));
        type(dialog, "from", QStringLiteral("-70"));
        type(dialog, "to", QStringLiteral("30"));
        search(dialog);
        auto& list = part<QListWidget>(dialog, "solutions");
        ASSERT_EQ(list.count(), 2) << part<QLabel>(dialog, "message").text().toStdString();
        list.setFocus();
        QTest::keyClick(&list, Qt::Key_End);
        QTest::mouseClick(&part<QPushButton>(dialog, "apply"), Qt::LeftButton);
    });
    ASSERT_TRUE(waitUntilSolved());
    applied = number("/gas/burn/start_deg");
    EXPECT_GT(applied, -20.0); // the later of both
    EXPECT_NEAR(figure("indicated_power_kW"), 0.97 * now, 1e-4 * now);
}

TEST_F(GoalTest, OpensOnTheResultThatIsChosenInTheList) {
    FiguresPanel& figures = shownFigures();
    figures.choose(QStringLiteral("peak_pressure_bar"));
    ask([&](QDialog& dialog) {
        EXPECT_EQ(part<QComboBox>(dialog, "result").currentData().toString(),
                  QStringLiteral("peak_pressure_bar"));
        type(dialog, "from", QStringLiteral("no number"));
        QTest::mouseClick(&part<QPushButton>(dialog, "search"), Qt::LeftButton);
        EXPECT_FALSE(dynamic_cast<GoalDialog&>(dialog).isBusy());
        EXPECT_FALSE(part<QLabel>(dialog, "message").text().isEmpty());
    });
}
