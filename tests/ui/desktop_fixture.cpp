#include "tests/ui/desktop_fixture.h"

#include "core/design/file.h"
#include "core/design/schedules.h"
#include "ui/document/samples.h"
#include "ui/panels/figures_panel.h"

#include <QApplication>
#include <QMenu>
#include <QSettings>
#include <QTabWidget>
#include <QTest>
#include <QTimer>

namespace lobewright::ui::test {

design::Design sampleDesign() {
    return *loadSample(samples().front());
}

void WindowTest::SetUp() {
    QSettings().clear();
    window_ =
        std::make_unique<MainWindow>(MainWindow::Options{folder_.filePath("recovery"), false});
    window_->show();
    window_->openSomething();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
    window_->activateWindow();
    ASSERT_TRUE(waitUntilSolved());
    ASSERT_TRUE(activate());
}

/// Without a window manager nobody gives the focus back when a dialog, such as the progress of
/// opening a file on a busy machine, has gone.
bool WindowTest::activate() {
    return QTest::qWaitFor([this] {
        if (!window_->isActiveWindow())
            window_->activateWindow();
        return window_->isActiveWindow();
    });
}

bool WindowTest::waitUntilSolved() {
    return QTest::qWaitFor(
        [this] {
            return !window_->solver().isBusy() && window_->solution() &&
                   !window_->solution()->live &&
                   window_->solution()->design == design::atItsSpeed(window_->document().design());
        },
        60000);
}

double WindowTest::number(const std::string& path) const {
    const auto field = design::findField(window_->document().design(), path);
    if (!field)
        throw std::runtime_error("no field " + path);
    if (const auto* whole = std::get_if<int>(&field->value))
        return *whole;
    return std::get<double>(field->value);
}

void WindowTest::open(const char* key) {
    auto* menu = window_->findChild<QMenu*>(QStringLiteral("everyView"));
    for (QAction* action : menu->findChildren<QAction*>()) {
        if (action->data().toString() == QLatin1String(key))
            action->trigger();
    }
}

QWidget& WindowTest::view(const QString& key) {
    return *window_->views().find(key)->widget;
}

FiguresPanel& WindowTest::shownFigures() {
    FiguresPanel& panel = window_->figures();
    QWidget* page = panel.parentWidget();
    while (!qobject_cast<QTabWidget*>(page->parentWidget()->parentWidget()))
        page = page->parentWidget();
    qobject_cast<QTabWidget*>(page->parentWidget()->parentWidget())->setCurrentWidget(page);
    return panel;
}

void drag(QWidget& widget, const QPointF& from, const QPointF& to, bool release,
          Qt::KeyboardModifiers modifiers) {
    const auto send = [&](QEvent::Type type, const QPointF& at, Qt::MouseButton button,
                          Qt::MouseButtons buttons) {
        QMouseEvent event(type, at, widget.mapToGlobal(at), button, buttons, modifiers);
        QApplication::sendEvent(&widget, &event);
    };
    send(QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
    for (int i = 1; i <= 10; ++i) {
        send(QEvent::MouseMove, from + (to - from) * (i / 10.0), Qt::NoButton, Qt::LeftButton);
        QTest::qWait(5);
    }
    if (release)
        send(QEvent::MouseButtonRelease, to, Qt::LeftButton, Qt::NoButton);
}

void onNextDialog(std::function<void(QDialog&)> act) {
    auto* timer = new QTimer(qApp);
    QObject::connect(timer, &QTimer::timeout, qApp, [timer, act = std::move(act)] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog)
            return;
        timer->deleteLater();
        timer->stop();
        act(*dialog);
        dialog->close();
    });
    timer->start(20);
}

} // namespace lobewright::ui::test
