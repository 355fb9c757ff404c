#include "ui/base/controls.h"

#include "ui/base/units.h"

#include <QDialog>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>

namespace lobewright::ui {

void describe(QWidget& widget, const QString& name, const QString& help) {
    widget.setAccessibleName(name);
    widget.setToolTip(help);
}

void makeSearch(QLineEdit& line, const QString& name, const QString& help) {
    line.setPlaceholderText(name);
    line.setClearButtonEnabled(true);
    describe(line, name, help);
}

void makeParagraph(QLabel& label, const char* name) {
    label.setObjectName(QLatin1String(name));
    label.setTextFormat(Qt::PlainText);
    label.setWordWrap(true);
}

void makeScroll(QScrollArea& area, QWidget* content) {
    area.setWidget(content);
    area.setWidgetResizable(true);
    area.setFrameShape(QFrame::NoFrame);
}

QDoubleSpinBox* numberBox(const char* name, const QString& metric, double least, double most,
                          double value, int decimals, QWidget* parent) {
    const Unit unit = unitFor(metric);
    auto* box = new QDoubleSpinBox(parent);
    box->setObjectName(QLatin1String(name));
    box->setDecimals(unit.decimals(decimals));
    box->setRange(unit.shown(least), unit.shown(most));
    box->setSuffix(QLatin1Char(' ') + unit.text);
    box->setStepType(QAbstractSpinBox::AdaptiveDecimalStepType);
    box->setValue(unit.shown(value));
    return box;
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
