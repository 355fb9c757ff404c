#pragma once

#include "core/ends.h"

#include <QColor>

class QPalette;
class QWidget;

namespace lobewright::ui {

/// Colours by meaning, the same in scene, plots and report. Told apart with every common kind of
/// colour blindness; no meaning rests on colour alone.
struct Palette {
    QColor paper;   ///< ground of drawings and plots
    QColor panel;   ///< ground of captions and readouts laid over a drawing
    QColor ink;     ///< text and outlines
    QColor quiet;   ///< secondary text, centre lines, dimension lines
    QColor grid;    ///< grid lines and ground hatching
    QColor inlet;   ///< lines and text of the inlet side
    QColor exhaust; ///< lines and text of the exhaust side
    QColor warning; ///< limits passed, lift-off, undercut; only ever used for that
    /// Engines beside this one: cranks at its shaft speed, cranks geared to its cycles, the
    /// four-stroke on ambient air and on this one's supply.
    QColor crank, gearedCrank, fourStroke, fourStrokeSupplied;
    QColor cursor;    ///< the common shaft angle
    QColor metal;     ///< cut faces of pistons and rollers
    QColor metalPale; ///< cut faces of liner and track
    QColor fresh;     ///< gas: air of the supply
    QColor burnt;     ///< gas: products
    QColor burning;   ///< gas while fuel burns
    bool isDark = false;

    QColor side(End end) const { return end == End::inlet ? inlet : exhaust; }
    /// Soft area in the hue of a side: port openings, sectors, bands.
    QColor sideFill(End end) const;
    /// Gas of a given share of products, 0 … 1 (clipped), in one of seven flat tones.
    QColor gas(double burntShare) const;
    /// The lighter tone that stands for the baseline of a quantity drawn in `colour`.
    QColor baseline(const QColor& colour) const;
    /// `share` 0 … 1 of `colour` over the paper, opaque.
    QColor tint(const QColor& colour, double share) const;

    static const Palette& lightTones();
    static const Palette& darkTones();
    /// The one that suits the window colour.
    static const Palette& of(const QPalette& palette);
    static const Palette& of(const QWidget& widget);

    /// Widget palettes in the same tones, for the whole program.
    QPalette widgetPalette() const;
};

} // namespace lobewright::ui
