#pragma once

#include "core/monitor.h"
#include "ui/base/faults.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <atomic>
#include <functional>
#include <memory>

namespace lobewright::ui {

/// Long work beside the window, one at a time: what is wanted next stops what runs.
class BackgroundWork : public QObject {
    Q_OBJECT

  public:
    /// What the thread of the window does with what was found.
    using Delivery = std::function<void()>;
    /// On a thread of its own; must look at nothing that the window may change.
    using Work = std::function<Delivery(Monitor&)>;

    explicit BackgroundWork(QObject* parent = nullptr);
    ~BackgroundWork() override; ///< stops and waits

    /// Starts once nothing else was wanted for so long [ms].
    void want(Work work, int settlingTime = 0);
    /// The same for work that gives a Result: `take` has it on the thread of the window, a fault
    /// too.
    template <class Run, class Take>
    void wantAnswer(Run run, Take take, int settlingTime = 0) {
        want(
            [run = std::move(run), take = std::move(take)](Monitor& monitor) -> Delivery {
                auto answer = guardedWork([&] { return run(monitor); });
                return [take, answer = std::make_shared<decltype(answer)>(std::move(answer))] {
                    take(std::move(*answer));
                };
            },
            settlingTime);
    }
    /// Nothing is delivered any more.
    void stop();
    bool isBusy() const { return isBusy_; }
    /// 0 … 1, of what was started last.
    double progress() const { return progress_; }

  Q_SIGNALS:
    /// 0 … 1 and what is done, some ten times a second.
    void progressed(double fraction, const QString& what);
    void busyChanged(bool busy);

  private:
    class StoppableMonitor;
    void start();
    void deliver();
    void noteBusy(bool busy);

    QTimer delay_;
    QFutureWatcher<Delivery> watcher_;
    Work next_;
    std::shared_ptr<std::atomic<bool>> stopped_; ///< of what runs
    double progress_ = 0.0;
    bool isBusy_ = false;
};

} // namespace lobewright::ui
