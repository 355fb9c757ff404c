#pragma once

#include "core/design/design.h"
#include "core/result.h"
#include "ui/base/shown.h"

#include <QObject>

#include <atomic>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace lobewright::ui {

/// Solves designs one at a time on a thread of its own; the newest request wins. Stages whose
/// inputs stayed the same are taken over from the solution before.
class Solver : public QObject {
    Q_OBJECT

  public:
    enum class Pace {
        settled, ///< stops what is running; its result is dropped
        live     ///< lets what is running finish and show, then goes on with the newest; asks for
                 ///< pictures only (solution::Request::live)
    };
    using Work = std::function<Result<solution::Solution>(
        const design::Design&, Monitor&, const solution::Solution* previous, Pace pace)>;

    /// `work` is solution::solve unless a test watches the order of things.
    explicit Solver(QObject* parent = nullptr, Work work = {});
    /// Cancels and waits.
    ~Solver() override;

    void request(const design::Design& design, quint64 revision, Pace pace);
    /// Drops what runs and what waits; nothing of it arrives any more.
    void cancel();
    bool isBusy() const { return busy_; }

  Q_SIGNALS:
    void solved(const lobewright::ui::SolutionPointer& solution, quint64 revision, double seconds);
    void failed(const lobewright::Problems& problems, quint64 revision);
    /// At most a few times a second, and only while it takes long.
    void progressed(double fraction, const QString& what);
    void busyChanged(bool busy);

  private:
    struct Job {
        design::Design design;
        quint64 revision = 0;
        quint64 generation = 0;
        Pace pace = Pace::settled;
        std::shared_ptr<std::atomic<bool>> cancelled = std::make_shared<std::atomic<bool>>(false);
    };
    struct Answer {
        SolutionPointer solution; ///< null: see problems; both empty: cancelled
        Problems problems;
        double seconds = 0.0;
    };
    class JobMonitor;

    void run();
    void deliver(const Job& job, const Answer& answer);
    void noteBusy(bool busy);

    Work work_;
    bool busy_ = false;
    std::atomic<quint64> generation_ = 0; ///< results of older generations are dropped
    std::mutex mutex_;
    std::condition_variable wake_;
    std::optional<Job> waiting_;
    std::shared_ptr<std::atomic<bool>> runningCancelled_;
    bool closing_ = false;
    std::thread thread_; ///< last: starts when everything else stands
};

} // namespace lobewright::ui
