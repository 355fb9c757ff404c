#pragma once

#include "core/text/message.h"

namespace lobewright {

/// What goes wherever a figure leaves the program: the same words everywhere.
TextId caution();
/// Its first sentence, where there is room for a line only.
TextId shortCaution();

} // namespace lobewright
