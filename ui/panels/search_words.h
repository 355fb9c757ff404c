#pragma once

#include <QString>

#include <string>

namespace lobewright::ui {

/// Whether people who type this word look for the number at this path, though neither its name nor
/// its explanation has the word: "compression" is set by the crown clearance.
bool isMeantBy(const std::string& path, const QString& typed);

} // namespace lobewright::ui
