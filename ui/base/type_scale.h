#pragma once

#include <QFont>

namespace lobewright::ui {

/// The four sizes of letters in the window. They are shares of the size that the person has chosen
/// for the desktop, so that everything grows together; at the usual 10.5 pt on 96 dots an inch they
/// are 12, 14, 17 and 22 px high.
enum class TypeSize {
    small,   ///< numbers of axes, names above values
    body,    ///< everything else
    heading, ///< what a pane says first
    title    ///< one line on a page
};
/// `base` in another size, its other properties kept; `base`: of size `body`, its size in points.
QFont sized(const QFont& base, TypeSize size);
/// Where words do not fit their room: `share` of the size, at least 0.7 of it, at most all.
QFont fitted(const QFont& base, double share);
QFont inBold(QFont base);

/// Distances between widgets and at their edges [px], in steps of four.
namespace spacing {
constexpr int tight = 4;  ///< parts of one line
constexpr int normal = 8; ///< neighbours, and the edge of a page
constexpr int wide = 16;  ///< groups
} // namespace spacing

} // namespace lobewright::ui
