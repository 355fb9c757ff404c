#pragma once

#include "core/design/design.h"
#include "core/result.h"

namespace lobewright::design {

/// The rules that go beyond a single value. A rule that rests on a section with a known problem is
/// left out: it would only repeat it in other words.
Problems brokenRules(const Design& design, const Problems& known);

} // namespace lobewright::design
