#pragma once

#include "core/design/design.h"
#include "core/result.h"

namespace lobewright::design {

/// The rules that go beyond a single value. A rule that rests on a section with a known problem is
/// left out: it would only repeat it in other words.
/// Snapshots are not looked at.
Problems brokenRules(const Design& design, const Problems& known);

/// The rules of the snapshots: names, times, and the rules of each design kept; paths begin with
/// "/snapshots/<index>".
Problems brokenSnapshotRules(const Design& design, const Problems& known);

} // namespace lobewright::design
