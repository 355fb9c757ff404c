#include "ui/base/plain_message.h"

namespace lobewright::ui {

PlainMessage::PlainMessage(Icon icon, const QString& title, const QString& text,
                           StandardButtons buttons, QWidget* parent)
    : QMessageBox(icon, title, {}, buttons, parent) {
    setTextFormat(Qt::PlainText);
    setText(text);
}

QString plainToolTip(const QString& text) {
    return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

void warn(QWidget* parent, const QString& title, const QString& text) {
    PlainMessage(QMessageBox::Warning, title, text, QMessageBox::Ok, parent).exec();
}

} // namespace lobewright::ui
