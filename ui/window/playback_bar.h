#pragma once

#include "ui/base/shown.h"
#include "ui/plots/base/turn_cursor.h"
#include "ui/plots/base/turn_events.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QMenu;
class QToolButton;

namespace lobewright::ui {

class Scrubber;

/// Plays the turn in slow motion, steps from event to event, and says where the shaft stands in
/// shaft and in cycle degrees.
class PlaybackBar : public QWidget {
    Q_OBJECT

  public:
    explicit PlaybackBar(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    /// 1 : factor of the shaft speed for designs opened from now on; 0: suited to their speed. A
    /// choice made in the bar itself stands.
    void setUsualFactor(int factor);
    /// The factor now; 0 before there is a design.
    int factor() const;
    /// A narrow window leaves out what else is said or chosen elsewhere.
    QSize minimumSizeHint() const override;

    /// Playing and stepping from event to event.
    void addTo(QMenu& menu);

    static const std::vector<int>& slowMotionFactors();
    /// "Slowed 1 : 20".
    static QString slowMotionText(int factor);

  public Q_SLOTS:
    void toNextEvent() { stepToEvent(+1); }
    void toPreviousEvent() { stepToEvent(-1); }

  Q_SIGNALS:
    /// The sheet of arrangements is wanted, beside this button.
    void arrangementsWanted(const QWidget& beside);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void stepToEvent(int direction);
    void showAngle();
    void showPlaying();
    void applyFactor();
    void chooseUsualFactor();

    TurnCursor& cursor_;
    GeometryPointer geometry_;
    std::vector<double> stops_; ///< angles of the events [rad]
    QToolButton *arrangements_, *previous_, *play_, *next_;
    Scrubber* slider_;
    QDoubleSpinBox* angle_;
    QLabel *shaft_, *cycle_;
    QComboBox* factor_;
    bool factorChosen_ = false;
    int usualFactor_ = 0; ///< 0: suited to the speed
};

} // namespace lobewright::ui
