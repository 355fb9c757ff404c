#include "ui/scene/walk/card_text.h"

#include "ui/base/type_scale.h"

#include <QFontMetrics>
#include <QLabel>

namespace lobewright::ui {

namespace {

constexpr int lineLength = 60; ///< of a line, in letters

} // namespace

void writeAsCard(QLabel& label, const QFont& base, CardText kind) {
    QFont font = sized(base, TypeSize::heading);
    label.setMaximumWidth(QFontMetrics(font).averageCharWidth() * lineLength);
    if (kind == CardText::heading)
        font = sized(base, TypeSize::title);
    font.setBold(kind != CardText::text);
    label.setFont(font);
    label.setWordWrap(true);
    label.setAlignment(Qt::AlignTop | Qt::AlignLeft);
    label.setTextInteractionFlags(Qt::TextSelectableByMouse);
    label.setFocusPolicy(Qt::NoFocus); // many are empty until there is something to say
}

} // namespace lobewright::ui
