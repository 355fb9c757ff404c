#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/design/ranged_inputs.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/core_text.h"
#include "ui/claims/claims_pane.h"
#include "ui/dialogs/candidate_table.h"
#include "ui/dialogs/draft_view.h"
#include "ui/dialogs/duty_page.h"
#include "ui/dialogs/new_engine_dialog.h"
#include "ui/dialogs/published_page.h"
#include "ui/document/samples.h"
#include "ui/panels/number_edit.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <fmt/format.h>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class NewEngineTest : public WindowTest {
  protected:
    /// As Ctrl+N opens it.
    void ask(std::function<void(NewEngineDialog&)> act) {
        ASSERT_TRUE(activate());
        bool isAsked = false;
        onNextDialog([&isAsked, act = std::move(act)](QDialog& dialog) {
            isAsked = true;
            act(dynamic_cast<NewEngineDialog&>(dialog));
        });
        QTest::keyClick(window_.get(), Qt::Key_N, Qt::ControlModifier);
        ASSERT_TRUE(isAsked);
    }
    static void waitForDrafts(NewEngineDialog& dialog) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.drafts().isBusy(); }, 300000));
    }
    static void type(QLineEdit& line, const QString& text) {
        line.setFocus();
        line.selectAll();
        QTest::keyClick(&line, Qt::Key_Delete);
        QTest::keyClicks(&line, text);
        QTest::keyClick(&line, Qt::Key_Return);
    }
    static QLineEdit& entry(NewEngineDialog& dialog, const QString& label) {
        for (auto* line : dialog.published().findChildren<QLineEdit*>()) {
            if (line->accessibleName() == label)
                return *line;
        }
        throw std::runtime_error("no entry " + label.toStdString());
    }
    static QLineEdit& dutyLine(NewEngineDialog& dialog, const char* key) {
        return *dialog.duty().findChild<QLineEdit*>(QLatin1String(key));
    }
    static QPushButton& open(NewEngineDialog& dialog) {
        return *dialog.findChild<QPushButton*>(QStringLiteral("open"));
    }
    static QTableWidget& steps(NewEngineDialog& dialog) {
        return *dialog.drafts().findChild<QTableWidget*>(QStringLiteral("steps"));
    }
    /// Beside each of the six labels stands a value of every candidate.
    static void expectSixFiguresEach(NewEngineDialog& dialog) {
        auto* grid = dialog.findChild<CandidateTable*>()->layout();
        int values = 0;
        for (int i = 0; i < grid->count(); ++i) {
            const auto* label = qobject_cast<QLabel*>(grid->itemAt(i)->widget());
            const bool isValue = label && label->alignment().testFlag(Qt::AlignRight);
            values += isValue && !label->text().isEmpty() ? 1 : 0;
        }
        EXPECT_EQ(values, 36);
    }
    static int rowOf(const QTableWidget& table, const QString& quantity) {
        for (int row = 0; row < table.rowCount(); ++row) {
            if (table.item(row, 0)->text() == quantity)
                return row;
        }
        throw std::runtime_error("no row " + quantity.toStdString());
    }
    const design::Design& design() { return window_->document().design(); }
};

} // namespace

TEST_F(NewEngineTest, PublishedFiguresGiveSixCandidatesOfWhichOneOpens) {
    ask([](NewEngineDialog& dialog) {
        EXPECT_FALSE(open(dialog).isEnabled());
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("20 hp"));
        type(entry(dialog, QStringLiteral("Speed of peak power")), QStringLiteral("1800 rpm"));
        waitForDrafts(dialog);
        // One, two and three lobes, each not boosted and boosted.
        ASSERT_EQ(dialog.drafts().candidates().size(), 6U);
        auto* last = dialog.findChild<QRadioButton*>(QStringLiteral("candidate5"));
        ASSERT_NE(last, nullptr);
        // A click on the drawing below chooses too.
        QTest::mouseClick(last->parentWidget(), Qt::LeftButton, {},
                          last->geometry().center() + QPoint(0, 90));
        EXPECT_TRUE(last->isChecked());
        EXPECT_EQ(dialog.drafts().selected(), &dialog.drafts().candidates()[5]);
        expectSixFiguresEach(dialog);
        // A first candidate that is chosen stays so where the figures change.
        auto* first = dialog.findChild<QRadioButton*>(QStringLiteral("candidate0"));
        QTest::mouseClick(first->parentWidget(), Qt::LeftButton, {},
                          first->geometry().center() + QPoint(0, 90));
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("21 hp"));
        waitForDrafts(dialog);
        EXPECT_EQ(dialog.drafts().selected(), &dialog.drafts().candidates()[0]);
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("20 hp"));
        waitForDrafts(dialog);
        last = dialog.findChild<QRadioButton*>(QStringLiteral("candidate5"));
        QTest::mouseClick(last->parentWidget(), Qt::LeftButton, {},
                          last->geometry().center() + QPoint(0, 90));
        ASSERT_TRUE(open(dialog).isEnabled());
        QTest::mouseClick(&open(dialog), Qt::LeftButton);
    });
    EXPECT_EQ(design().tracks.inlet.lobes, 3);
    EXPECT_NEAR(number("/running/speed_rpm"), 1800.0, 1e-9);
    EXPECT_EQ(design::knownOf(design(), "/running/speed_rpm").origin, design::Origin::given);
    EXPECT_GT(design::originCounts(design()).assumed, 10);
    // The claims check has the figures that were typed in.
    EXPECT_NEAR(window_->views().claims().claims().figures.power.value().si, 20.0 * 745.699872,
                1.0);
    // It is saved nowhere: the program asks before it is thrown away.
    EXPECT_TRUE(window_->document().isModified());
    EXPECT_FALSE(window_->document().undoStack().canUndo());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_NEAR(*window_->solution()->figure("brake_power_kW")->value, 20.0 * 0.745699872, 0.15);
}

// A second Ctrl+N showed an empty page: what was typed was lost.
TEST_F(NewEngineTest, WhatWasTypedIsThereTheNextTime) {
    ask([](NewEngineDialog& dialog) {
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("20 hp"));
        dialog.reject();
    });
    ask([](NewEngineDialog& dialog) {
        EXPECT_TRUE(entry(dialog, QStringLiteral("Power")).text().contains(QStringLiteral("20")))
            << entry(dialog, QStringLiteral("Power")).text().toStdString();
        EXPECT_FALSE(dialog.chosen());
        dialog.reject();
    });
}

TEST_F(NewEngineTest, CandidatesSayWhatIsOpenAndWhatFiresAtOnce) {
    ask([](NewEngineDialog& dialog) {
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("20 kW"));
        type(entry(dialog, QStringLiteral("Chambers")), QStringLiteral("3"));
        waitForDrafts(dialog);
        const auto* message = dialog.findChild<QLabel*>(QStringLiteral("message"));
        EXPECT_TRUE(message->text().contains(QStringLiteral("each is possible")))
            << qPrintable(message->text());
        // Three cylinders on three lobes: said under the candidate that is chosen.
        const auto* remarks = dialog.findChild<QLabel*>(QStringLiteral("remarks"));
        const QString together = QStringLiteral("fire at the same moment");
        for (int i = 0; i < 6; ++i) {
            auto* button = dialog.findChild<QRadioButton*>(QStringLiteral("candidate%1").arg(i));
            button->click();
            EXPECT_EQ(remarks->text().contains(together), i >= 4) << i;
        }
        dialog.reject();
    });
}

TEST_F(NewEngineTest, FiguresThatExcludeEachOtherAreNamedAndOneIsLeftOut) {
    ask([](NewEngineDialog& dialog) {
        type(entry(dialog, QStringLiteral("Power")), QStringLiteral("60 kW"));
        type(entry(dialog, QStringLiteral("Speed of peak power")), QStringLiteral("2000 rpm"));
        type(entry(dialog, QStringLiteral("Torque")), QStringLiteral("150 N·m"));
        auto* conflicts = dialog.findChild<QLabel*>(QStringLiteral("conflicts"));
        ASSERT_TRUE(conflicts->isVisibleTo(&dialog));
        // 60 kW at 2000 rpm are 286 N·m.
        EXPECT_TRUE(conflicts->text().contains(QStringLiteral("Leave out")));
        ASSERT_TRUE(conflicts->text().contains(QStringLiteral("href=\"/figures/torque\"")));
        Q_EMIT conflicts->linkActivated(QStringLiteral("/figures/torque"));
        EXPECT_FALSE(dialog.published().claims().figures.torque);
        EXPECT_EQ(entry(dialog, QStringLiteral("Torque")).text(), QString());
        EXPECT_FALSE(conflicts->isVisibleTo(&dialog));
        EXPECT_TRUE(dialog.published().brief());
    });
    EXPECT_EQ(design(), sampleDesign()); // closed without a choice
}

TEST_F(NewEngineTest, OwnNumberTakesThePlaceOfARule) {
    ask([](NewEngineDialog& dialog) {
        type(entry(dialog, QStringLiteral("Bore")), QStringLiteral("60 mm"));
        type(entry(dialog, QStringLiteral("Stroke")), QStringLiteral("40 mm"));
        type(entry(dialog, QStringLiteral("Reciprocations per revolution")), QStringLiteral("2"));
        waitForDrafts(dialog);
        ASSERT_EQ(dialog.drafts().candidates().size(), 2U); // boosted or not
        QTableWidget& table = steps(dialog);
        const int row = rowOf(table, QStringLiteral("Piston mass"));
        table.setCurrentCell(row, 1);
        auto* working = dialog.findChild<QLabel*>(QStringLiteral("working"));
        EXPECT_TRUE(working->text().contains(QStringLiteral("Source:")))
            << working->text().toStdString();
        table.item(row, 1)->setText(QStringLiteral("1.25")); // as the editor of the cell does
        waitForDrafts(dialog);
        EXPECT_DOUBLE_EQ(dialog.drafts().candidates()[0].design.mechanism.pistonMass.inlet, 1.25);
        EXPECT_EQ(table.currentRow(), row);
        table.item(row, 1)->setText(QStringLiteral("heavy"));
        EXPECT_FALSE(dialog.drafts().isBusy());
        table.item(row, 1)->setText(QString());
        waitForDrafts(dialog);
        EXPECT_NE(dialog.drafts().candidates()[0].design.mechanism.pistonMass.inlet, 1.25);
    });
}

// The page asks for what a draft follows, and for nothing else.
TEST_F(NewEngineTest, AsksForTheFiguresThatADraftFollows) {
    ask([](NewEngineDialog& dialog) {
        QStringList asked;
        for (const auto* line : dialog.published().findChildren<QLineEdit*>())
            asked << line->accessibleName();
        for (const auto* box : dialog.published().findChildren<QComboBox*>())
            asked << box->accessibleName();
        study::forEachGroup([&](std::string_view group, const auto& keys, auto) {
            for (const auto& key : keys) {
                const std::string path = fmt::format("/{}/{}", group, key.name);
                EXPECT_EQ(asked.contains(coreText(key.label)), draft::isFollowed(path)) << path;
            }
        });
    });
}

TEST_F(NewEngineTest, DutyThatIsTooLargeOffersTheNearest) {
    ask([](NewEngineDialog& dialog) {
        dialog.choose(NewEngineDialog::Way::duty);
        type(dutyLine(dialog, "power"), QStringLiteral("30 kg"));
        auto* problem = dialog.duty().findChild<QLabel*>(QStringLiteral("problem"));
        EXPECT_TRUE(problem->text().startsWith(QStringLiteral("Power:")));
        EXPECT_FALSE(open(dialog).isEnabled());
        type(dutyLine(dialog, "power"), QStringLiteral("30 kW"));
        EXPECT_EQ(problem->text(), QString());
        type(dutyLine(dialog, "speed"), QStringLiteral("1500 rpm"));
        type(dutyLine(dialog, "lobes"), QStringLiteral("2"));
        type(dutyLine(dialog, "diameter"), QStringLiteral("220 mm"));
        waitForDrafts(dialog);
        const auto* made = dialog.drafts().selected();
        ASSERT_NE(made, nullptr);
        ASSERT_TRUE(made->nearestPower);
        auto* remarks = dialog.drafts().findChild<QLabel*>(QStringLiteral("remarks"));
        ASSERT_TRUE(remarks->text().contains(QStringLiteral("href=\"nearest\"")));
        Q_EMIT remarks->linkActivated(QStringLiteral("nearest"));
        waitForDrafts(dialog);
        const auto power = readNumber(dutyLine(dialog, "power").text().remove(" kW"));
        ASSERT_TRUE(power);
        EXPECT_LT(*power, 30.0);
        EXPECT_GT(*power, 0.5);
    });
}

TEST_F(NewEngineTest, SampleOpensBesideWhatItIs) {
    ask([](NewEngineDialog& dialog) {
        dialog.choose(NewEngineDialog::Way::sample);
        auto* list = dialog.findChild<QListWidget*>(QStringLiteral("samples"));
        list->setCurrentRow(2);
        EXPECT_TRUE(open(dialog).isEnabled());
        QTest::mouseClick(&open(dialog), Qt::LeftButton);
    });
    EXPECT_EQ(design().title, samples()[2].title.toStdString());
    EXPECT_FALSE(window_->document().isModified());
}

TEST_F(NewEngineTest, BlankIsTheSmallestEngineAndRuns) {
    ask([](NewEngineDialog& dialog) {
        dialog.findChild<QTabBar*>(QStringLiteral("ways"))->setFocus();
        QTest::keyClick(dialog.findChild<QTabBar*>(QStringLiteral("ways")), Qt::Key_End);
        dialog.choose(NewEngineDialog::Way::blank);
        ASSERT_TRUE(open(dialog).isEnabled());
        QTest::mouseClick(&open(dialog), Qt::LeftButton);
    });
    EXPECT_EQ(design().mechanism.cylinders, 1);
    EXPECT_EQ(design().tracks.inlet.lobes, 1);
    EXPECT_TRUE(design().knowledge.empty());
    ASSERT_TRUE(waitUntilSolved());
    EXPECT_TRUE(window_->solution()->gas);
}
