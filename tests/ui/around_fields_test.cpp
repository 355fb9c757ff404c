// Typing in the window and acting at once: nobody presses Enter before Ctrl+S.
#include "core/design/file.h"
#include "core/editing/design_edits.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/number_edit.h"
#include "ui/panels/number_panel.h"
#include "ui/window/hint_bar.h"
#include "ui/window/playback_bar.h"
#include "ui/window/preferences.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QSettings>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

namespace lobewright::ui::test {
namespace {

constexpr const char* stroke = "/tracks/inlet/stroke_mm";
constexpr const char* firstSpan = "/tracks/inlet/segments/0/span_deg";

class FieldsTest : public WindowTest {
  protected:
    FieldEditor& editor(const std::string& path) {
        for (FieldEditor* editor : window_->numbers().findChildren<FieldEditor*>()) {
            if (editor->path() == path)
                return *editor;
        }
        throw std::runtime_error("no editor for " + path);
    }
    NumberEdit& field(const std::string& path) { return *editor(path).findChild<NumberEdit*>(); }
    /// Without Enter.
    NumberEdit& typed(const std::string& path, const QString& text) {
        NumberEdit& edit = field(path);
        edit.setFocus();
        EXPECT_TRUE(QTest::qWaitFor([&] { return edit.hasFocus(); }, 5000));
        edit.selectAll();
        QTest::keyClicks(&edit, text);
        return edit;
    }
    QLabel* note() {
        auto* found = window_->numbers().findChild<QLabel*>(QStringLiteral("problem"));
        return found && found->isVisible() ? found : nullptr;
    }
    static QRect onScreen(const QWidget& widget) {
        return {widget.mapToGlobal(QPoint(0, 0)), widget.size()};
    }
};

TEST_F(FieldsTest, SavingTakesTheNumberThatIsStillBeingTyped) {
    const QString file = fileIn(QStringLiteral("typed.lobewright.json"));
    ASSERT_TRUE(window_->saveTo(file));
    // Nothing is changed yet, so that saving is not even offered before the number is entered.
    NumberEdit& edit = typed(stroke, QStringLiteral("37"));
    QTest::keyClick(&edit, Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(number(stroke), 37.0);
    EXPECT_FALSE(window_->document().isModified());
    const auto saved = design::loadDesign(file.toStdString());
    ASSERT_TRUE(saved);
    EXPECT_EQ(std::get<double>(design::findField(*saved, stroke)->value), 37.0);
}

TEST_F(FieldsTest, BaselineIsOfTheNumberThatIsStillBeingTyped) {
    QTest::keyClick(&typed(stroke, QStringLiteral("36")), Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(waitUntilSolved());
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_->baseline().solution() != nullptr; }, 5000));
    EXPECT_EQ(
        std::get<double>(design::findField(window_->baseline().solution()->design, stroke)->value),
        36.0);
}

TEST_F(FieldsTest, ButtonsAndMenusTakeTheNumberThatIsStillBeingTyped) {
    typed(stroke, QStringLiteral("36"));
    QTest::mouseClick(window_->findChild<QToolButton*>("play"), Qt::LeftButton);
    EXPECT_EQ(number(stroke), 36.0);
    QTest::mouseClick(window_->findChild<QToolButton*>("play"), Qt::LeftButton);
    typed(stroke, QStringLiteral("35"));
    QMenu* menu = window_->menuBar()->actions().front()->menu();
    menu->popup(window_->mapToGlobal(QPoint(50, 50)));
    EXPECT_EQ(number(stroke), 35.0);
    menu->close();
}

TEST_F(FieldsTest, UndoReachesTheDesignFromAFieldWithoutTyping) {
    const double before = number(stroke);
    NumberEdit& edit = typed(stroke, QStringLiteral("36"));
    QTest::keyClick(&edit, Qt::Key_Return);
    ASSERT_EQ(number(stroke), 36.0);
    ASSERT_TRUE(edit.hasFocus());
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(number(stroke), before);
    EXPECT_EQ(readNumber(edit.text()), before);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(number(stroke), 36.0);
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(number(stroke), before);
}

TEST_F(FieldsTest, UndoOfUnfinishedTypingStaysInTheField) {
    QTest::keyClick(&typed(stroke, QStringLiteral("36")), Qt::Key_Return);
    NumberEdit& edit = typed(stroke, QStringLiteral("35"));
    QTest::keyClick(&edit, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(number(stroke), 36.0) << "the typing is undone, not the design";
    EXPECT_NE(edit.text(), QStringLiteral("35"));
}

TEST_F(FieldsTest, ExportIsReachedFromAField) {
    bool opened = false;
    onNextDialog(
        [&](QDialog& dialog) { opened = dialog.windowTitle().contains(QLatin1String("track")); });
    QTest::keyClick(&typed(stroke, QStringLiteral("36")), Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(opened);
    EXPECT_EQ(number(stroke), 36.0);
}

TEST_F(FieldsTest, SpinBoxesLetUndoThroughToo) {
    QTest::keyClick(&typed(stroke, QStringLiteral("36")), Qt::Key_Return);
    auto* box = window_->playback().findChild<QAbstractSpinBox*>();
    box->setFocus();
    ASSERT_TRUE(box->hasFocus());
    QTest::keyClick(box, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_NE(number(stroke), 36.0);
}

TEST_F(FieldsTest, MessageStandsUnderItsFieldAndMovesNothing) {
    const QRect below = onScreen(field(firstSpan));
    NumberEdit& edit = typed(stroke, QStringLiteral("abc"));
    QTest::keyClick(&edit, Qt::Key_Return);
    ASSERT_NE(note(), nullptr);
    EXPECT_THAT(note()->text().toStdString(), ::testing::HasSubstr("abc"));
    const QRect said = onScreen(*note()), at = onScreen(edit);
    EXPECT_GE(said.top(), at.bottom());
    EXPECT_LE(said.top(), at.bottom() + 8);
    QTest::qWait(50); // layouts are done
    EXPECT_EQ(onScreen(field(firstSpan)), below);
    EXPECT_TRUE(note()->testAttribute(Qt::WA_TransparentForMouseEvents));
}

TEST_F(FieldsTest, MessageIsAboutTheFieldTypedInLast) {
    QTest::keyClick(&typed(firstSpan, QStringLiteral("-4")), Qt::Key_Return);
    ASSERT_NE(note(), nullptr);
    NumberEdit& edit = typed(stroke, QStringLiteral("x"));
    EXPECT_EQ(note(), nullptr) << "the next typing takes the message away";
    QTest::keyClick(&edit, Qt::Key_Return);
    ASSERT_NE(note(), nullptr);
    EXPECT_LE(onScreen(*note()).top(), onScreen(edit).bottom() + 8);
    QTest::keyClick(&edit, Qt::Key_Escape);
    EXPECT_EQ(note(), nullptr) << "Escape takes the message away";
}

// Order must not matter: which of two inputs has to change first is said by name.
TEST_F(FieldsTest, ARefusalNamesTheOtherInput) {
    const std::string length = "/mechanism/piston/length_mm";
    window_->numbers().goTo(QString::fromStdString(length));
    ASSERT_TRUE(QTest::qWaitFor([&] { return field(length).isVisible(); }));
    QTest::keyClick(&typed(length, QStringLiteral("6")), Qt::Key_Return);
    ASSERT_NE(note(), nullptr);
    const std::string said = note()->text().toStdString();
    EXPECT_THAT(said, ::testing::HasSubstr("ring"));
    EXPECT_THAT(said, ::testing::HasSubstr("less than the piston length, 6 mm"));
}

TEST_F(FieldsTest, RefusalOfAnotherViewIsNoMessageOfTheNumbers) {
    Edit edit;
    edit.changes = {{stroke, -1.0}};
    EXPECT_FALSE(window_->document().apply(edit).empty());
    EXPECT_EQ(note(), nullptr);
}

TEST_F(FieldsTest, SpanThatLeavesTheNeighbourNothingSaysWhatIsPossible) {
    const std::string third = "/tracks/inlet/segments/2/span_deg";
    QTest::keyClick(&typed(third, QStringLiteral("200")), Qt::Key_Return);
    ASSERT_NE(note(), nullptr);
    // 83° and 11° are together 94°.
    EXPECT_EQ(note()->text(),
              QStringLiteral("200° leaves segment 4 −106°; the span must be less than 94°"));
    EXPECT_EQ(number(third), 83.0);
}

TEST_F(FieldsTest, EditedSpansAreReadable) {
    for (const char* value : {"77", "71", "82.3", "80.1"}) {
        QTest::keyClick(&typed(firstSpan, QLatin1String(value)), Qt::Key_Return);
        const double other = number("/tracks/inlet/segments/1/span_deg");
        EXPECT_EQ(QString::number(other, 'g', 9).toDouble(), other) << value;
    }
    NumberEdit& lobes = typed("/tracks/inlet/lobes", QStringLiteral("3"));
    QTest::keyClick(&lobes, Qt::Key_Return);
    ASSERT_EQ(number("/tracks/inlet/lobes"), 3.0);
    for (int i = 0; i < 4; ++i) {
        const std::string path = "/tracks/inlet/segments/" + std::to_string(i) + "/span_deg";
        EXPECT_NEAR(QString::number(number(path), 'f', 9).toDouble(), number(path), 1e-13);
        QString shown = field(path).text();
        EXPECT_LE(shown.remove(QLatin1Char('.')).size(), 7) << path;
    }
}

TEST_F(FieldsTest, SpeedIsReadWithTheUnitsPeopleWrite) {
    const std::string speed = "/running/speed_rpm";
    double wanted = 900.0;
    for (const char* unit : {" rpm", " 1/min", "/min", " U/min", "rev/min", " RPM"}) {
        wanted += 10.0;
        QTest::keyClick(&typed(speed, QString::number(wanted) + QLatin1String(unit)),
                        Qt::Key_Return);
        EXPECT_EQ(number(speed), wanted) << unit;
    }
    EXPECT_EQ(design::findField(window_->document().design(), speed)->unit, "1/min");
}

TEST_F(FieldsTest, SearchFindsWhatSetsAThingThatIsNoNumberItself) {
    auto* search = window_->numbers().findChild<QLineEdit*>(QString(), Qt::FindDirectChildrenOnly);
    const auto found = [&](const char* word, const char* path) {
        search->setText(QLatin1String(word));
        return editor(path).isVisible();
    };
    for (const char* path :
         {"/mechanism/clearance_mm", "/mechanism/recess_cm3", "/mechanism/exhaust_lead_deg",
          "/mechanism/adjuster/setting_deg", "/reference/four_stroke/compression_ratio"})
        EXPECT_TRUE(found("compression", path)) << path;
    EXPECT_TRUE(found("speed", "/running/speed_rpm"));
    EXPECT_TRUE(found("stroke", stroke));
    EXPECT_TRUE(found("torque", "/gas/lambda"));
    EXPECT_TRUE(found("overlap", "/ports/inlet/0/edge_mm"));
    EXPECT_TRUE(found("boost", "/gas/supply/pressure_bar"));
    EXPECT_TRUE(found("mass", "/mechanism/piston_mass_kg/inlet"));
    EXPECT_FALSE(found("boost", "/mechanism/bore_mm"));
}

TEST_F(FieldsTest, PageKeysGoFromEventToEventFromTheListOfPaces) {
    auto* paces = window_->playback().findChild<QComboBox*>();
    paces->setFocus();
    const int chosen = paces->currentIndex();
    const double before = window_->cursor().angle();
    QTest::keyClick(paces, Qt::Key_PageDown);
    EXPECT_EQ(paces->currentIndex(), chosen);
    EXPECT_NE(window_->cursor().angle(), before);
    QTest::keyClick(paces, Qt::Key_PageUp);
    EXPECT_EQ(paces->currentIndex(), chosen);
}

TEST_F(FieldsTest, FirstSavingOffersATitleOfItsOwn) {
    auto* hint = window_->findChild<HintBar*>();
    ASSERT_NE(hint, nullptr);
    EXPECT_FALSE(hint->isVisible());
    const QString file = fileIn(QStringLiteral("mine.lobewright.json"));
    ASSERT_TRUE(window_->saveTo(file));
    ASSERT_TRUE(hint->isVisible());
    QToolButton* offer = nullptr;
    for (auto* button : hint->findChildren<QToolButton*>()) {
        if (button->text().contains(QLatin1String("mine")))
            offer = button;
    }
    ASSERT_NE(offer, nullptr);
    QTest::mouseClick(offer, Qt::LeftButton);
    EXPECT_FALSE(hint->isVisible());
    const auto saved = design::loadDesign(file.toStdString());
    ASSERT_TRUE(saved);
    EXPECT_EQ(saved->title, "mine");
    EXPECT_EQ(saved->notes, "");
    EXPECT_FALSE(window_->document().isModified());
    ASSERT_TRUE(window_->saveTo(file));
    EXPECT_FALSE(hint->isVisible()) << "offered once";
}

TEST(Hints, SampleIsIntroducedOnce) {
    QSettings().clear();
    QSettings().setValue(QStringLiteral("window/hintSeen"), true); // not the first start
    const QTemporaryDir folder;
    const MainWindow::Options options{folder.filePath("recovery"), true};
    for (const bool first : {true, false}) {
        MainWindow window(options);
        window.show();
        window.openSomething();
        auto* hint = window.findChild<HintBar*>();
        EXPECT_EQ(hint->isVisible(), first);
        if (first) {
            const QString said = hint->findChild<QLabel*>(QStringLiteral("hintText"))->text();
            EXPECT_TRUE(said.contains(QLatin1String("pump"))) << said.toStdString();
            QTest::mouseClick(hint->findChild<QToolButton*>(QStringLiteral("closeHint")),
                              Qt::LeftButton);
            EXPECT_FALSE(hint->isVisible());
        }
    }
}

TEST(Fitting, FrameAndClientLieWithinTheScreen) {
    const QRect screen(0, 0, 1280, 800);
    // A title line of 28 and a border of 1 around a client as large as the screen.
    const QRect client(1, 28, 1280, 800), frame(0, 0, 1282, 829);
    const QRect fitted = fittingClient(client, frame, screen);
    EXPECT_EQ(fitted, QRect(1, 28, 1278, 771));
    EXPECT_EQ(fittingClient(fitted, QRect(0, 0, 1280, 800), screen), fitted);
    const QRect wide(0, 0, 2560, 1440);
    EXPECT_EQ(fittingClient(client.translated(100, 100), frame.translated(100, 100), wide),
              client.translated(100, 100));
    EXPECT_EQ(fittingClient(client.translated(2000, 1000), frame.translated(2000, 1000), wide),
              QRect(2560 - 1281, 1440 - 801, 1280, 800));
}

TEST(StartOfTheProgram, OpensTheDesignOfLastTimeWhereThatIsPreferred) {
    QSettings().clear();
    const QTemporaryDir folder;
    const MainWindow::Options options{folder.filePath("recovery"), false};
    const QString file = folder.filePath(QStringLiteral("last.lobewright.json"));
    {
        MainWindow window(options);
        window.openSomething();
        EXPECT_TRUE(window.document().path().isEmpty());
        ASSERT_TRUE(window.saveTo(file));
    }
    MainWindow usual(options);
    usual.openSomething();
    EXPECT_TRUE(usual.document().path().isEmpty()) << "a sample unless preferred otherwise";
    Preferences preferences = Preferences::load();
    preferences.opensLast = true;
    preferences.save();
    MainWindow window(options);
    window.openSomething();
    EXPECT_EQ(window.document().path(), file);
}

} // namespace
} // namespace lobewright::ui::test
