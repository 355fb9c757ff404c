#include "tests/design/schema_check.h"

#include <algorithm>
#include <cmath>
#include <regex>
#include <set>
#include <stdexcept>

namespace lobewright::design::testing {

namespace {

using nlohmann::json;

/// Section 6.1.1 of the validation standard: 1.0 is an integer, true is not.
bool isOfType(const json& value, const std::string& type) {
    if (type == "integer") {
        return value.is_number() && std::trunc(value.get<double>()) == value.get<double>();
    }
    return (type == "number" && value.is_number()) || (type == "string" && value.is_string()) ||
           (type == "boolean" && value.is_boolean()) || (type == "null" && value.is_null()) ||
           (type == "object" && value.is_object()) || (type == "array" && value.is_array());
}

/// Characters, not bytes, as RFC 8259 counts them.
std::size_t lengthOf(const std::string& utf8) {
    std::size_t count = 0;
    for (const char c : utf8) {
        count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1 : 0;
    }
    return count;
}

class Check {
  public:
    explicit Check(const json& root) : root_(root) {}

    std::string operator()(const json& schema, const json& value, const std::string& path) const {
        if (schema.is_boolean()) {
            return schema.get<bool>() ? "" : path + ": not allowed here";
        }
        for (const auto& entry : schema.items()) {
            std::string broken = rule(entry.key(), entry.value(), schema, value, path);
            if (!broken.empty()) {
                return broken;
            }
        }
        return {};
    }

  private:
    bool accepts(const json& schema, const json& value) const {
        return (*this)(schema, value, "").empty();
    }

    std::string rule(const std::string& keyword, const json& asked, const json& schema,
                     const json& value, const std::string& path) const {
        static const std::set<std::string> said = {"$schema", "$id",  "title", "description",
                                                   "default", "then", "else"};
        if (said.contains(keyword)) {
            return {};
        }
        const auto unless = [&](bool isKept) {
            return isKept ? std::string() : path + ": " + keyword + " " + asked.dump();
        };
        if (keyword == "$ref") {
            const json::json_pointer target(asked.get<std::string>().substr(1));
            return (*this)(root_.at(target), value, path);
        }
        if (keyword == "type") {
            bool isAny = false;
            for (const json& type : asked.is_array() ? asked : json::array({asked})) {
                isAny = isAny || isOfType(value, type.get<std::string>());
            }
            return unless(isAny);
        }
        if (keyword == "const") {
            return unless(value == asked);
        }
        if (keyword == "enum") {
            return unless(std::find(asked.begin(), asked.end(), value) != asked.end());
        }
        if (keyword == "oneOf") {
            int count = 0;
            for (const json& form : asked) {
                count += accepts(form, value) ? 1 : 0;
            }
            return unless(count == 1);
        }
        if (keyword == "allOf") {
            for (const json& form : asked) {
                if (auto broken = (*this)(form, value, path); !broken.empty()) {
                    return broken;
                }
            }
            return {};
        }
        if (keyword == "if") {
            const char* branch = accepts(asked, value) ? "then" : "else";
            return schema.contains(branch) ? (*this)(schema[branch], value, path) : std::string();
        }
        return ofKind(keyword, asked, schema, value, path);
    }

    /// Keywords that ask only values of one type.
    std::string ofKind(const std::string& keyword, const json& asked, const json& schema,
                       const json& value, const std::string& path) const {
        const auto unless = [&](bool isKept) {
            return isKept ? std::string() : path + ": " + keyword + " " + asked.dump();
        };
        const auto number = [&] { return value.get<double>(); };
        const auto bound = [&] { return asked.get<double>(); };
        if (keyword == "minimum") {
            return unless(!value.is_number() || number() >= bound());
        }
        if (keyword == "maximum") {
            return unless(!value.is_number() || number() <= bound());
        }
        if (keyword == "exclusiveMinimum") {
            return unless(!value.is_number() || number() > bound());
        }
        if (keyword == "exclusiveMaximum") {
            return unless(!value.is_number() || number() < bound());
        }
        if (keyword == "maxLength") {
            return unless(!value.is_string() ||
                          lengthOf(value.get<std::string>()) <= asked.get<std::size_t>());
        }
        if (keyword == "minItems") {
            return unless(!value.is_array() || value.size() >= asked.get<std::size_t>());
        }
        if (keyword == "maxItems") {
            return unless(!value.is_array() || value.size() <= asked.get<std::size_t>());
        }
        if (keyword == "items") {
            for (std::size_t i = 0; value.is_array() && i < value.size(); ++i) {
                auto broken = (*this)(asked, value[i], path + "/" + std::to_string(i));
                if (!broken.empty()) {
                    return broken;
                }
            }
            return {};
        }
        if (keyword == "required") {
            bool hasAll = true;
            for (const json& name : asked) {
                hasAll = hasAll && (!value.is_object() || value.contains(name.get<std::string>()));
            }
            return unless(hasAll);
        }
        if (keyword == "properties") {
            return ofProperties(asked, value, path);
        }
        if (keyword == "pattern") {
            return unless(
                !value.is_string() ||
                std::regex_search(value.get<std::string>(), std::regex(asked.get<std::string>())));
        }
        if (keyword == "propertyNames") {
            if (!value.is_object()) {
                return {};
            }
            for (const auto& entry : value.items()) {
                if (auto broken = (*this)(asked, entry.key(), path + "/" + entry.key());
                    !broken.empty()) {
                    return broken;
                }
            }
            return {};
        }
        if (keyword == "additionalProperties") {
            return ofOthers(asked, schema.value("properties", json::object()), value, path);
        }
        throw std::logic_error("keyword of JSON Schema that the test does not know: " + keyword);
    }

    std::string ofProperties(const json& asked, const json& value, const std::string& path) const {
        if (!value.is_object()) {
            return {};
        }
        for (const auto& entry : value.items()) {
            if (const auto found = asked.find(entry.key()); found != asked.end()) {
                auto broken = (*this)(*found, entry.value(), path + "/" + entry.key());
                if (!broken.empty()) {
                    return broken;
                }
            }
        }
        return {};
    }

    /// Members that have no entry of their own: refused, or all held against one schema.
    std::string ofOthers(const json& asked, const json& properties, const json& value,
                         const std::string& path) const {
        if (!value.is_object()) {
            return {};
        }
        for (const auto& entry : value.items()) {
            if (properties.contains(entry.key())) {
                continue;
            }
            if (asked == false) {
                return path + ": additional property " + entry.key();
            }
            if (auto broken = (*this)(asked, entry.value(), path + "/" + entry.key());
                !broken.empty()) {
                return broken;
            }
        }
        return {};
    }

    const json& root_;
};

} // namespace

std::string brokenSchemaRule(const json& schema, const json& value) {
    return Check(schema)(schema, value, "");
}

} // namespace lobewright::design::testing
