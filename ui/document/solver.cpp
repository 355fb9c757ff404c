#include "ui/document/solver.h"

#include "ui/base/core_text.h"
#include "ui/base/faults.h"

#include <chrono>

namespace lobewright::ui {

namespace {
using Clock = std::chrono::steady_clock;
constexpr auto progressInterval = std::chrono::milliseconds(200);

Result<solution::Solution> solveAt(const design::Design& design, Monitor& monitor,
                                   const solution::Solution* previous, Solver::Pace pace) {
    solution::Request request;
    request.live = pace == Solver::Pace::live;
    return solution::solve(design, monitor, previous, request);
}
} // namespace

class Solver::JobMonitor final : public Monitor {
  public:
    JobMonitor(Solver& solver, const Job& job)
        : solver_(solver), cancelled_(job.cancelled),
          nextReport_((Clock::now() + progressInterval).time_since_epoch().count()) {}

    bool step(double fraction, const Message& what) override {
        if (cancelled_->load(std::memory_order_relaxed))
            return false;
        const auto now = Clock::now();
        auto due = nextReport_.load();
        const auto next = (now + progressInterval).time_since_epoch().count();
        if (now.time_since_epoch().count() >= due &&
            nextReport_.compare_exchange_strong(due, next)) {
            const auto text = coreText(what);
            QMetaObject::invokeMethod(
                &solver_,
                [solver = &solver_, fraction, text] { Q_EMIT solver->progressed(fraction, text); },
                Qt::QueuedConnection);
        }
        return true;
    }

  private:
    Solver& solver_;
    std::shared_ptr<std::atomic<bool>> cancelled_;
    std::atomic<Clock::rep> nextReport_;
};

Solver::Solver(QObject* parent, Work work)
    : QObject(parent), work_(work ? std::move(work) : solveAt), thread_([this] { run(); }) {}

Solver::~Solver() {
    {
        const std::lock_guard lock(mutex_);
        closing_ = true;
        waiting_.reset();
        if (runningCancelled_)
            *runningCancelled_ = true;
    }
    wake_.notify_one();
    thread_.join();
}

void Solver::request(const design::Design& design, quint64 revision, Pace pace) {
    {
        const std::lock_guard lock(mutex_);
        if (pace == Pace::settled) {
            ++generation_;
            if (runningCancelled_)
                *runningCancelled_ = true;
        }
        waiting_ = Job{design, revision, generation_, pace};
    }
    wake_.notify_one();
    noteBusy(true);
}

void Solver::cancel() {
    {
        const std::lock_guard lock(mutex_);
        ++generation_;
        waiting_.reset();
        if (runningCancelled_)
            *runningCancelled_ = true;
    }
    noteBusy(false);
}

void Solver::run() {
    std::shared_ptr<const solution::Solution> previous;
    std::unique_lock lock(mutex_);
    while (true) {
        wake_.wait(lock, [this] { return closing_ || waiting_; });
        if (closing_)
            return;
        const Job job = std::move(*waiting_);
        waiting_.reset();
        runningCancelled_ = job.cancelled;
        lock.unlock();

        JobMonitor monitor(*this, job);
        const auto begin = Clock::now();
        auto result =
            guardedWork([&] { return work_(job.design, monitor, previous.get(), job.pace); });
        const std::chrono::duration<double> taken = Clock::now() - begin;
        Answer answer{nullptr, {}, taken.count()};
        if (result) {
            previous = answer.solution =
                std::make_shared<const solution::Solution>(std::move(result).value());
        } else if (!*job.cancelled)
            answer.problems = result.problems();

        lock.lock();
        runningCancelled_.reset(); // before delivery, which asks whether anything is left to do
        QMetaObject::invokeMethod(
            this, [this, job, answer] { deliver(job, answer); }, Qt::QueuedConnection);
    }
}

void Solver::deliver(const Job& job, const Answer& answer) {
    if (job.generation != generation_)
        return;
    bool idle = false;
    {
        const std::lock_guard lock(mutex_);
        idle = !waiting_ && !runningCancelled_;
    }
    if (idle)
        noteBusy(false);
    if (answer.solution) {
        Q_EMIT solved(answer.solution, job.revision, answer.seconds);
    } else if (!answer.problems.empty()) {
        Q_EMIT failed(answer.problems, job.revision);
    }
}

void Solver::noteBusy(bool busy) {
    if (busy == busy_)
        return;
    busy_ = busy;
    Q_EMIT busyChanged(busy);
}

} // namespace lobewright::ui
