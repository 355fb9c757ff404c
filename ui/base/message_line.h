#pragma once

#include <QString>

class QLabel;
class QWidget;

namespace lobewright::ui {

/// Text of a dialog's line of messages; in the tone of warnings where it is one.
void setMessage(QLabel& line, const QString& text, bool isWarning);
/// The line of messages at the foot of a dialog, with room for so many lines of text.
QLabel* messageLine(int lines, QWidget* parent);

} // namespace lobewright::ui
