#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/claims/claims_report.h"
#include "core/units.h"
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/base/core_text.h"
#include "ui/claims/claims_form.h"
#include "ui/claims/claims_pane.h"
#include "ui/claims/claims_report_view.h"
#include "ui/panels/working_view.h"
#include "ui/plots/study/comparison_pane.h"
#include "ui/window/pane_grid.h"

#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <QToolButton>
#include <QWheelEvent>

#include <algorithm>
#include <optional>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class ClaimsTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        QTest::keyClick(window_.get(), Qt::Key_5, Qt::ControlModifier);
        ASSERT_TRUE(QTest::qWaitFor([this] { return pane().isVisible(); }));
        QTest::qWait(50); // the panes take their places
    }

    ClaimsPane& pane() { return dynamic_cast<ClaimsPane&>(view("claims")); }
    ClaimsReportView& page() { return *pane().findChild<ClaimsReportView*>(); }
    QString report() { return page().toPlainText(); }
    /// Shows every entry of the sheet.
    void openAll() {
        for (auto* more : pane().findChildren<QToolButton*>(QStringLiteral("more"))) {
            if (more->isVisible())
                QTest::mouseClick(more, Qt::LeftButton);
        }
        QTest::qWait(20);
    }
    /// Where the link stands in the page; nothing: there is none.
    std::optional<QPoint> placeOf(const QString& link) {
        for (QTextBlock block = page().document()->begin(); block.isValid(); block = block.next()) {
            for (auto it = block.begin(); !it.atEnd(); ++it) {
                if (it.fragment().charFormat().anchorHref() != link)
                    continue;
                QTextCursor cursor(page().document());
                cursor.setPosition(it.fragment().position() + 1);
                page().setTextCursor(cursor);
                page().ensureCursorVisible();
                return page().cursorRect(cursor).center() + QPoint(3, 0);
            }
        }
        return std::nullopt;
    }
    void clickLink(const QString& link) {
        const auto place = placeOf(link);
        ASSERT_TRUE(place) << link.toStdString();
        QTest::mouseClick(page().viewport(), Qt::LeftButton, {}, *place);
        QTest::qWait(20);
    }
    void unfoldAll() { clickLink(QStringLiteral("all:all")); }
    bool isOpen(const QString& label) {
        for (auto* edit : pane().findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == label && edit->isVisible())
                return true;
        }
        return false;
    }
    /// What the first sample is, as a leaflet of it might say.
    void fillInTheSample() {
        openAll();
        const auto& m = window_->document().design().mechanism;
        type("Chambers", QString::number(m.cylinders));
        type("Bore", QStringLiteral("%1 mm").arg(m.bore / units::millimetre));
        type("Displacement", "0.539 L");
        type("Power", "12 kW");
        type("Speed of peak power", "1800 rpm");
    }

    template <class Button>
    void click(const QString& text) {
        for (auto* button : pane().findChildren<Button*>()) {
            if (button->text() == text && button->isVisible()) {
                QTest::mouseClick(button, Qt::LeftButton);
                QTest::qWait(20); // new lines of the form appear
                return;
            }
        }
        throw std::runtime_error("no button " + text.toStdString());
    }
    QLineEdit& entry(const QString& label) {
        for (auto* edit : pane().findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == label && edit->isVisible())
                return *edit;
        }
        throw std::runtime_error("no entry " + label.toStdString());
    }
    void type(const QString& label, const QString& text) {
        QLineEdit& edit = entry(label);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClick(&edit, Qt::Key_Delete);
        QTest::keyClicks(&edit, text);
        QTest::keyClick(&edit, Qt::Key_Return);
    }
    void choose(const QString& label, int row) {
        for (auto* box : pane().findChildren<QComboBox*>()) {
            if (box->accessibleName() != label)
                continue;
            box->setFocus();
            QTest::keyClick(box, Qt::Key_Home);
            for (int i = 0; i < row; ++i)
                QTest::keyClick(box, Qt::Key_Down);
            return;
        }
        throw std::runtime_error("no choice " + label.toStdString());
    }
    QStringList rulesShown() {
        QStringList shown;
        for (const auto* label : pane().findChildren<QLabel*>("problem")) {
            if (label->isVisible())
                shown << label->text();
        }
        return shown;
    }
    /// Answers the next file dialog as a person types into it.
    void answerFileDialog(const QString& file) {
        onNextDialog([file](QDialog& dialog) {
            auto& files = dynamic_cast<QFileDialog&>(dialog);
            files.setDirectory(QFileInfo(file).path());
            auto* name = files.findChild<QLineEdit*>("fileNameEdit");
            ASSERT_TRUE(name);
            name->setFocus();
            name->clear();
            QTest::keyClicks(name, QFileInfo(file).fileName());
            QTest::keyClick(name, Qt::Key_Return);
        });
    }
};

} // namespace

TEST_F(ClaimsTest, EmptyFormListsWhatEachNumberWouldDecide) {
    EXPECT_EQ(pane().claims(), study::Claims{});
    // Only what is asked for first is open.
    EXPECT_TRUE(isOpen("Power"));
    EXPECT_TRUE(isOpen("Torque"));
    EXPECT_FALSE(isOpen("Mass"));
    EXPECT_TRUE(report().contains(QLatin1String("Not given, and what it would decide")));
    EXPECT_TRUE(pane().report().findings.empty());
    for (const study::MissingNumber& missing : pane().report().missing)
        EXPECT_TRUE(report().contains(coreText(missing.decides))) << missing.path;
}

TEST_F(ClaimsTest, TypedFiguresAreJudgedWithTheirArithmetic) {
    openAll();
    type("Power", "100 kW");
    type("Speed of peak power", "6000rpm");
    type("Torque", "140 lb ft");
    type("Displacement", "122 cu in");
    choose("Cycle", 2);
    choose("Ignition", 1);
    choose("Supply", 1);
    unfoldAll();
    // 100 kW / (2π·140 lb·ft·1.355818) = 83.85 1/s = 5031 rpm.
    const auto* least = pane().report().finding("lowest-power-speed");
    ASSERT_TRUE(least);
    EXPECT_NEAR(least->value, 5031.0, 1.0);
    EXPECT_TRUE(report().contains(QString::fromStdString(least->substituted.english())));
    // 4π·189.81 N·m / (122·16.387064 cm³) = 11.93 bar.
    const auto* bmep = pane().report().finding("mean-effective-pressure-at-torque");
    ASSERT_TRUE(bmep);
    EXPECT_NEAR(bmep->value, 11.93, 0.01);
    // Without a cycle type the pressure is computed, not judged: no verdict stands beside it.
    EXPECT_EQ(bmep->verdict, study::Verdict::computed);
    for (const Message& text : {bmep->quantity, bmep->substituted, bmep->band, bmep->source})
        EXPECT_TRUE(report().contains(QString::fromStdString(text.english()))) << text.english();
    EXPECT_TRUE(pane().report().conflicts.empty());
}

TEST_F(ClaimsTest, SpeedBelowPowerByTorqueIsCalledContradictory) {
    openAll();
    type("Power", "260 hp");
    type("Torque", "590 lb·ft");
    type("Speed of peak power", "1800 rpm"); // 2314 rpm are needed
    ASSERT_FALSE(pane().report().conflicts.empty());
    EXPECT_EQ(pane().report().conflicts.front().verdict, study::Verdict::contradictory);
    EXPECT_TRUE(report().contains(QLatin1String("contradictory")));
    type("Speed of peak power", "2600 rpm");
    EXPECT_FALSE(report().contains(QLatin1String("contradictory")));
}

TEST_F(ClaimsTest, EntryThatCannotBeReadSaysWhyAndStaysToBeCorrected) {
    openAll();
    type("Power", "260");
    EXPECT_EQ(pane().claims(), study::Claims{});
    ASSERT_EQ(rulesShown().size(), 1);
    type("Mass", "150 lb");
    EXPECT_EQ(entry("Power").text(), QLatin1String("260"));
    EXPECT_EQ(rulesShown().size(), 1);
    type("Power", "260 hp");
    EXPECT_TRUE(rulesShown().isEmpty());
    EXPECT_EQ(pane().claims().figures.power->unit, "hp");
}

TEST_F(ClaimsTest, EntryOutOfRangeNamesValueAndRule) {
    openAll();
    type("Relative humidity", "130 %");
    ASSERT_EQ(rulesShown().size(), 1);
    EXPECT_TRUE(rulesShown().front().contains(QLatin1String("130")))
        << rulesShown().front().toStdString();
    type("Chambers", "2.5");
    EXPECT_EQ(rulesShown().size(), 2);
    EXPECT_EQ(pane().claims(), study::Claims{});
}

TEST_F(ClaimsTest, EveryEntryCanBeUndoneByName) {
    openAll();
    type("Mass", "150 lb");
    type("Mass", "68 kg");
    EXPECT_EQ(pane().undoStack().undoText(), QLatin1String("Mass"));
    click<QToolButton>("Undo");
    EXPECT_EQ(entry("Mass").text(), QLatin1String("150 lb"));
    click<QToolButton>("Undo");
    EXPECT_EQ(entry("Mass").text(), QString());
    click<QToolButton>("Redo");
    EXPECT_EQ(entry("Mass").text(), QLatin1String("150 lb"));
}

// The keys undo the entry, not the design; typing that is not taken yet is undone by the line.
TEST_F(ClaimsTest, UndoKeysBelongToTheClaimsWhileTypingHere) {
    openAll();
    const int edits = window_->document().undoStack().index();
    type("Mass", "150 lb");
    type("Mass", "68 kg");
    QLineEdit& mass = entry("Mass");
    QTest::keyClick(&mass, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(mass.text(), QLatin1String("150 lb"));
    EXPECT_EQ(pane().undoStack().index(), 1);
    QTest::keyClick(&mass, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(mass.text(), QLatin1String("68 kg"));
    QTest::keyClicks(&mass, "9");
    QTest::keyClick(&mass, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(mass.text(), QLatin1String("68 kg"));
    EXPECT_EQ(pane().undoStack().index(), 2);
    EXPECT_EQ(window_->document().undoStack().index(), edits);
}

TEST_F(ClaimsTest, StatementsAreRowsWithEverythingAReviewerAsks) {
    click<QPushButton>("Add a statement");
    ASSERT_EQ(pane().claims().statements.size(), 1U);
    type("Claim", "Four strokes in one turn");
    ASSERT_EQ(pane().report().statements.size(), 1U);
    const auto& row = pane().report().statements.front();
    EXPECT_TRUE(report().contains(QStringLiteral("“Four strokes in one turn”")));
    EXPECT_TRUE(report().contains(QString::fromStdString(row.overturnedBy.english())));
    EXPECT_TRUE(report().contains(QLatin1String("confidence")));
    EXPECT_TRUE(report().contains(QLatin1String("cannot be judged")));
    // A statement needs its words.
    type("Claim", "");
    EXPECT_EQ(rulesShown().size(), 1);
    EXPECT_EQ(pane().claims().statements.front().claim, "Four strokes in one turn");
    click<QPushButton>("Remove this statement");
    EXPECT_TRUE(pane().claims().statements.empty());
    click<QToolButton>("Undo");
    EXPECT_EQ(pane().claims().statements.size(), 1U);
}

TEST_F(ClaimsTest, ExampleIsTheShippedFileAndReadFromItsTop) {
    click<QToolButton>("Example");
    const auto shipped = study::loadClaims(lobewright::test::sourceFolder() +
                                           "/samples/claims/irrigation-set.claims.json");
    ASSERT_TRUE(shipped);
    EXPECT_EQ(pane().claims(), *shipped);
    EXPECT_EQ(page().verticalScrollBar()->value(), 0);
    unfoldAll();
    for (const study::Finding& finding : pane().report().findings) {
        EXPECT_TRUE(report().contains(QString::fromStdString(finding.quantity.english())));
        EXPECT_TRUE(report().contains(QString::fromStdString(finding.substituted.english())))
            << finding.substituted.english();
    }
}

TEST_F(ClaimsTest, SavedFileOpensAgain) {
    click<QToolButton>("Example");
    const study::Claims claims = pane().claims();
    answerFileDialog(fileIn("leaflet.claims.json"));
    click<QToolButton>("Save…");
    ASSERT_TRUE(QFile::exists(fileIn("leaflet.claims.json")));
    click<QToolButton>("Undo");
    EXPECT_EQ(pane().claims(), study::Claims{});
    answerFileDialog(fileIn("leaflet.claims.json"));
    click<QToolButton>("Open…");
    EXPECT_EQ(pane().claims(), claims);
}

TEST_F(ClaimsTest, FileThatCannotBeUsedKeepsThePresentClaims) {
    openAll();
    type("Mass", "150 lb");
    const study::Claims claims = pane().claims();
    QFile file(fileIn("broken.claims.json"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"format": "lobewright-claims", "format_version": 1,
                   "figures": {"powr": "260 hp"}})");
    file.close();
    const Problems problems = pane().open(file.fileName());
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems.front().message.english().find("power"), std::string::npos);
    EXPECT_EQ(pane().claims(), claims);
}

TEST_F(ClaimsTest, ClaimsLieOverTheTorqueCurveOfTheDesign) {
    auto& comparison = dynamic_cast<ComparisonPane&>(view("comparison"));
    click<QToolButton>("Example");
    window_->findChild<PaneGrid*>()->reveal(QStringLiteral("comparison"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return comparison.isVisible(); }));
    comparison.setQuantity(ComparedQuantity::torqueCurve);
    ComparisonPlot& plot = comparison.plot();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !comparison.isBusy() && plot.graphCount() == 2; }, 120000));
    // 360 N·m at 1000 rpm; 48 kW at 1400 rpm = 327.40 N·m.
    ASSERT_EQ(plot.graphCount(), 2);
    EXPECT_NEAR(plot.graph(0)->dataMainKey(0), 1000.0, 1e-9);
    EXPECT_NEAR(plot.graph(0)->dataMainValue(0), 360.0, 1e-9);
    EXPECT_NEAR(plot.graph(1)->dataMainKey(0), 1400.0, 1e-9);
    EXPECT_NEAR(plot.graph(1)->dataMainValue(0), 327.40, 0.01);
    EXPECT_TRUE(plot.xAxis->range().contains(1400.0));
    // Another engine's figures do not press this one's curve flat: the legend tells them instead.
    EXPECT_LT(plot.yAxis->range().upper, 200.0);
    EXPECT_TRUE(plot.graph(0)->name().contains("outside: 360 at 1000 rpm"))
        << plot.graph(0)->name().toStdString();
    // Over the power curve the same points stand as power; over a turn they have no place.
    comparison.setQuantity(ComparedQuantity::powerCurve);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !comparison.isBusy(); }, 120000));
    EXPECT_NEAR(plot.graph(1)->dataMainValue(0), 48.0, 1e-9);
    comparison.setQuantity(ComparedQuantity::torque);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !comparison.isBusy(); }, 120000));
    EXPECT_EQ(plot.graphCount(), 0);
}

TEST_F(ClaimsTest, ClaimsAreKeptBetweenRuns) {
    openAll();
    type("Mass", "150 lb");
    window_->close();
    window_ = std::make_unique<MainWindow>(MainWindow::Options{fileIn("recovery"), false});
    ASSERT_TRUE(pane().claims().engine.mass);
    EXPECT_EQ(study::text(*pane().claims().engine.mass), "150 lb");
    EXPECT_FALSE(pane().undoStack().canUndo());
}

TEST_F(ClaimsTest, FindingsAreSavedAsTextJsonAndPdf) {
    pane().fillInExample();
    const auto contentOf = [this](const QString& name) {
        const QString file = fileIn(name);
        const auto problem = pane().saveFindings(file);
        EXPECT_FALSE(problem) << (problem ? problem->message.english() : "");
        QFile saved(file);
        EXPECT_TRUE(saved.open(QIODevice::ReadOnly));
        return saved.readAll();
    };
    EXPECT_EQ(contentOf(QStringLiteral("f.txt")).toStdString(),
              study::claimsText(pane().verdict()));
    EXPECT_EQ(contentOf(QStringLiteral("f.json")).toStdString(),
              study::claimsJson(pane().verdict()));
    const QByteArray pdf = contentOf(QStringLiteral("f.pdf"));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_GT(pdf.size(), 10000);
    const auto problem = pane().saveFindings(fileIn(QStringLiteral("none/f.txt")));
    ASSERT_TRUE(problem);
    EXPECT_NE(problem->message.english().find("cannot be written"), std::string::npos);
}

TEST_F(ClaimsTest, OnlyWhatIsFilledInOrWantedIsOpen) {
    click<QToolButton>("Example");
    EXPECT_TRUE(isOpen("Power"));
    EXPECT_TRUE(isOpen("Brake efficiency") || isOpen("Brake thermal efficiency"));
    EXPECT_FALSE(isOpen("Relative humidity"));
    EXPECT_FALSE(isOpen("Outer diameter"));
    openAll();
    EXPECT_TRUE(isOpen("Relative humidity"));
    EXPECT_TRUE(isOpen("Outer diameter"));
}

TEST_F(ClaimsTest, SaysWhichNumberWouldDecideMostAndOpensIt) {
    openAll();
    type("Power", "48 kW");
    type("Torque", "360 N·m");
    type("Displacement", "0.66 L");
    choose("Cycle", 1);
    const auto& wanted = pane().verdict().wanted.front();
    ASSERT_FALSE(wanted.rows.empty());
    auto* next = pane().findChild<QLabel*>(QStringLiteral("next"));
    ASSERT_TRUE(next->isVisible());
    EXPECT_TRUE(next->text().contains(inSentence(coreText(wanted.label))))
        << next->text().toStdString();
    EXPECT_TRUE(next->text().contains(QStringLiteral("would decide")));
    Q_EMIT next->linkActivated(QString::fromStdString(wanted.path));
    const auto* focus = QApplication::focusWidget();
    ASSERT_TRUE(focus);
    EXPECT_TRUE(pane().form().isAncestorOf(focus));
    EXPECT_EQ(focus->accessibleName(), coreText(study::claimLabel(wanted.path)));
}

TEST_F(ClaimsTest, EveryCellOpensWhatStandsBehindIt) {
    fillInTheSample();
    ASSERT_TRUE(waitUntilSolved());
    const auto& rows = pane().verdict().rows;
    const auto found = std::ranges::find(rows, "/figures/power", &study::VerdictRow::id);
    ASSERT_NE(found, rows.end());
    // The page is made anew as solutions and bands arrive.
    // NOLINTNEXTLINE(performance-unnecessary-copy-initialization)
    const study::VerdictRow power = *found;
    ASSERT_FALSE(power.workings.empty());
    EXPECT_TRUE(pane().verdict().designNote.empty()) << pane().verdict().designNote.english();

    clickLink(QStringLiteral("entry:/figures/power"));
    EXPECT_EQ(QApplication::focusWidget(), &entry("Power"));

    const QString formula = localNumbers(coreText(power.workings.front().arithmetic));
    EXPECT_FALSE(report().contains(formula));
    clickLink(QStringLiteral("working:/figures/power"));
    EXPECT_TRUE(report().contains(formula)) << formula.toStdString();
    clickLink(QStringLiteral("working:/figures/power"));
    EXPECT_FALSE(report().contains(formula));

    clickLink(QStringLiteral("figure:brake_power_kW"));
    EXPECT_TRUE(window_->working().isVisible());
    EXPECT_EQ(window_->working().figure(), QStringLiteral("brake_power_kW"));

    clickLink(QStringLiteral("result:peak_power_kW"));
    QTest::qWait(50);
    EXPECT_TRUE(view("bands").isVisible());
}

// What a row says stands in the page, in the order of the rows.
TEST_F(ClaimsTest, WeightiestRowIsOnTop) {
    click<QToolButton>("Example");
    qsizetype last = -1;
    for (const study::VerdictRow& row : pane().verdict().rows) {
        const qsizetype at = report().indexOf(coreText(row.what), last + 1);
        EXPECT_GT(at, last) << row.id;
        last = at;
    }
}

TEST_F(ClaimsTest, WheelOverAnEntryWithoutTheKeyboardChangesNothing) {
    click<QToolButton>("Example");
    const study::Claims claims = pane().claims();
    page().setFocus();
    int turned = 0;
    for (auto* box : pane().findChildren<QComboBox*>()) {
        if (!box->isVisible())
            continue;
        ++turned;
        const QPointF at = box->rect().center();
        QWheelEvent wheel(at, box->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(box, &wheel);
    }
    EXPECT_GT(turned, 3);
    EXPECT_EQ(pane().claims(), claims);
}

TEST_F(ClaimsTest, FieldsAreAsWideAsWhatTheyHold) {
    click<QToolButton>("Example");
    const int amount = entry("Power").width();
    EXPECT_EQ(entry("Mass").width(), amount);
    EXPECT_LT(amount, 200);
    EXPECT_LT(entry("Chambers").width(), amount);
    EXPECT_GT(entry("Claim").width(), amount);
    // What is typed is seen whole; running text may be longer than its line.
    const QStringList running{"Claim", "Title", "Notes", "Source"};
    for (auto* edit : pane().findChildren<QLineEdit*>()) {
        if (edit->isVisible() && !running.contains(edit->accessibleName())) {
            EXPECT_LE(edit->fontMetrics().horizontalAdvance(edit->text()), edit->width())
                << edit->accessibleName().toStdString();
        }
    }
}

TEST_F(ClaimsTest, ReportHasTheVerdict) {
    fillInTheSample();
    ASSERT_TRUE(waitUntilSolved());
    const auto size = [this](const char* name) {
        const QString file = fileIn(QString::fromLatin1(name));
        window_->writeReport(file);
        EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 60000));
        QTest::qWait(50);
        return QFileInfo(file).size();
    };
    const auto with = size("with.pdf");
    pane().undoStack().setIndex(0);
    EXPECT_GT(with, size("without.pdf"));
}
