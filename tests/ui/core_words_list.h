#pragma once

#include <QStringList>

namespace lobewright::ui::test {

/// Every label, explanation and choice of the core that the desktop shows, as it is looked up for
/// translation, sorted: from the fields of the samples with every choice taken once, their figures
/// and channels, the comparison, the exports and the claims form.
QStringList coreWords();

/// The sentences of checks, which the samples bring up only in part.
QStringList checkSentences();

/// Of the samples as they stand: what their limits lists say.
QStringList checksOfSamples();

} // namespace lobewright::ui::test
