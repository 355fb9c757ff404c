#include "core/exchange/table_csv.h"

#include <fmt/format.h>

#include <iterator>

namespace lobewright::exchange {

std::string csvField(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) {
        return text;
    }
    std::string result = "\"";
    for (const char c : text) {
        result += c;
        if (c == '"') {
            result += '"';
        }
    }
    return result + "\"";
}

std::string tableCsv(const study::Table& table, bool withNames) {
    std::string text;
    auto out = std::back_inserter(text);
    if (withNames) {
        text += table.parameter.name;
        for (const auto& column : table.columns) {
            fmt::format_to(out, ",{}", column.name);
        }
        text += ",failure,beyond_limits\r\n";
    }
    for (const auto& point : table.points) {
        fmt::format_to(out, "{:.9g}", point.parameter);
        for (const auto& value : point.values) {
            text += ',';
            if (value) {
                fmt::format_to(out, "{:.{}g}", *value, tableDigits);
            }
        }
        fmt::format_to(out, ",{},{}\r\n", csvField(point.failure.english()),
                       csvField(point.beyond.english()));
    }
    return text;
}

} // namespace lobewright::exchange
