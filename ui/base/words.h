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
QString segmentKind(motion::SegmentKind kind);

} // namespace lobewright::ui::words
