#include "tests/ui/desktop_fixture.h"
#include "ui/panels/number_panel.h"
#include "ui/window/arrangement.h"
#include "ui/window/pane_grid.h"
#include "ui/window/playback_bar.h"
#include "ui/window/preferences.h"
#include "ui/window/shortcuts.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTabBar>
#include <QTest>
#include <QTextEdit>
#include <QTreeWidget>
#include <tbb/global_control.h>

#include <map>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// All actions of the menus, those of submenus included.
void collect(const QMenu& menu, std::vector<QAction*>& all) {
    for (QAction* action : menu.actions()) {
        if (action->isSeparator())
            continue;
        all.push_back(action);
        if (action->menu())
            collect(*action->menu(), all);
    }
}

std::vector<QAction*> menuActions(const MainWindow& window) {
    std::vector<QAction*> all;
    for (QAction* action : window.menuBar()->actions()) {
        all.push_back(action);
        if (action->menu())
            collect(*action->menu(), all);
    }
    return all;
}

/// What a person can reach with Tab or click on.
bool isControl(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QAbstractSlider*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QAbstractItemView*>(&widget) ||
           qobject_cast<const QTextEdit*>(&widget);
}

/// Parts that Qt puts into a control or a scroll area by itself.
bool isInnerPart(const QWidget& widget) {
    return widget.objectName().startsWith(QLatin1String("qt_")) ||
           qobject_cast<const QAbstractSpinBox*>(widget.parentWidget()) ||
           qobject_cast<const QComboBox*>(widget.parentWidget()) || widget.inherits("QScrollBar") ||
           widget.inherits("QTabBar") || widget.inherits("QHeaderView") ||
           widget.inherits("QTableCornerButton") ||
           qobject_cast<const QTabBar*>(widget.parentWidget()) || widget.inherits("QMenu") ||
           widget.inherits("QMenuBar") || widget.inherits("QLineEditIconButton") ||
           qobject_cast<const QAbstractItemView*>(widget.parentWidget()) ||
           widget.inherits("QComboBoxListView") || widget.window() == &widget;
}

QString nameOf(const QWidget& widget) {
    QString text = widget.accessibleName();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget);
        button && text.isEmpty())
        text = button->text();
    return text;
}

template <class Widget>
Widget& named(const QWidget& in, const char* name) {
    auto* found = in.findChild<Widget*>(QLatin1String(name));
    if (!found)
        throw std::runtime_error(std::string("no widget ") + name);
    return *found;
}

/// The program as it was before: preferences reach beyond the window.
class AroundTest : public WindowTest {
  protected:
    ~AroundTest() override {
        Preferences usual;
        usual.theme = Theme::light;
        usual.save();
        applyToProgram(usual);
    }
};

void choose(QComboBox& box, const QVariant& value) {
    ASSERT_GE(box.findData(value), 0);
    box.setCurrentIndex(box.findData(value));
}

} // namespace

TEST_F(AroundTest, NoTwoActionsShareAShortcut) {
    std::map<QString, QString> taken;
    for (const QAction* action : window_->findChildren<QAction*>()) {
        for (const QKeySequence& keys : action->shortcuts()) {
            const QString key = keys.toString(QKeySequence::PortableText);
            if (key.isEmpty())
                continue;
            const auto [place, isNew] = taken.emplace(key, action->text());
            // One command of a list that stands in two places of the window, each for itself.
            const bool isSame =
                place->second == action->text() && action->shortcutContext() != Qt::WindowShortcut;
            EXPECT_TRUE(isNew || isSame)
                << key.toStdString() << ": " << action->text().toStdString() << " and "
                << place->second.toStdString();
        }
    }
    EXPECT_GT(taken.size(), 20U);
}

TEST_F(AroundTest, EveryMenuEntryHasAMnemonic) {
    for (const QAction* action : menuActions(*window_)) {
        // Samples and views are content: their menus are walked with the arrow keys.
        const auto* menu = qobject_cast<const QMenu*>(action->associatedObjects().value(0));
        if (menu && (menu->objectName() == QLatin1String("everyView") || menu->toolTipsVisible()))
            continue;
        EXPECT_TRUE(QString(action->text()).remove(QLatin1String("&&")).contains(QLatin1Char('&')))
            << action->text().toStdString();
    }
}

TEST_F(AroundTest, EveryControlSaysWhatItIsAndWhatItDoes) {
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        QTest::qWait(50);
        for (const QWidget* widget : window_->findChildren<QWidget*>()) {
            if (!isControl(*widget) || isInnerPart(*widget))
                continue;
            const std::string where = std::string(widget->metaObject()->className()) + " '" +
                                      widget->objectName().toStdString() + "' in " +
                                      widget->parentWidget()->metaObject()->className() + " '" +
                                      widget->parentWidget()->objectName().toStdString() + "' " +
                                      nameOf(*widget).toStdString();
            EXPECT_FALSE(nameOf(*widget).isEmpty()) << where;
            // Lists and pages speak for themselves.
            if (!qobject_cast<const QAbstractItemView*>(widget) &&
                !qobject_cast<const QTextEdit*>(widget)) {
                EXPECT_FALSE(widget->toolTip().isEmpty()) << where;
            }
        }
    }
}

TEST_F(AroundTest, ShortcutListHoldsEveryKeyOfTheMenus) {
    QString all;
    for (const ShortcutGroup& group : shortcutGroups(*window_->menuBar())) {
        for (const Shortcut& shortcut : group.shortcuts)
            all += shortcut.keys + QStringLiteral(", ");
    }
    for (const QAction* action : menuActions(*window_)) {
        for (const QKeySequence& keys : action->shortcuts()) {
            const QString text = keys.toString(QKeySequence::NativeText);
            EXPECT_TRUE(all.contains(text + QStringLiteral(", "))) << text.toStdString();
        }
    }
    QStringList found;
    onNextDialog([&](QDialog& dialog) {
        EXPECT_EQ(dialog.objectName(), QLatin1String("shortcuts"));
        dialog.findChild<QLineEdit*>()->setText(QStringLiteral("baseline"));
        for (QTreeWidgetItemIterator it(dialog.findChild<QTreeWidget*>(),
                                        QTreeWidgetItemIterator::NotHidden);
             *it; ++it)
            found << (*it)->text(1);
    });
    QTest::keyClick(window_.get(), Qt::Key_F1, Qt::ShiftModifier);
    EXPECT_TRUE(found.contains(QKeySequence("Ctrl+B").toString(QKeySequence::NativeText)));
}

TEST_F(AroundTest, PreferencesWorkAtOnceAndAreKept) {
    Preferences wanted;
    wanted.units = UnitSystem::inch;
    wanted.theme = Theme::dark;
    wanted.textSize = 115;
    wanted.autosaveInterval = 45;
    wanted.slowMotion = 500;
    wanted.threads = 1;
    wanted.language = QStringLiteral("de");
    wanted.restoresLayout = false;
    const double size = QApplication::font().pointSizeF();
    const QColor ground = window_->palette().color(QPalette::Window);
    onNextDialog([&](QDialog& dialog) {
        ASSERT_EQ(dialog.objectName(), QLatin1String("preferences"));
        choose(named<QComboBox>(dialog, "units"), static_cast<int>(wanted.units));
        EXPECT_EQ(Units::instance().system(), UnitSystem::inch);
        choose(named<QComboBox>(dialog, "theme"), nameOf(wanted.theme));
        QTest::qWait(20);
        EXPECT_LT(window_->palette().color(QPalette::Window).lightness(), ground.lightness());
        choose(named<QComboBox>(dialog, "textSize"), wanted.textSize);
        EXPECT_NEAR(QApplication::font().pointSizeF(), 1.15 * size, 0.01);
        choose(named<QComboBox>(dialog, "slowMotion"), wanted.slowMotion);
        EXPECT_EQ(window_->playback().factor(), 500);
        choose(named<QComboBox>(dialog, "language"), wanted.language);
        named<QSpinBox>(dialog, "autosave").setValue(wanted.autosaveInterval);
        EXPECT_EQ(window_->autosave().interval(), std::chrono::seconds(45));
        named<QSpinBox>(dialog, "threads").setValue(wanted.threads);
        EXPECT_EQ(tbb::global_control::active_value(tbb::global_control::max_allowed_parallelism),
                  1U);
        named<QCheckBox>(dialog, "layout").setChecked(wanted.restoresLayout);
    });
    QTest::keyClick(window_.get(), Qt::Key_Comma, Qt::ControlModifier);
    EXPECT_EQ(Preferences::load(), wanted);
    // What the dialog says when it is opened again, and back to what is usual.
    onNextDialog([&](QDialog& dialog) {
        EXPECT_EQ(named<QSpinBox>(dialog, "autosave").value(), wanted.autosaveInterval);
        EXPECT_EQ(named<QComboBox>(dialog, "units").currentData().toInt(),
                  static_cast<int>(UnitSystem::inch));
        QTest::mouseClick(
            dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::RestoreDefaults),
            Qt::LeftButton);
    });
    window_->editPreferences();
    EXPECT_EQ(Preferences::load(), Preferences());
    EXPECT_EQ(Units::instance().system(), UnitSystem::metric);
    EXPECT_NEAR(QApplication::font().pointSizeF(), size, 0.01);
}

TEST_F(AroundTest, WindowBeginsAnewWhereItsLayoutIsNotWanted) {
    window_->arrange(QStringLiteral("reviewer"));
    window_->close();
    Preferences wanted = Preferences::load();
    wanted.restoresLayout = false;
    wanted.save();
    const MainWindow next({fileIn("recovery"), false});
    EXPECT_EQ(next.findChild<PaneGrid*>()->shownViews().front(),
              arrangements().front().columns.front().rows.front().view);
    wanted.restoresLayout = true;
    wanted.save();
}
