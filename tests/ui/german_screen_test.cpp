// Everything that the German window shows is German.
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/drawn_text.h"
#include "tests/ui/english_words.h"
#include "ui/base/dialogs.h"
#include "ui/claims/claims_pane.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/wheel_import_dialog.h"
#include "ui/panels/figures_panel.h"
#include "ui/window/arrangement.h"
#include "ui/window/frames_dialog.h"
#include "ui/window/pane_grid.h"
#include "ui/window/preferences.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QTest>
#include <QTextBrowser>

#include <set>

namespace lobewright::ui::test {
namespace {

/// Texts of a window, each with the place where it was first found.
class Screen {
  public:
    explicit Screen(const design::Design& design)
        : own_{QString::fromStdString(design.title), QString::fromStdString(design.notes)} {}

    void read(QWidget& window, const QString& place) {
        place_ = place;
        for (QWidget* widget : window.findChildren<QWidget*>()) {
            readHidden(*widget);
            if (!widget->isVisible() || widget->isWindow())
                continue;
            // Pages and labels were read as a whole, a line of them may be half a title; what
            // stands in a line to type in is somebody's own.
            if (qobject_cast<QTextBrowser*>(widget->parentWidget()) ||
                qobject_cast<QLabel*>(widget) || qobject_cast<QLineEdit*>(widget))
                continue;
            for (const DrawnText& text : drawnText(*widget))
                add(text.text, *widget);
        }
    }

    void expectGerman() const {
        EXPECT_GT(seen_.size(), 100U);
        for (const QString& found : english_)
            ADD_FAILURE() << found.toStdString();
    }

  private:
    void add(const QString& text, const QObject& where) {
        if (text.isEmpty() || !seen_.insert(text).second)
            return;
        for (const QString& own : own_) {
            if (!own.isEmpty() && own.contains(text.section(QLatin1Char('\n'), 0, 0)))
                return; // title and notes of the design
        }
        const QString word = englishIn(text);
        if (!word.isEmpty()) {
            english_ << QStringLiteral("%1, %2: “%3” in “%4”")
                            .arg(place_, QString::fromLatin1(where.metaObject()->className()), word,
                                 text.left(300));
        }
    }
    /// What is told on request, or out of sight.
    void readHidden(QWidget& widget) {
        add(widget.toolTip(), widget);
        add(widget.accessibleName(), widget);
        for (const QAction* action : widget.actions()) {
            add(action->text(), *action);
            add(action->toolTip(), *action);
        }
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            add(label->text(), widget);
        if (const auto* edit = qobject_cast<const QLineEdit*>(&widget))
            add(edit->placeholderText(), widget);
        if (const auto* page = qobject_cast<const QTextBrowser*>(&widget)) {
            for (const QString& line : page->toPlainText().split(QLatin1Char('\n')))
                add(line, widget);
        }
        if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
            for (int i = 0; i < box->count(); ++i)
                add(box->itemText(i), widget);
        }
        if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
            view && view->model())
            readModel(*view->model(), {}, widget);
    }
    void readModel(const QAbstractItemModel& model, const QModelIndex& parent, QWidget& widget) {
        for (int row = 0; row < model.rowCount(parent); ++row) {
            for (int column = 0; column < model.columnCount(parent); ++column) {
                const QModelIndex index = model.index(row, column, parent);
                for (const int role : {Qt::DisplayRole, Qt::ToolTipRole})
                    add(index.data(role).toString(), widget);
                readModel(model, index, widget);
            }
        }
    }

    QStringList own_, english_;
    QString place_;
    std::set<QString> seen_;
};

class GermanScreen : public WindowTest {
  protected:
    void SetUp() override {
        WindowTest::SetUp();
        screen_.emplace(window_->document().design());
    }
    std::optional<Screen> screen_;
};

} // namespace

TEST_F(GermanScreen, Arrangements) {
    dynamic_cast<ClaimsPane&>(view("claims")).fillInExample();
    window_->keepBaseline();
    for (const Arrangement& arrangement : arrangements()) {
        window_->arrange(arrangement.key);
        QTest::qWait(300);
        screen_->read(*window_, arrangement.key);
    }
    screen_->expectGerman();
}

TEST_F(GermanScreen, Views) {
    for (const Views::View& view : window_->views().all()) {
        window_->findChild<PaneGrid*>()->reveal(view.key);
        QTest::qWait(60);
        screen_->read(*window_, view.key);
        if (view.addOptions) {
            QMenu menu;
            view.addOptions(menu);
            screen_->read(menu, view.key + QStringLiteral(", options"));
            QWidget holder;
            holder.addActions(menu.actions());
            QWidget around;
            holder.setParent(&around);
            screen_->read(around, view.key + QStringLiteral(", options"));
            holder.setParent(nullptr);
        }
    }
    screen_->expectGerman();
}

TEST_F(GermanScreen, WorkingsOfAllFigures) {
    for (const auto& figure : window_->solution()->figures) {
        Q_EMIT window_->figures().workingWanted(QString::fromStdString(figure.name));
        screen_->read(*window_, QString::fromStdString(figure.name));
    }
    screen_->expectGerman();
}

TEST_F(GermanScreen, Menus) {
    for (QMenu* menu : window_->menuBar()->findChildren<QMenu*>()) {
        QWidget holder, around;
        holder.addActions(menu->actions());
        holder.setParent(&around);
        screen_->read(around, menu->title());
        holder.setParent(nullptr);
    }
    screen_->read(*window_->menuBar(), QStringLiteral("menu bar"));
    screen_->expectGerman();
}

TEST_F(GermanScreen, Dialogs) {
    const auto read = [&](QDialog& dialog) {
        dialog.QWidget::show();
        QTest::qWait(200);
        screen_->read(dialog, dialog.windowTitle());
        EXPECT_EQ(englishIn(dialog.windowTitle()), QString());
    };
    KnotFitDialog knots(window_->document(), End::inlet, window_.get());
    read(knots);
    LiftImportDialog lift(window_->document(), window_.get());
    read(lift);
    WheelImportDialog wheel(window_->document(), window_.get());
    read(wheel);
    ExportDialog track(window_->document().design(), QStringLiteral("x"), window_.get());
    read(track);
    FramesDialog frames(window_->views(), window_->cursor(), QStringLiteral("x"), QString(),
                        window_.get());
    read(frames);
    PreferencesDialog preferences(window_.get());
    read(preferences);
    onNextDialog([&](QDialog& dialog) { screen_->read(dialog, dialog.windowTitle()); });
    showAbout(window_.get());
    screen_->expectGerman();
}

} // namespace lobewright::ui::test
