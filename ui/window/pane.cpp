#include "ui/window/pane.h"

#include "ui/base/layouts.h"
#include "ui/base/type_scale.h"

#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QMouseEvent>
#include <QToolButton>
#include <QVBoxLayout>

namespace lobewright::ui {

Pane::Pane(QWidget* parent)
    : QFrame(parent), layout_(new QVBoxLayout(this)), title_(new QLabel(this)),
      options_(new QToolButton(this)), enlarge_(new QToolButton(this)) {
    setFrameShape(QFrame::NoFrame);
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setSpacing(0);
    auto* bar = rowOf(nullptr, {4, 0, 4, 0}, 4, {});
    title_->setFont(inBold(title_->font()));
    title_->setIndent(6);
    options_->setAutoRaise(true);
    options_->setText(tr("Options"));
    options_->setToolTip(
        tr("What this view can show, copy, save and print, and which view stands here"));
    enlarge_->setAutoRaise(true);
    enlarge_->setText(tr("Enlarge"));
    enlarge_->setToolTip(tr("Show only this view, or all again"));
    bar->addWidget(title_);
    bar->addStretch(1);
    bar->addWidget(options_);
    bar->addWidget(enlarge_);
    layout_->addLayout(bar);
    connect(options_, &QToolButton::clicked, this, [this] {
        QMenu menu(this);
        fillOptions(menu);
        menu.exec(options_->mapToGlobal(QPoint(0, options_->height())));
    });
    connect(enlarge_, &QToolButton::clicked, this, &Pane::enlargeWanted);
}

void Pane::setView(const Views::View* view) {
    view_ = view;
    if (!view)
        return;
    title_->setText(view->title);
    options_->setAccessibleName(tr("Options of %1").arg(view->title));
    enlarge_->setAccessibleDescription(view->title);
    layout_->addWidget(view->widget, 1);
    view->widget->show();
}

void Pane::fillOptions(QMenu& menu) {
    if (view_ && view_->addOptions)
        view_->addOptions(menu);
    if (!menu.isEmpty())
        menu.addSeparator();
    Q_EMIT choicesWanted(menu.addMenu(tr("Show another view here")));
}

void Pane::release(QWidget* owner) {
    if (!view_)
        return;
    view_->widget->hide();
    layout_->removeWidget(view_->widget);
    view_->widget->setParent(owner);
    view_ = nullptr;
}

void Pane::setEnlarged(bool enlarged) {
    enlarge_->setText(enlarged ? tr("Back to all panes") : tr("Enlarge"));
}

void Pane::mouseDoubleClickEvent(QMouseEvent*) {
    Q_EMIT enlargeWanted();
}

const Pane* paneOf(const QWidget* widget) {
    for (; widget; widget = widget->parentWidget()) {
        const auto* pane = qobject_cast<const Pane*>(widget);
        if (pane && pane->view())
            return pane;
    }
    return nullptr;
}

std::array<const QWidget*, 2> widgetsHere() {
    return {QApplication::focusWidget(), QApplication::widgetAt(QCursor::pos())};
}

const Views::View* viewHere() {
    for (const QWidget* widget : widgetsHere()) {
        if (const Pane* pane = paneOf(widget))
            return pane->view();
    }
    return nullptr;
}

} // namespace lobewright::ui
