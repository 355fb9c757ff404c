#pragma once

#include "ui/base/shown.h"
#include "ui/scene/base/turn_view.h"

#include <QObject>
#include <QWidget>

#include <vector>

namespace lobewright::ui::test {

/// Two lobes, three cylinders, 64 mm bore, 36 mm stroke; ports of both sides well inside it.
design::Design twoLobeDesign();

GeometryPointer geometryOf(const design::Design& design);

/// A solution with the geometry of the design and a made-up, smooth gas: pressure follows
/// p·V^1.3, contact force the pressure, with lift-off over 20 ° after outer dead centre.
SolutionPointer inventedSolution(const design::Design& design);

/// A sample of the program, solved; by file name without ".lobewright.json".
SolutionPointer solvedSample(const char* name);

/// Stands in for the document: applies what a view asks for and shows it the result.
class Applied : public QObject {
  public:
    Applied(TurnView& view, const design::Design& design);

    const design::Design& design() const { return design_; }
    const std::vector<Edit>& edits() const { return edits_; }
    int finished() const { return finished_; }

  private:
    design::Design design_;
    std::vector<Edit> edits_;
    int finished_ = 0;
};

/// The handle of this key, as drawn now; throws when there is none.
const Handle& handleNamed(const TurnView& view, const std::string& key);

/// Presses, moves in steps and releases the left button.
void dragMouse(QWidget& widget, const QPointF& from, const QPointF& to,
               Qt::KeyboardModifiers modifiers = Qt::NoModifier, bool release = true);

/// From a point to a stretch of a line.
double distanceToStretch(const QPointF& point, const QPointF& from, const QPointF& to);

/// The widget's picture is of its theme and not empty: its prevailing tone is as light or dark as
/// the ground of its palette, other tones cover a share of it, and what is written lies on it.
/// Saved to the folder named by LOBEWRIGHT_PICTURES as well, if that is set.
void expectPicture(QWidget& widget, const QString& name);

/// Light and dark tones for a widget of its own.
void useTones(QWidget& widget, bool dark);

} // namespace lobewright::ui::test
