#pragma once

#include "ui/plots/shown.h"

#include <QWidget>

namespace lobewright::ui::test {

/// Two lobes, three cylinders, 64 mm bore, 36 mm stroke; ports of both sides well inside it.
design::Design twoLobeDesign();

GeometryPointer geometryOf(const design::Design& design);

/// A solution with the geometry of the design and a made-up, smooth gas: pressure follows
/// p·V^1.3, contact force the pressure, with lift-off over 20 ° after outer dead centre.
SolutionPointer inventedSolution(const design::Design& design);

/// Saves a picture of the widget at a size, in light or dark tones, to the folder named by
/// LOBEWRIGHT_PICTURES, if that is set.
void keepPicture(QWidget& widget, const QString& name);

/// Light and dark tones for a widget of its own.
void useTones(QWidget& widget, bool dark);

} // namespace lobewright::ui::test
