#pragma once

#include "core/samples.h"
#include "ui/base/palette.h"

#include <QPen>
#include <QString>

#include <string>

class QCPGraph;

namespace lobewright::ui {

/// Meaning of a curve, from which its colour follows.
enum class Tone {
    inlet,
    exhaust,
    ink,
    quiet,
    warning,
    crank,
    gearedCrank,
    fourStroke,
    fourStrokeSupplied
};
QColor colourOf(const Palette& palette, Tone tone);

/// That of a side.
inline Tone toneOf(End end) {
    return end == End::inlet ? Tone::inlet : Tone::exhaust;
}

/// How a curve is named and drawn.
struct CurveLook {
    QString label;
    QString unit; ///< metric
    QString help; ///< what the quantity is, with its symbol
    Tone tone = Tone::ink;
    Qt::PenStyle style = Qt::SolidLine;
    double width = 1.8;
    bool onRight = false;  ///< on the right axis
    bool inReadout = true; ///< named with its value at the cursor
    QString alone = {};    ///< label where the engine has one piston a cylinder; empty: the same
};

/// A curve over the turn, now and in the baseline. θ in radians, values in the unit in which that
/// of the look is shown now.
struct Curve {
    CurveLook look;
    Samples theta, values;
    Samples baselineTheta, baselineValues;
    QCPGraph* now = nullptr;
    QCPGraph* before = nullptr;
    bool visible = true;
    std::string channel{}; ///< that it shows; empty: none
};

/// "1234.5", "0.123": four or five digits, the same number for neighbouring values.
QString valueText(double value, double largest);
/// Four digits without trailing zeros, with a true minus sign.
QString shortText(double value);
/// "1399.6 … 1400.4": with as many digits as tell the width of the range.
QString endsText(double low, double high);

} // namespace lobewright::ui
