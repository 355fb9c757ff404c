#pragma once

#include <QStringList>

/// The words of the core that the desktop shows, as they are looked up for translation. They are
/// what a translator has to know: core_words writes them for lupdate, and a test finds each one.
namespace lobewright::ui::test {

/// Labels, explanations and notes of the numbers, figures and channels of all samples, the choices
/// of every list, and every sentence in the sources of the core.
QStringList coreWords();

/// The sentences with places for values, as the sources hold them.
QStringList coreFormats();

} // namespace lobewright::ui::test
