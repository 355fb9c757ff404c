#include "ui/window/foot_message.h"

#include "ui/base/type_scale.h"
#include "ui/window/result_card.h"

#include <QEvent>
#include <QStatusBar>

#include <algorithm>

namespace lobewright::ui {

FootMessage::FootMessage(QStatusBar& bar) : QLabel(&bar) {
    setObjectName(QStringLiteral("footMessage"));
    setTextFormat(Qt::PlainText);
    setAutoFillBackground(true);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setContentsMargins(spacing::normal, 0, spacing::wide, 0);
    bar.installEventFilter(this);
    connect(&bar, &QStatusBar::messageChanged, this, &FootMessage::say);
    hide();
}

void FootMessage::say(const QString& text) {
    setText(text);
    setVisible(!text.isEmpty());
    if (!text.isEmpty())
        place();
}

void FootMessage::place() {
    // Over whole cards: half a one would be read as something else.
    int right = std::min(parentWidget()->width(), sizeHint().width());
    for (const auto* card : parentWidget()->findChildren<const ResultCard*>()) {
        const QRect box(card->mapTo(parentWidget(), QPoint(0, 0)), card->size());
        if (card->isVisible() && box.left() < right)
            right = std::max(right, box.right() + 1);
    }
    setGeometry(0, 0, right, parentWidget()->height());
    raise();
}

bool FootMessage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize)
        place();
    return QLabel::eventFilter(watched, event);
}

} // namespace lobewright::ui
