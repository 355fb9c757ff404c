#pragma once

#include "core/editing/design_edits.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QToolButton;

namespace lobewright::ui {

/// How a track is described, at the head of its chapter: the choice, the way to knots by a
/// tolerance, and where its knots stand on plots.
class TrackShapeChoice : public QWidget {
    Q_OBJECT

  public:
    TrackShapeChoice(End end, QWidget* parent);

    void show(const design::Design& design);
    using QWidget::show;

  Q_SIGNALS:
    void shapeWanted(lobewright::editing::TrackShape shape);
    /// The person wants the track turned into knots and to see what that costs.
    void knotsWanted();

  private:
    QWidget* buildLine();

    End end_;
    QComboBox* shape_;
    QWidget* line_;
    QLabel* shift_;
    QToolButton* toKnots_;
};

} // namespace lobewright::ui
