#include "ui/window/foot_message.h"

#include "ui/base/type_scale.h"

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
    setGeometry(0, 0, std::min(parentWidget()->width(), sizeHint().width()),
                parentWidget()->height());
    raise();
}

bool FootMessage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize)
        place();
    return QLabel::eventFilter(watched, event);
}

} // namespace lobewright::ui
