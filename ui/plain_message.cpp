#include "ui/plain_message.h"

namespace lobewright::ui {

PlainMessage::PlainMessage(Icon icon, const QString& title, const QString& text,
                           StandardButtons buttons, QWidget* parent)
    : QMessageBox(icon, title, {}, buttons, parent) {
    setTextFormat(Qt::PlainText);
    setText(text);
}

void warn(QWidget* parent, const QString& title, const QString& text) {
    PlainMessage(QMessageBox::Warning, title, text, QMessageBox::Ok, parent).exec();
}

} // namespace lobewright::ui
