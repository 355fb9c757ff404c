#pragma once

#include "core/monitor.h"
#include "core/result.h"
#include "ui/faults.h"

#include <QFutureWatcher>
#include <QtConcurrent>

#include <atomic>
#include <functional>
#include <memory>
#include <utility>

namespace lobewright::ui {

/// One piece of work at a time away from the window; the newest wins, an older one is stopped and
/// its answer dropped.
template <class Answer>
class LatestAnswer {
  public:
    using Work = std::function<Result<Answer>(Monitor&)>;

    /// take: called on the thread of the window with every answer that was not stopped.
    explicit LatestAnswer(std::function<void(Result<Answer>)> take) : take_(std::move(take)) {
        QObject::connect(&watcher_, &QFutureWatcherBase::finished, &watcher_,
                         [this] { deliver(); });
    }
    /// Stops and waits.
    ~LatestAnswer() {
        watcher_.disconnect();
        stop();
        watcher_.waitForFinished();
    }
    LatestAnswer(const LatestAnswer&) = delete;
    LatestAnswer& operator=(const LatestAnswer&) = delete;

    void start(Work work) {
        stop();
        next_ = std::move(work);
        if (!watcher_.isRunning())
            startNext();
    }
    void stop() {
        next_ = {};
        if (state_)
            state_->stopped = true;
    }
    bool isBusy() const { return next_ || (watcher_.isRunning() && !state_->stopped); }
    /// 0 … 1
    double progress() const { return state_ ? state_->fraction.load() : 0.0; }

  private:
    struct State {
        std::atomic<bool> stopped = false;
        std::atomic<double> fraction = 0.0;
    };
    class StateMonitor final : public Monitor {
      public:
        explicit StateMonitor(State& state) : state_(state) {}
        bool step(double fraction, const Message&) override {
            state_.fraction = fraction;
            return !state_.stopped;
        }

      private:
        State& state_;
    };
    using Kept = std::shared_ptr<Result<Answer>>;

    void startNext() {
        state_ = std::make_shared<State>();
        watcher_.setFuture(QtConcurrent::run([work = std::exchange(next_, {}), state = state_] {
            StateMonitor monitor(*state);
            return std::make_shared<Result<Answer>>(guardedWork([&] { return work(monitor); }));
        }));
    }
    void deliver() {
        const bool isWanted = !state_->stopped;
        const Kept answer = watcher_.result();
        if (next_)
            startNext();
        if (isWanted)
            take_(std::move(*answer));
    }

    std::function<void(Result<Answer>)> take_;
    QFutureWatcher<Kept> watcher_;
    std::shared_ptr<State> state_;
    Work next_;
};

} // namespace lobewright::ui
