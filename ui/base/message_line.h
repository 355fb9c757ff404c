#pragma once

#include <QString>

class QLabel;

namespace lobewright::ui {

/// Text of a dialog's line of messages; in the tone of warnings where it is one.
void setMessage(QLabel& line, const QString& text, bool isWarning);

} // namespace lobewright::ui
