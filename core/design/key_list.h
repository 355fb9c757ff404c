#pragma once

#include "core/text/message.h"

#include <string>
#include <string_view>
#include <vector>

namespace lobewright::design {

/// JSON pointers of every key that a design file can hold, whatever its kinds; "*" stands for the
/// index of a list entry, e.g. "/tracks/inlet/segments/*/span_deg", and for the pointer of an
/// entry of the knowledge. File order.
const std::vector<std::string>& keyPaths();

/// Where a key of this name stands, in words for a message ("/mechanism/roller", "the top level");
/// empty when it is no key or stands in several places.
Message sectionOf(std::string_view name);

} // namespace lobewright::design
