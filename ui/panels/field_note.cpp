#include "ui/panels/field_note.h"

#include "ui/base/palette.h"

#include <QEvent>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr int border = 4, gap = 2;

} // namespace

FieldNote::FieldNote(QWidget* ground) : QLabel(ground) {
    setObjectName(QStringLiteral("problem"));
    setTextFormat(Qt::PlainText); // what was typed is quoted
    setWordWrap(true);
    setMargin(border);
    setFrameShape(QFrame::Box);
    setAutoFillBackground(true);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
    ground->installEventFilter(this);
}

void FieldNote::showUnder(QWidget& field, const QString& text) {
    field_ = &field;
    if (!field.isVisibleTo(parentWidget())) {
        hide();
        return;
    }
    const Palette& tones = Palette::of(*this);
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, tones.warning);
    colours.setColor(QPalette::Window, tones.panel);
    setPalette(colours);
    setText(text);
    setAccessibleName(text);
    place();
    show();
    raise();
}

bool FieldNote::eventFilter(QObject* watched, QEvent* event) {
    if (isVisible() && (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest))
        place();
    return QLabel::eventFilter(watched, event);
}

void FieldNote::place() {
    const QWidget* ground = parentWidget();
    if (!field_ || !field_->isVisibleTo(ground)) {
        hide();
        return;
    }
    const QRect field(field_->mapTo(ground, QPoint(0, 0)), field_->size());
    const int width = ground->width() - 2 * border;
    const int height = heightForWidth(width);
    const QRect seen = ground->visibleRegion().boundingRect();
    const int lowest = seen.isEmpty() ? ground->height() : seen.bottom() + 1;
    const bool fitsBelow = field.bottom() + 1 + gap + height <= lowest;
    const int y = fitsBelow ? field.bottom() + 1 + gap : field.top() - gap - height;
    setGeometry(border, std::max(0, y), width, height);
}

} // namespace lobewright::ui
