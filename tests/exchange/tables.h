#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace lobewright::exchange::testing {

/// A table as another program reads it: comments, columns by name.
struct ReadTable {
    std::vector<std::string> comments;
    std::vector<std::string> names;
    std::vector<std::vector<std::string>> rows;

    double at(std::size_t row, const std::string& name) const {
        return std::strtod(text(row, name).c_str(), nullptr);
    }
    const std::string& text(std::size_t row, const std::string& name) const {
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (names[i] == name) {
                return rows.at(row).at(i);
            }
        }
        ADD_FAILURE() << "no column " << name;
        return names.front();
    }
    std::string head() const {
        std::string joined;
        for (const std::string& comment : comments) {
            joined += comment + "\n";
        }
        return joined;
    }
};

inline ReadTable readTable(const std::string& text) {
    ReadTable table;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        EXPECT_TRUE(line.ends_with('\r')) << line;
        line.pop_back();
        if (line.starts_with("#")) {
            table.comments.push_back(line);
            continue;
        }
        std::vector<std::string> fields;
        std::istringstream parts(line);
        for (std::string field; std::getline(parts, field, ',');) {
            fields.push_back(field);
        }
        if (table.names.empty()) {
            table.names = fields;
        } else {
            EXPECT_EQ(fields.size(), table.names.size()) << line;
            table.rows.push_back(fields);
        }
    }
    return table;
}

} // namespace lobewright::exchange::testing
