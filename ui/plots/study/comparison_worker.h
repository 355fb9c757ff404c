#pragma once

#include "core/reference/comparison.h"
#include "ui/base/background_work.h"
#include "ui/base/shown.h"

#include <QObject>

#include <vector>

namespace lobewright::ui {

/// Compares designs in the background; the newest wish wins, older ones are stopped and their
/// results dropped. A wish waits a moment, so that a drag does not start one at every step.
class ComparisonWorker : public QObject {
    Q_OBJECT

  public:
    using Comparisons = std::vector<study::Comparison>;

    explicit ComparisonWorker(QObject* parent = nullptr);

    /// At the speed of the solution's design; its stages are taken over.
    void compare(const SolutionPointer& solution, study::Basis basis);
    /// At many speeds [rad/s].
    void compareSpeeds(const SolutionPointer& solution, study::Basis basis,
                       std::vector<double> speeds);
    void cancel() { work_.stop(); }
    bool isBusy() const { return work_.isBusy(); }

  Q_SIGNALS:
    /// One comparison for each speed.
    void finished(const lobewright::ui::ComparisonWorker::Comparisons& comparisons);
    void failed(const lobewright::Problems& problems);
    void progressed(double fraction, const QString& what);
    void busyChanged(bool busy);

  private:
    template <class Run>
    void want(Run run);

    BackgroundWork work_; ///< last: it waits for its work before the rest goes
};

} // namespace lobewright::ui
