#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace lobewright::design::testing {

/// Where and why a value breaks a schema; empty: it does not. Understands those keywords of JSON
/// Schema 2020-12 that the published schema uses, written from the standard and not from our
/// reader; throws at any other, so that a new one cannot be overlooked.
std::string brokenSchemaRule(const nlohmann::json& schema, const nlohmann::json& value);

} // namespace lobewright::design::testing
