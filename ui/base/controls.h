#pragma once

#include <QDialogButtonBox>
#include <QString>

class QDialog;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QScrollArea;
class QToolButton;
class QWidget;

/// Parts that panes and dialogs are made of.
namespace lobewright::ui {

/// What a screen reader calls a widget, and what is said at the pointer over it.
void describe(QWidget& widget, const QString& name, const QString& help);

/// A line that finds something as it is typed.
void makeSearch(QLineEdit& line, const QString& name, const QString& help);
/// Text of many lines that is never taken for markup; `name`: for style and tests.
void makeParagraph(QLabel& label, const char* name);
/// What is larger than its place is scrolled; no frame of its own.
void makeScroll(QScrollArea& area, QWidget* content);
/// A number in the unit shown now; bounds, value and decimals of the metric unit.
QDoubleSpinBox* numberBox(const char* name, const QString& metric, double least, double most,
                          double value, int decimals, QWidget* parent);

/// A flat button of words.
QToolButton* wordButton(const QString& text, const QString& help, QWidget* parent);

/// The buttons at the foot of a dialog; what rejects closes it.
QDialogButtonBox* footOf(QDialog& dialog, QDialogButtonBox::StandardButtons buttons);
/// One more of them, with the name that style and tests know it by.
QPushButton* addButton(QDialogButtonBox& buttons, const QString& text,
                       QDialogButtonBox::ButtonRole role, const char* name);

} // namespace lobewright::ui
