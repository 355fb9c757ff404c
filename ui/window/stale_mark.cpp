#include "ui/window/stale_mark.h"

#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"

#include <QAccessible>
#include <QEvent>

namespace lobewright::ui {

namespace {
constexpr int frameWidth = 3, margin = 6; // [px]
} // namespace

StaleMark::StaleMark(QWidget& results) : QWidget(&results) {
    setObjectName(QStringLiteral("staleMark"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    results.installEventFilter(this);
    hide();
}

void StaleMark::mark(const QString& words) {
    if (isVisible() && words == words_)
        return;
    words_ = words;
    setAccessibleName(words);
    place();
    show();
    raise();
    update();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QRect StaleMark::tag() const {
    const QFont bold = inBold(font());
    const QSize text = QFontMetrics(bold).size(Qt::TextSingleLine, words_);
    QRect tag(QPoint(), text.grownBy({2 * margin, margin, 2 * margin, margin}));
    tag.moveCenter({width() / 2, 0});
    tag.moveBottom(height() - frameWidth);
    return tag;
}

/// Only what is painted counts: the views beneath are not painted twice.
void StaleMark::place() {
    setGeometry(parentWidget()->rect());
    const QRect inner = rect().adjusted(frameWidth, frameWidth, -frameWidth, -frameWidth);
    setMask(QRegion(rect()).subtracted(inner).united(tag()));
}

bool StaleMark::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize)
        place();
    return QWidget::eventFilter(watched, event);
}

void StaleMark::paintEvent(QPaintEvent*) {
    const Palette& tones = Palette::of(*this);
    QPainter painter(this);
    QPen pen(tones.warning, frameWidth, Qt::DashLine);
    painter.setPen(pen);
    painter.drawRect(rect().adjusted(1, 1, -2, -2));
    painter.setFont(inBold(font()));
    fillAndOutline(painter, tones.panel, QPen(tones.warning, 1));
    painter.drawRect(tag().adjusted(0, 0, -1, -1));
    painter.setPen(tones.ink);
    painter.drawText(tag(), Qt::AlignCenter, words_);
}

} // namespace lobewright::ui
