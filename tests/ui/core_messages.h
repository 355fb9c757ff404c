#pragma once

#include <QStringList>

namespace lobewright::ui::test {

/// What the sources of the core say to people: sentences and words as they are, and formats with
/// their places ("the ring stands {:.6g} mm from the crown; …"). Formulas, keys and texts that only
/// stand in exported files are left out.
QStringList coreLiterals();

} // namespace lobewright::ui::test
