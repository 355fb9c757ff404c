#include "ui/plots/comparison_worker.h"

#include "ui/core_text.h"
#include "ui/faults.h"

#include <QtConcurrent>

#include <chrono>

namespace lobewright::ui {

namespace {
constexpr int settlingTime = 250; // [ms]
constexpr auto reportInterval = std::chrono::milliseconds(100);
} // namespace

class ComparisonWorker::StoppableMonitor final : public Monitor {
  public:
    StoppableMonitor(ComparisonWorker& worker, std::shared_ptr<std::atomic<bool>> stopped)
        : worker_(worker), stopped_(std::move(stopped)) {}

    bool step(double fraction, const Message& what) override {
        const auto now = std::chrono::steady_clock::now().time_since_epoch().count();
        auto due = due_.load();
        const auto next = now + std::chrono::steady_clock::duration(reportInterval).count();
        if (now >= due && due_.compare_exchange_strong(due, next) && !*stopped_) {
            const auto text = coreText(what);
            QMetaObject::invokeMethod(
                &worker_,
                [worker = &worker_, stopped = stopped_, fraction, text] {
                    if (!*stopped)
                        Q_EMIT worker->progressed(fraction, text);
                },
                Qt::QueuedConnection);
        }
        return !*stopped_;
    }

  private:
    ComparisonWorker& worker_;
    std::shared_ptr<std::atomic<bool>> stopped_;
    std::atomic<std::chrono::steady_clock::rep> due_ = 0;
};

ComparisonWorker::ComparisonWorker(QObject* parent) : QObject(parent) {
    delay_.setSingleShot(true);
    delay_.setInterval(settlingTime);
    connect(&delay_, &QTimer::timeout, this, &ComparisonWorker::start);
    connect(&watcher_, &QFutureWatcher<Answer>::finished, this, &ComparisonWorker::deliver);
}

ComparisonWorker::~ComparisonWorker() {
    watcher_.disconnect(this);
    if (stopped_)
        *stopped_ = true;
    watcher_.waitForFinished();
}

void ComparisonWorker::compare(const SolutionPointer& solution, study::Basis basis) {
    want([solution, basis](Monitor& monitor) -> Result<Comparisons> {
        auto result = study::compare(solution->design, basis, monitor, solution.get());
        if (!result)
            return result.problems();
        return Comparisons{std::move(result).value()};
    });
}

void ComparisonWorker::compareSpeeds(const SolutionPointer& solution, study::Basis basis,
                                     std::vector<double> speeds) {
    want([solution, basis, speeds = std::move(speeds)](Monitor& monitor) {
        return study::compareSpeeds(solution->design, speeds, basis, monitor);
    });
}

void ComparisonWorker::cancel() {
    delay_.stop();
    next_ = {};
    if (stopped_)
        *stopped_ = true;
    noteBusy(false);
}

void ComparisonWorker::want(Work work) {
    if (stopped_)
        *stopped_ = true;
    next_ = std::move(work);
    delay_.start();
    noteBusy(true);
}

void ComparisonWorker::start() {
    if (watcher_.isRunning())
        return; // deliver() goes on with what waits
    stopped_ = std::make_shared<std::atomic<bool>>(false);
    watcher_.setFuture(
        QtConcurrent::run([this, work = std::exchange(next_, {}), stopped = stopped_] {
            StoppableMonitor monitor(*this, stopped);
            auto result = guardedWork([&] { return work(monitor); });
            return result ? Answer{std::move(result).value(), {}} : Answer{{}, result.problems()};
        }));
}

void ComparisonWorker::deliver() {
    if (*stopped_) {
        if (next_ && !delay_.isActive())
            start();
        return;
    }
    noteBusy(false);
    const Answer answer = watcher_.result();
    if (answer.problems.empty())
        Q_EMIT finished(answer.comparisons);
    else
        Q_EMIT failed(answer.problems);
}

void ComparisonWorker::noteBusy(bool busy) {
    if (busy == busy_)
        return;
    busy_ = busy;
    Q_EMIT busyChanged(busy);
}

} // namespace lobewright::ui
