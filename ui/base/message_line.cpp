#include "ui/base/message_line.h"

#include "ui/base/controls.h"
#include "ui/base/palette.h"

#include <QLabel>

namespace lobewright::ui {

void setMessage(QLabel& line, const QString& text, bool isWarning) {
    const Palette& tones = Palette::of(line);
    QPalette palette = line.palette();
    palette.setColor(QPalette::WindowText, isWarning ? tones.warning : tones.ink);
    line.setPalette(palette);
    line.setText(text);
    // Nothing to select takes no keyboard, for nobody could hear what has it.
    if (line.textInteractionFlags() & Qt::TextSelectableByKeyboard)
        line.setFocusPolicy(text.isEmpty() ? Qt::NoFocus : Qt::ClickFocus);
}

QLabel* messageLine(int lines, QWidget* parent) {
    auto* label = new QLabel(parent);
    makeParagraph(*label, "message");
    label->setMinimumHeight(lines * parent->fontMetrics().lineSpacing());
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setFocusPolicy(Qt::NoFocus); // until it says something
    return label;
}

} // namespace lobewright::ui
