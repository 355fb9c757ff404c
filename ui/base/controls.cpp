#include "ui/base/controls.h"

#include <QDialog>
#include <QPushButton>
#include <QToolButton>

namespace lobewright::ui {

void describe(QWidget& widget, const QString& name, const QString& help) {
    widget.setAccessibleName(name);
    widget.setToolTip(help);
}

QToolButton* wordButton(const QString& text, const QString& help, QWidget* parent) {
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setToolTip(help);
    button->setAutoRaise(true);
    return button;
}

QDialogButtonBox* footOf(QDialog& dialog, QDialogButtonBox::StandardButtons buttons) {
    auto* box = new QDialogButtonBox(buttons, &dialog);
    QObject::connect(box, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    return box;
}

QPushButton* addButton(QDialogButtonBox& buttons, const QString& text,
                       QDialogButtonBox::ButtonRole role, const char* name) {
    QPushButton* button = buttons.addButton(text, role);
    button->setObjectName(QLatin1String(name));
    return button;
}

} // namespace lobewright::ui
