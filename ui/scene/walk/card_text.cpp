#include "ui/scene/walk/card_text.h"

#include <QFontMetrics>
#include <QLabel>

namespace lobewright::ui {

namespace {

constexpr double headingShare = 1.6, textShare = 1.2; ///< of the size of other words
constexpr int lineLength = 60;                        ///< of a line, in letters

} // namespace

void writeAsCard(QLabel& label, const QFont& base, CardText kind) {
    QFont font = base;
    font.setPointSizeF(base.pointSizeF() * textShare);
    label.setMaximumWidth(QFontMetrics(font).averageCharWidth() * lineLength);
    if (kind == CardText::heading)
        font.setPointSizeF(base.pointSizeF() * headingShare);
    font.setBold(kind != CardText::text);
    label.setFont(font);
    label.setWordWrap(true);
    label.setAlignment(Qt::AlignTop | Qt::AlignLeft);
    label.setTextInteractionFlags(Qt::TextSelectableByMouse);
    label.setFocusPolicy(Qt::NoFocus); // many are empty until there is something to say
}

} // namespace lobewright::ui
