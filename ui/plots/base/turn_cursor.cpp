#include "ui/plots/base/turn_cursor.h"

#include "core/units.h"

#include <algorithm>
#include <cassert>
#include <chrono>
#include <cmath>

namespace lobewright::ui {

TurnCursor::TurnCursor(QObject* parent) : QObject(parent) {
    frames_.setTimerType(Qt::PreciseTimer);
    frames_.setInterval(std::chrono::milliseconds(25));
    connect(&frames_, &QTimer::timeout, this, &TurnCursor::advance);
}

void TurnCursor::setAngle(double theta) {
    assert(std::isfinite(theta));
    double reduced = std::fmod(theta, units::turn);
    if (reduced < 0.0)
        reduced += units::turn;
    if (reduced >= units::turn) // a tiny negative angle rounds up to a whole turn
        reduced = 0.0;
    if (reduced == angle_)
        return;
    angle_ = reduced;
    Q_EMIT angleChanged(angle_);
}

void TurnCursor::setPlaying(bool playing) {
    if (playing == isPlaying())
        return;
    if (playing) {
        sinceFrame_.start();
        frames_.start();
    } else {
        frames_.stop();
    }
    Q_EMIT playingChanged(playing);
}

void TurnCursor::setRate(double turnsPerSecond) {
    assert(turnsPerSecond > 0.0);
    if (turnsPerSecond == rate_)
        return;
    rate_ = turnsPerSecond;
}

void TurnCursor::show(double from, double to) {
    constexpr double least = 0.5 * units::degree;
    from = std::clamp(from, 0.0, units::turn - least);
    to = std::clamp(to, from + least, units::turn);
    if (from == shownFrom_ && to == shownTo_)
        return;
    shownFrom_ = from;
    shownTo_ = to;
    Q_EMIT shownChanged();
}

void TurnCursor::showWholeTurn() {
    show(0.0, units::turn);
}

void TurnCursor::advance() {
    const double seconds = static_cast<double>(sinceFrame_.nsecsElapsed()) * 1e-9;
    sinceFrame_.start();
    setAngle(angle_ + units::turn * rate_ * seconds);
}

} // namespace lobewright::ui
