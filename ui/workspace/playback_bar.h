#pragma once

#include "ui/plots/shown.h"
#include "ui/plots/turn_cursor.h"
#include "ui/plots/turn_events.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QSlider;
class QToolButton;

namespace lobewright::ui {

/// Plays the turn in slow motion, steps from event to event, and says where the shaft stands in
/// shaft and in cycle degrees.
class PlaybackBar : public QWidget {
    Q_OBJECT

  public:
    explicit PlaybackBar(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);

  public Q_SLOTS:
    void toNextEvent() { stepToEvent(+1); }
    void toPreviousEvent() { stepToEvent(-1); }

  private:
    void stepToEvent(int direction);
    void showAngle();
    void showPlaying();
    void applyFactor();

    TurnCursor& cursor_;
    GeometryPointer geometry_;
    std::vector<double> stops_; ///< angles of the events [rad]
    QToolButton *previous_, *play_, *next_;
    QSlider* slider_;
    QDoubleSpinBox* angle_;
    QLabel* cycle_;
    QComboBox* factor_;
    bool factorChosen_ = false;
};

} // namespace lobewright::ui
