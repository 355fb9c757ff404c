#pragma once

#include <QColor>
#include <QImage>

#include <array>

namespace lobewright::ui::test {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

/// Kinds of colour sight: of three primaries, and of two where one is missing.
struct Sight {
    const char* name;
    Matrix matrix; ///< for linear RGB; each row sums to 1, so that greys stay grey
};
/// Everybody's first, then protanopia, deuteranopia, tritanopia.
const std::array<Sight, 4>& sights();

Triple times(const Matrix& matrix, const Triple& vector);
/// Linear RGB of a colour of the screen.
Triple linearRgb(const QColor& colour);
/// A colour, and a whole picture, as somebody of that sight sees it.
QColor seenBy(const Sight& sight, const QColor& colour);
QImage seenBy(const Sight& sight, const QImage& picture);

/// CIEDE2000 colour difference of two colours of the screen, white point D65.
double colourDifference(const QColor& a, const QColor& b);
/// The same of two colours in CIE L*a*b*.
double ciede2000(const Triple& a, const Triple& b);

} // namespace lobewright::ui::test
