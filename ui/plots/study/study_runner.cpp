#include "ui/plots/study/study_runner.h"

#include "ui/base/faults.h"

LW_TEXTS_OF(Core)

namespace lobewright::ui {

namespace {
constexpr TextId cancelled = LW_TEXT("cancelled"); ///< nothing to tell
} // namespace

namespace {
/// A running study is left alone this long although a newer one waits.
constexpr auto grace = std::chrono::milliseconds(250);
} // namespace

class StudyRunner::JobMonitor final : public Monitor {
  public:
    JobMonitor(StudyRunner& runner, const Job& job)
        : runner_(runner), job_(job), begin_(Clock::now()) {}
    bool step(double, const Message&) override { return runner_.mayGoOn(job_, begin_); }

  private:
    StudyRunner& runner_;
    const Job& job_;
    Clock::time_point begin_;
};

StudyRunner::StudyRunner(QObject* parent) : QObject(parent), thread_([this] { run(); }) {}

StudyRunner::~StudyRunner() {
    {
        const std::lock_guard lock(mutex_);
        closing_ = true;
        waiting_.reset();
    }
    wake_.notify_one();
    thread_.join();
}

quint64 StudyRunner::request(Work work) {
    quint64 number = 0;
    {
        const std::lock_guard lock(mutex_);
        number = ++newest_;
        waiting_ = Job{std::move(work), number};
    }
    wake_.notify_one();
    noteBusy(true);
    return number;
}

void StudyRunner::cancel() {
    {
        const std::lock_guard lock(mutex_);
        waiting_.reset();
        oldestWanted_ = newest_ + 1;
    }
    noteBusy(false);
}

bool StudyRunner::mayGoOn(const Job& job, Clock::time_point begin) {
    const std::lock_guard lock(mutex_);
    return !closing_ && job.number >= oldestWanted_ && !(waiting_ && Clock::now() - begin > grace);
}

void StudyRunner::run() {
    std::unique_lock lock(mutex_);
    while (true) {
        wake_.wait(lock, [this] { return closing_ || waiting_; });
        if (closing_)
            return;
        const Job job = std::move(*waiting_);
        waiting_.reset();
        lock.unlock();

        JobMonitor monitor(*this, job);
        const auto sink = [this, number = job.number](const study::Point& point) {
            deliver(number, [this, point, number] { Q_EMIT pointArrived(point, number); });
        };
        auto table = guardedWork([&] { return job.work(monitor, sink); });

        lock.lock();
        const bool last = !waiting_;
        deliver(job.number, [this, table, number = job.number, last] {
            if (last && number == newest_)
                noteBusy(false);
            if (table) {
                Q_EMIT finished(*table, number);
            } else if (table.problems().front().message.text != cancelled) {
                Q_EMIT failed(table.problems(), number);
            }
        });
    }
}

void StudyRunner::deliver(quint64 number, std::function<void()> act) {
    QMetaObject::invokeMethod(
        this,
        [this, number, act = std::move(act)] {
            if (number >= oldestWanted_)
                act();
        },
        Qt::QueuedConnection);
}

void StudyRunner::noteBusy(bool busy) {
    if (busy == busy_)
        return;
    busy_ = busy;
    Q_EMIT busyChanged(busy);
}

} // namespace lobewright::ui
