#include "ui/window/hint_bar.h"

#include "ui/base/controls.h"
#include "ui/base/plain_message.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QToolButton>

#include <algorithm>

namespace lobewright::ui {

HintBar::HintBar(QWidget& panes)
    : QFrame(panes.parentWidget()), panes_(panes), line_(new QHBoxLayout(this)),
      text_(new QLabel(this)) {
    setObjectName(QStringLiteral("hint"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::AlternateBase);
    panes_.installEventFilter(this);
    setAccessibleName(tr("Hint"));
    line_->setContentsMargins(8, 4, 4, 4);
    line_->addWidget(text_, 1);
    makeParagraph(*text_, "hintText");
    // A long text must not make the window wider.
    text_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    auto* close = new QToolButton(this);
    close->setObjectName(QStringLiteral("closeHint"));
    close->setText(tr("Close"));
    close->setToolTip(tr("Close this line"));
    close->setAutoRaise(true);
    connect(close, &QToolButton::clicked, this, &QWidget::hide);
    line_->addWidget(close);
    hide();
}

void HintBar::say(const QString& text, const QString& more, const std::vector<Offer>& offers) {
    for (QWidget* button : offers_) {
        button->hide();
        button->deleteLater(); // it may be the one that was clicked
    }
    offers_.clear();
    text_->setText(text);
    setAccessibleDescription(text);
    text_->setToolTip(more.isEmpty() ? QString() : plainToolTip(more));
    for (const Offer& offer : offers) {
        auto* button = new QToolButton(this);
        button->setText(offer.text);
        connect(button, &QToolButton::clicked, this, [this, act = offer.act] {
            hide();
            act();
        });
        line_->insertWidget(line_->count() - 1, button);
        offers_.push_back(button);
    }
    show();
    raise();
    place();
}

void HintBar::place() {
    constexpr int side = 16, foot = 8; // [px]
    const QRect all = panes_.geometry();
    const int wide = all.width() - 2 * side;
    const int high = std::max(sizeHint().height(), line_->heightForWidth(wide));
    setGeometry(all.left() + side, all.bottom() - foot - high, wide, high);
}

bool HintBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::Move)
        place();
    return QFrame::eventFilter(watched, event);
}

void HintBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        hide();
    } else {
        QFrame::keyPressEvent(event);
    }
}

} // namespace lobewright::ui
