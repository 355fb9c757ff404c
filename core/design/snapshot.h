#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// Designs kept under a name inside the design they are alternatives to: pure functions of the
/// list.
namespace lobewright::design {

inline constexpr std::size_t mostSnapshots = 100;

/// Whether the text is a date, or date and time, of ISO 8601 in its extended form, with or without
/// a zone: "2026-03-01", "2026-03-01T14:05", "2026-03-01T14:05:00Z", "…+01:00".
bool isDateTime(std::string_view text);

/// The design without its snapshots: what a snapshot keeps.
Design withoutSnapshots(Design design);

/// The list with the present design at its end. Errors: the name is empty or taken, the list is
/// full, `taken` is neither empty nor a date and time.
Result<std::vector<Snapshot>> withSnapshot(const Design& design, const std::string& name,
                                           const std::string& taken);

/// The list with another name at the index. Errors: as above; no such index.
Result<std::vector<Snapshot>> withName(const std::vector<Snapshot>& snapshots, std::size_t index,
                                       const std::string& name);

/// "Snapshot 3": the first name of this kind that is free.
std::string freeName(const std::vector<Snapshot>& snapshots, std::string_view stem);

} // namespace lobewright::design
