#pragma once

#include <QDialogButtonBox>
#include <QString>

class QDialog;
class QToolButton;
class QWidget;

/// Parts that panes and dialogs are made of.
namespace lobewright::ui {

/// What a screen reader calls a widget, and what is said at the pointer over it.
void describe(QWidget& widget, const QString& name, const QString& help);

/// A flat button of words.
QToolButton* wordButton(const QString& text, const QString& help, QWidget* parent);

/// The buttons at the foot of a dialog; what rejects closes it.
QDialogButtonBox* footOf(QDialog& dialog, QDialogButtonBox::StandardButtons buttons);
/// One more of them, with the name that style and tests know it by.
QPushButton* addButton(QDialogButtonBox& buttons, const QString& text,
                       QDialogButtonBox::ButtonRole role, const char* name);

} // namespace lobewright::ui
