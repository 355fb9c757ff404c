#include "ui/base/background_work.h"

#include "ui/base/core_text.h"

#include <QtConcurrent>

#include <chrono>
#include <utility>

namespace lobewright::ui {

namespace {
constexpr auto reportInterval = std::chrono::milliseconds(100);
} // namespace

class BackgroundWork::StoppableMonitor final : public Monitor {
  public:
    StoppableMonitor(BackgroundWork& work, std::shared_ptr<std::atomic<bool>> stopped)
        : work_(work), stopped_(std::move(stopped)) {}

    bool step(double fraction, const Message& what) override {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        auto due = due_.load();
        if (now.count() >= due &&
            due_.compare_exchange_strong(
                due, (now + std::chrono::steady_clock::duration(reportInterval)).count())) {
            QMetaObject::invokeMethod(
                &work_,
                [work = &work_, stopped = stopped_, fraction, text = coreText(what)] {
                    if (*stopped)
                        return;
                    work->progress_ = fraction;
                    Q_EMIT work->progressed(fraction, text);
                },
                Qt::QueuedConnection);
        }
        return !*stopped_;
    }

  private:
    BackgroundWork& work_;
    std::shared_ptr<std::atomic<bool>> stopped_;
    std::atomic<std::chrono::steady_clock::rep> due_ = 0; ///< the next report
};

BackgroundWork::BackgroundWork(QObject* parent) : QObject(parent) {
    delay_.setSingleShot(true);
    connect(&delay_, &QTimer::timeout, this, &BackgroundWork::start);
    connect(&watcher_, &QFutureWatcher<Delivery>::finished, this, &BackgroundWork::deliver);
}

BackgroundWork::~BackgroundWork() {
    watcher_.disconnect(this);
    if (stopped_)
        *stopped_ = true;
    watcher_.waitForFinished();
}

void BackgroundWork::want(Work work, int settlingTime) {
    if (stopped_)
        *stopped_ = true;
    next_ = std::move(work);
    delay_.start(settlingTime);
    noteBusy(true);
}

void BackgroundWork::stop() {
    delay_.stop();
    next_ = {};
    if (stopped_)
        *stopped_ = true;
    noteBusy(false);
}

void BackgroundWork::start() {
    if (watcher_.isRunning())
        return; // deliver() goes on with what waits
    stopped_ = std::make_shared<std::atomic<bool>>(false);
    progress_ = 0.0;
    watcher_.setFuture(QtConcurrent::run(
        [this, work = std::exchange(next_, {}), stopped = stopped_]() -> Delivery {
            StoppableMonitor monitor(*this, stopped);
            Delivery delivery;
            // A fault was noted already; then there is nothing to deliver.
            [[maybe_unused]] const auto done = guardedWork([&]() -> Result<bool> {
                delivery = work(monitor);
                return true;
            });
            return delivery;
        }));
}

void BackgroundWork::deliver() {
    if (*stopped_) {
        if (next_ && !delay_.isActive())
            start();
        return;
    }
    noteBusy(false);
    if (const Delivery delivery = watcher_.result())
        delivery();
}

void BackgroundWork::noteBusy(bool busy) {
    if (busy != isBusy_) {
        isBusy_ = busy;
        Q_EMIT busyChanged(busy);
    }
}

} // namespace lobewright::ui
