#pragma once

#include "core/ends.h"
#include "core/motion/pattern.h"

#include <QString>

/// Numbers and trade words as the scene writes them.
namespace lobewright::ui::words {

/// With a true minus sign.
QString number(double value, int decimals);
/// "12.5°" from radians.
QString degrees(double radians, int decimals);
/// "Inlet", "Exhaust".
QString side(End end);
/// "Inlet track", "Exhaust track"; of an engine with one track "Track".
QString track(End end, bool isOnly);
/// The same within a sentence.
QString trackWithin(End end, bool isOnly);
/// "Inlet piston", "Exhaust piston"; "Piston".
QString piston(End end, bool isOnly);
QString segmentKind(motion::SegmentKind kind);

} // namespace lobewright::ui::words
