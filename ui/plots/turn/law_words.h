#pragma once

#include "core/motion/pattern.h"

#include <QString>

namespace lobewright::ui {

/// "Modified sine", as the design's fields say it.
QString lawWords(motion::Law law);

} // namespace lobewright::ui
