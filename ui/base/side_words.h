#pragma once

#include "core/ends.h"

#include <QString>

/// How the parts of a side are called on screen: one track (`isOnly`) has nothing to be told from.
namespace lobewright::ui {

/// "Inlet track", "Exhaust track", "Track".
QString trackTitle(End end, bool isOnly);
/// The same within a sentence.
QString trackWithin(End end, bool isOnly);
/// "Inlet piston", "Exhaust piston", "Piston".
QString pistonTitle(End end, bool isOnly);

} // namespace lobewright::ui
