#pragma once

#include "core/text/message.h"

#include <QString>

/// What the core says, in the language of the program and the units that are displayed.
namespace lobewright::ui {

QString coreText(const Message& message);
/// The same with soft hyphens, where a long word may be broken.
QString coreTextToWrap(const Message& message);
/// "12.5 mm", as displayed.
QString amountText(const Amount& amount);

/// Numbers with the decimal mark of the language; those of sections (§ 2.7) stay.
QString localNumbers(const QString& text);

/// A label within a sentence: English writes it small, German keeps it as it is.
QString inSentence(const QString& label);

} // namespace lobewright::ui
