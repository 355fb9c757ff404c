#pragma once

#include "core/result.h"
#include "core/study/operating_points.h"

#include <QObject>

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace lobewright::ui {

/// Runs studies one at a time on a thread of its own; the newest wins. A study that has just begun
/// is given a moment to end, so that a drag shows whole curves on the way if they are quick.
class StudyRunner : public QObject {
    Q_OBJECT

  public:
    using Work = std::function<Result<study::Table>(Monitor&, const study::PointSink&)>;

    explicit StudyRunner(QObject* parent = nullptr);
    /// Cancels and waits.
    ~StudyRunner() override;

    /// Points and tables arrive with the number returned here.
    quint64 request(Work work);
    /// Drops what runs and what waits; nothing of it arrives any more.
    void cancel();
    bool isBusy() const { return busy_; }

  Q_SIGNALS:
    void pointArrived(const lobewright::study::Point& point, quint64 number);
    void finished(const lobewright::study::Table& table, quint64 number);
    void failed(const lobewright::Problems& problems, quint64 number);
    void busyChanged(bool busy);

  private:
    using Clock = std::chrono::steady_clock;
    struct Job {
        Work work;
        quint64 number = 0;
    };
    class JobMonitor;

    void run();
    bool mayGoOn(const Job& job, Clock::time_point begin);
    /// Calls `act` on the thread of the window unless the job was cancelled by then.
    void deliver(quint64 number, std::function<void()> act);
    void noteBusy(bool busy);

    bool busy_ = false;
    std::mutex mutex_;
    std::condition_variable wake_;
    std::optional<Job> waiting_;
    bool closing_ = false;
    quint64 newest_ = 0;
    quint64 oldestWanted_ = 0; ///< jobs before this one were cancelled
    std::thread thread_;       ///< last: starts when everything else stands
};

} // namespace lobewright::ui
