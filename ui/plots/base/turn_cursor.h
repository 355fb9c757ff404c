#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace lobewright::ui {

/// The shaft angle that scene and plots show together, and its playing in slow motion.
/// One object per window; every view reads it, any view may set it.
class TurnCursor : public QObject {
    Q_OBJECT

  public:
    explicit TurnCursor(QObject* parent = nullptr);

    /// Shaft angle θ [rad] in [0, 2π).
    double angle() const { return angle_; }
    bool isPlaying() const { return frames_.isActive(); }
    /// Speed on screen [shaft turns per second], > 0.
    double rate() const { return rate_; }

    /// Part of the turn that the plots show [rad], 0 ≤ from < to ≤ 2π.
    double shownFrom() const { return shownFrom_; }
    double shownTo() const { return shownTo_; }

  public Q_SLOTS:
    /// Any finite angle [rad]; reduced to one turn. Playing goes on from there.
    void setAngle(double theta);
    void setPlaying(bool playing);
    void togglePlaying() { setPlaying(!isPlaying()); }
    /// > 0 [shaft turns per second]
    void setRate(double turnsPerSecond);
    /// Clipped to one turn and to no less than half a degree.
    void show(double from, double to);
    void showWholeTurn();

  Q_SIGNALS:
    void angleChanged(double theta);
    void playingChanged(bool playing);
    void shownChanged();

  private:
    void advance();

    double angle_ = 0.0;
    double rate_ = 0.2;
    double shownFrom_ = 0.0, shownTo_ = 6.283185307179586;
    QTimer frames_;
    QElapsedTimer sinceFrame_;
};

} // namespace lobewright::ui
