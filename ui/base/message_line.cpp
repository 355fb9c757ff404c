#include "ui/base/message_line.h"

#include "ui/base/palette.h"

#include <QLabel>

namespace lobewright::ui {

void setMessage(QLabel& line, const QString& text, bool isWarning) {
    const Palette& tones = Palette::of(line);
    QPalette palette = line.palette();
    palette.setColor(QPalette::WindowText, isWarning ? tones.warning : tones.ink);
    line.setPalette(palette);
    line.setText(text);
}

} // namespace lobewright::ui
