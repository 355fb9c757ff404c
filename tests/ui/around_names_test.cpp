// What assistive technology reads: every part that takes the keyboard has a name, in the window and
// in every dialog.
#include "tests/ui/desktop_fixture.h"
#include "ui/base/dialogs.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/wheel_import_dialog.h"
#include "ui/help/help_window.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/window/arrangement.h"
#include "ui/window/frames_dialog.h"
#include "ui/window/preferences.h"
#include "ui/window/shortcuts.h"

#include <QAccessible>
#include <QMenuBar>
#include <QTest>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// Parts that Qt puts into a control by itself and names through it.
bool isInnerPart(const QWidget& widget) {
    for (const char* type : {"QAbstractSpinBox", "QComboBox", "QTabBar", "QHeaderView",
                             "QScrollBar", "QMenu", "QMenuBar", "QSplitterHandle"}) {
        if (widget.inherits(type) ? QLatin1String(type) != QLatin1String("QAbstractSpinBox") &&
                                        QLatin1String(type) != QLatin1String("QComboBox")
                                  : widget.parentWidget() && widget.parentWidget()->inherits(type))
            return true;
    }
    return widget.objectName().startsWith(QLatin1String("qt_")) ||
           widget.inherits("QTableCornerButton") || widget.inherits("QComboBoxListView") ||
           widget.inherits("QComboBoxPrivateContainer");
}

QString readName(QWidget& widget) {
    QAccessibleInterface* read = QAccessible::queryAccessibleInterface(&widget);
    return read ? read->text(QAccessible::Name) : QString();
}

/// Everything that takes the keyboard and every plot.
int expectNames(QWidget& window) {
    int counted = 0;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        const bool isPlot = qobject_cast<QCustomPlot*>(widget) != nullptr;
        // A scroll area or page that only passes the keyboard on to what lies in it.
        const bool passesOn = widget->focusProxy() || widget->focusPolicy() == Qt::NoFocus ||
                              widget->inherits("QScrollArea") || widget->inherits("QTabWidget");
        if ((passesOn && !isPlot) || isInnerPart(*widget))
            continue;
        ++counted;
        EXPECT_FALSE(readName(*widget).trimmed().isEmpty())
            << widget->metaObject()->className() << " '" << widget->objectName().toStdString()
            << "' in " << widget->parentWidget()->metaObject()->className() << " '"
            << widget->parentWidget()->objectName().toStdString() << "' of "
            << window.metaObject()->className();
    }
    return counted;
}

} // namespace

TEST_F(WindowTest, EverythingThatTakesTheKeyboardHasAName) {
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        QTest::qWait(50);
        EXPECT_GT(expectNames(*window_), 100);
    }
}

TEST_F(WindowTest, EverythingInTheDialogsHasAName) {
    ExportDialog out(window_->document().design(), QStringLiteral("x"), window_.get());
    FramesDialog frames(window_->views(), window_->cursor(), QStringLiteral("x"), QString(),
                        window_.get());
    KnotFitDialog knots(window_->document(), End::inlet, window_.get());
    LiftImportDialog in(window_->document(), window_.get());
    WheelImportDialog wheel(window_->document(), window_.get());
    PreferencesDialog preferences(window_.get());
    HelpWindow help(window_.get());
    for (QWidget* dialog :
         std::initializer_list<QWidget*>{&out, &frames, &knots, &in, &wheel, &preferences, &help}) {
        dialog->setVisible(true);
        QTest::qWait(20);
        EXPECT_GT(expectNames(*dialog), 2);
        dialog->hide();
    }
    onNextDialog([](QDialog& dialog) { EXPECT_GT(expectNames(dialog), 1); });
    showShortcuts(window_.get(), *window_->menuBar());
    onNextDialog([](QDialog& dialog) { EXPECT_GT(expectNames(dialog), 1); });
    showProblems(window_.get(), QStringLiteral("x.json"), {{"/mechanism", "no such key"}});
    onNextDialog([](QDialog& dialog) { EXPECT_GT(expectNames(dialog), 1); });
    showAbout(window_.get());
}
