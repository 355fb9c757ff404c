#pragma once

#include <QString>

namespace lobewright::ui::test {

/// A word that no German sentence has; empty: there is none. What stands in quotation marks is
/// somebody's own words, and titles of books and paths in a file are what they are.
QString englishIn(QString text);

} // namespace lobewright::ui::test
