#pragma once

#include "core/study/comparison.h"
#include "ui/plots/shown.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

namespace lobewright::ui {

/// Compares designs in the background; the newest wish wins, older ones are stopped and their
/// results dropped. A wish waits a moment, so that a drag does not start one at every step.
class ComparisonWorker : public QObject {
    Q_OBJECT

  public:
    using Comparisons = std::vector<study::Comparison>;

    explicit ComparisonWorker(QObject* parent = nullptr);
    /// Stops and waits.
    ~ComparisonWorker() override;

    /// At the speed of the solution's design; its stages are taken over.
    void compare(const SolutionPointer& solution, study::Basis basis);
    /// At many speeds [rad/s].
    void compareSpeeds(const SolutionPointer& solution, study::Basis basis,
                       std::vector<double> speeds);
    void cancel();
    bool isBusy() const { return busy_; }

  Q_SIGNALS:
    /// One comparison for each speed.
    void finished(const lobewright::ui::ComparisonWorker::Comparisons& comparisons);
    void failed(const lobewright::Problems& problems);
    void progressed(double fraction, const QString& what);
    void busyChanged(bool busy);

  private:
    using Work = std::function<Result<Comparisons>(Monitor&)>;
    struct Answer {
        Comparisons comparisons;
        Problems problems;
    };
    class StoppableMonitor;

    void want(Work work);
    void start();
    void deliver();
    void noteBusy(bool busy);

    QTimer delay_;
    QFutureWatcher<Answer> watcher_;
    std::shared_ptr<std::atomic<bool>> stopped_;
    Work next_;
    bool busy_ = false;
};

} // namespace lobewright::ui
