#include "ui/window/result_card.h"

#include "ui/base/palette.h"
#include "ui/base/type_scale.h"

#include <QPainter>
#include <QStyleOptionToolButton>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr int margin = spacing::tight; ///< [px]
constexpr int widest = 190;            ///< of a name [px]
constexpr int step = 8;                ///< widths are multiples of it [px]

} // namespace

ResultCard::ResultCard(QWidget* parent) : QToolButton(parent) {
    setAutoRaise(true);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void ResultCard::setResult(const QString& name, const QString& value, const QString& change) {
    if (name == name_ && value == value_ && change == change_)
        return;
    name_ = name;
    value_ = value;
    change_ = change;
    setAccessibleName(change.isEmpty() ? name + QLatin1Char(' ') + value
                                       : name + QLatin1Char(' ') + value + QLatin1String(", ") +
                                             tr("%1 against the baseline").arg(change));
    // Not laid out anew for every digit while something is dragged.
    const int wanted = wide();
    if (wanted != width_)
        updateGeometry();
    width_ = wanted;
    update();
}

QFont ResultCard::nameFont() const {
    return sized(font(), TypeSize::small);
}

QFont ResultCard::valueFont() const {
    const QFont bold = inBold(font());
    return bold;
}

int ResultCard::wide() const {
    const QFontMetrics names(nameFont()), values(valueFont()), changes(font());
    const int value =
        values.horizontalAdvance(value_) +
        (change_.isEmpty() ? 0 : changes.horizontalAdvance(QLatin1Char(' ') + change_) + 2);
    const int name = std::min(names.horizontalAdvance(name_), widest);
    return (std::max(name, value) + 2 * margin + step - 1) / step * step;
}

QSize ResultCard::sizeHint() const {
    return {wide(), QFontMetrics(nameFont()).height() + QFontMetrics(valueFont()).height() + 4};
}

void ResultCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    QStyleOptionToolButton option;
    initStyleOption(&option);
    style()->drawComplexControl(QStyle::CC_ToolButton, &option, &painter, this);
    const Palette& tones = Palette::of(*this);
    const QRect inside = rect().adjusted(margin, 2, -margin, -2);
    const QFontMetrics names(nameFont()), values(valueFont());
    painter.setFont(nameFont());
    painter.setPen(tones.quiet);
    painter.drawText(QRect(inside.left(), inside.top(), inside.width(), names.height()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     names.elidedText(name_, Qt::ElideRight, inside.width()));
    const QRect below(inside.left(), inside.top() + names.height(), inside.width(),
                      values.height());
    painter.setFont(valueFont());
    painter.setPen(isEnabled() ? tones.ink : tones.quiet);
    painter.drawText(below, Qt::AlignLeft | Qt::AlignVCenter, value_);
    painter.setFont(font());
    painter.setPen(tones.quiet);
    painter.drawText(below, Qt::AlignRight | Qt::AlignVCenter, change_);
}

} // namespace lobewright::ui
