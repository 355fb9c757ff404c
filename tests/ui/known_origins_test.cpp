#include "core/design/ranged_inputs.h"
#include "core/units.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/snapshots_panel.h"

#include <QAction>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

#include <cmath>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

constexpr auto bore = "/mechanism/bore_mm";
constexpr auto lambda = "/gas/lambda";

/// The sample with a bore that was measured, and a λ that is assumed.
class OriginsTest : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        Edit edit;
        edit.text = QStringLiteral("Origins");
        const double value = number(bore);
        edit.knowledge = design::Knowledge{{bore,
                                            {.origin = design::Origin::measured,
                                             .low = value - 1.0,
                                             .high = value + 2.0,
                                             .source = "side view"}},
                                           {lambda, {.origin = design::Origin::assumed}}};
        ASSERT_TRUE(window_->document().apply(edit).empty());
        ASSERT_TRUE(waitUntilSolved());
    }

    FieldEditor& editor(const std::string& path) {
        for (auto* found : window_->findChildren<FieldEditor*>()) {
            if (found->path() == path)
                return *found;
        }
        throw std::runtime_error("no editor of " + path);
    }
    QToolButton& mark(const std::string& path) {
        return *editor(path).findChild<QToolButton*>(QStringLiteral("origin"));
    }
    bool isShown(const std::string& path) { return !editor(path).isHidden(); }
    const design::Design& design() { return window_->document().design(); }
    QUndoStack& undo() { return window_->document().undoStack(); }

    void type(QDialog& dialog, const QString& line, const QString& text) {
        auto* edit = dialog.findChild<QLineEdit*>(line);
        ASSERT_NE(edit, nullptr) << line.toStdString();
        edit->setFocus();
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, text);
    }
    QPushButton& okay(QDialog& dialog) {
        return *dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
    }
    /// Ctrl+I with the keyboard in this input.
    void askFor(const char* path, std::function<void(QDialog&)> act) {
        ASSERT_TRUE(activate());
        window_->findChild<NumberPanel*>()->goTo(QString::fromLatin1(path));
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return editor(path).isAncestorOf(QApplication::focusWidget()); }));
        bool isAsked = false;
        onNextDialog([&isAsked, act = std::move(act)](QDialog& dialog) {
            isAsked = true;
            act(dialog);
        });
        QTest::keyClick(window_.get(), Qt::Key_I, Qt::ControlModifier);
        ASSERT_TRUE(isAsked);
    }
};

} // namespace

TEST_F(OriginsTest, InputsThatAreNotChosenCarryTheirLetter) {
    EXPECT_EQ(mark(bore).text(), QStringLiteral("m"));
    EXPECT_FALSE(mark(bore).isHidden());
    EXPECT_EQ(mark(lambda).text(), QStringLiteral("a"));
    EXPECT_TRUE(mark("/mechanism/clearance_mm").isHidden());
    const QString help = mark(bore).toolTip();
    const QString range = QStringLiteral("%1 … %2").arg(number(bore) - 1.0).arg(number(bore) + 2.0);
    EXPECT_TRUE(help.contains(range)) << help.toStdString();
    EXPECT_TRUE(help.contains(QStringLiteral("side view")));
}

TEST_F(OriginsTest, CountsHeadThePanelAndFilterIt) {
    auto* counts = window_->findChild<QLabel*>(QStringLiteral("origins"));
    ASSERT_TRUE(counts->isVisibleTo(window_.get()));
    EXPECT_TRUE(counts->text().contains(QStringLiteral("1 measured")));
    EXPECT_TRUE(counts->text().contains(QStringLiteral("1 assumed")));
    const auto link = [](design::Origin origin) {
        return QStringLiteral("origin:%1").arg(static_cast<int>(origin));
    };
    Q_EMIT counts->linkActivated(link(design::Origin::assumed));
    EXPECT_TRUE(isShown(lambda));
    EXPECT_FALSE(isShown(bore));
    Q_EMIT counts->linkActivated(link(design::Origin::assumed)); // "show all"
    EXPECT_TRUE(isShown(bore));
    // Without any origin the line is gone, and with it the filter.
    undo().undo();
    EXPECT_FALSE(counts->isVisibleTo(window_.get()));
    EXPECT_TRUE(mark(bore).isHidden());
}

TEST_F(OriginsTest, TypedValueKeepsItsOriginUntilThePersonCallsItAChoice) {
    auto edit = Edit{QStringLiteral("Bore"), {{bore, number(bore) + 1.5}}, {}, {}};
    ASSERT_TRUE(window_->document().apply(edit).empty());
    EXPECT_EQ(design::knownOf(design(), bore).origin, design::Origin::measured);
    const int before = undo().index();
    // The menu of the mark, first line.
    auto* timer = new QTimer(window_.get());
    QObject::connect(timer, &QTimer::timeout, window_.get(), [timer] {
        if (auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget())) {
            timer->stop();
            QTest::keyClick(menu, Qt::Key_Down);
            QTest::keyClick(menu, Qt::Key_Return);
        }
    });
    timer->start(20);
    QTest::mouseClick(&mark(bore), Qt::LeftButton);
    EXPECT_EQ(design::knownOf(design(), bore).origin, design::Origin::chosen);
    EXPECT_TRUE(mark(bore).isHidden());
    ASSERT_EQ(undo().index(), before + 1);
    undo().undo();
    EXPECT_EQ(design::knownOf(design(), bore).origin, design::Origin::measured);
}

TEST_F(OriginsTest, OriginAndRangeAreEditedInOneUndoStep) {
    const int before = undo().index();
    const double value = number(bore);
    askFor(bore, [&](QDialog& dialog) {
        EXPECT_EQ(dialog.findChild<QLineEdit*>(QStringLiteral("source"))->text(),
                  QStringLiteral("side view"));
        // A range that misses the value is refused with the rule.
        type(dialog, QStringLiteral("low"), QString::number(value + 0.5));
        EXPECT_FALSE(okay(dialog).isEnabled());
        EXPECT_FALSE(dialog.findChild<QLabel*>(QStringLiteral("problem"))->text().isEmpty());
        type(dialog, QStringLiteral("low"), QStringLiteral("nothing"));
        EXPECT_FALSE(okay(dialog).isEnabled());
        type(dialog, QStringLiteral("low"), QString::number(value - 4.0));
        ASSERT_TRUE(okay(dialog).isEnabled());
        auto* origin = dialog.findChild<QComboBox*>(QStringLiteral("origin"));
        origin->setFocus();
        QTest::keyClick(origin, Qt::Key_Home); // given
        type(dialog, QStringLiteral("source"), QStringLiteral("leaflet, page 2"));
        QTest::mouseClick(&okay(dialog), Qt::LeftButton);
    });
    const auto known = design::knownOf(design(), bore);
    EXPECT_EQ(known.origin, design::Origin::given);
    EXPECT_EQ(known.low, value - 4.0);
    EXPECT_EQ(known.high, value + 2.0);
    EXPECT_EQ(known.source, "leaflet, page 2");
    EXPECT_EQ(mark(bore).text(), QStringLiteral("g"));
    ASSERT_EQ(undo().index(), before + 1);
    undo().undo();
    EXPECT_EQ(design::knownOf(design(), bore).low, value - 1.0);
}

TEST_F(OriginsTest, DismissedDialogChangesNothing) {
    const int before = undo().index();
    askFor(bore, [&](QDialog& dialog) {
        type(dialog, QStringLiteral("source"), QStringLiteral("hearsay"));
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    EXPECT_EQ(undo().index(), before);
}

TEST_F(OriginsTest, ReportBeginsWithWhatTheDesignRestsOn) {
    const QString file = fileIn(QStringLiteral("r.pdf"));
    window_->writeReport(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 120000));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), QStringLiteral("-l"),
                                               QStringLiteral("1"), file, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    const auto head = text.indexOf(QStringLiteral("What this rests on"));
    ASSERT_GE(head, 0) << text.toStdString();
    EXPECT_LT(head, text.indexOf(QStringLiteral("Main results")));
    EXPECT_TRUE(text.contains(QStringLiteral("1 measured, 1 assumed")));
    EXPECT_TRUE(
        text.contains(
            QStringLiteral("%1 … %2 mm").arg(number(bore) - 1.0).arg(number(bore) + 2.0)) ||
        text.contains(
            QStringLiteral("%1 … %2\u00A0mm").arg(number(bore) - 1.0).arg(number(bore) + 2.0)))
        << text.toStdString();
}

// Wherever the design goes, what is known of it goes along.
TEST_F(OriginsTest, SurviveSavingUndoBaselineSnapshotsAndTheImportOfALift) {
    const design::Knowledge known = design().knowledge;
    const auto change = [this] {
        auto edit = Edit{QStringLiteral("Bore"), {{bore, number(bore) + 1.0}}, {}, {}};
        ASSERT_TRUE(window_->document().apply(edit).empty());
        ASSERT_TRUE(waitUntilSolved());
    };
    const QString file = fileIn(QStringLiteral("origins.lobewright.json"));
    ASSERT_TRUE(window_->saveTo(file));
    ASSERT_TRUE(window_->openFile(file));
    EXPECT_EQ(design().knowledge, known);
    ASSERT_TRUE(waitUntilSolved());

    window_->keepBaseline();
    Q_EMIT window_->snapshots().taken(QStringLiteral("before"));
    change();
    undo().undo();
    EXPECT_EQ(design().knowledge, known);
    undo().redo();
    const design::Knowledge changed = design().knowledge;
    // Out to the baseline and back.
    for (auto* action : window_->findChildren<QAction*>()) {
        if (action->text() == QStringLiteral("&Exchange design and baseline")) {
            action->trigger();
            EXPECT_EQ(design().knowledge, known);
            ASSERT_TRUE(waitUntilSolved());
            action->trigger();
            EXPECT_EQ(design().knowledge, changed);
        }
    }
    Q_EMIT window_->snapshots().restoreWanted(0);
    EXPECT_EQ(design().knowledge, known);

    QFile lift(fileIn(QStringLiteral("lift.csv")));
    ASSERT_TRUE(lift.open(QIODevice::WriteOnly));
    lift.write("angle_deg,lift_mm\n");
    for (int angle = 0; angle < 360; ++angle) {
        lift.write(QStringLiteral("%1,%2\n")
                       .arg(angle)
                       .arg(18.0 * (1.0 - std::cos(2.0 * angle * units::degree)), 0, 'f', 4)
                       .toUtf8());
    }
    lift.close();
    LiftImportDialog import(window_->document(), window_.get());
    import.show();
    ASSERT_TRUE(import.openTable(lift.fileName()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !import.isBusy() && import.fit(); }, 30000));
    QTest::mouseClick(import.findChild<QPushButton*>(QStringLiteral("use")), Qt::LeftButton);
    ASSERT_TRUE(std::holds_alternative<motion::KnotShape>(design().tracks.inlet.shape));
    EXPECT_EQ(design::knownOf(design(), bore), known.at(bore));
    EXPECT_EQ(design::knownOf(design(), lambda), known.at(lambda));
}
