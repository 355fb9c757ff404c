#include "ui/plots/study/comparison_worker.h"

namespace lobewright::ui {

namespace {
constexpr int shortPause = 250; // [ms]
} // namespace

ComparisonWorker::ComparisonWorker(QObject* parent) : QObject(parent) {
    connect(&work_, &BackgroundWork::progressed, this, &ComparisonWorker::progressed);
    connect(&work_, &BackgroundWork::busyChanged, this, &ComparisonWorker::busyChanged);
}

template <class Run>
void ComparisonWorker::want(Run run) {
    work_.wantAnswer(
        std::move(run),
        [this](const Result<Comparisons>& answer) {
            if (answer) {
                Q_EMIT finished(*answer);
            } else {
                Q_EMIT failed(answer.problems());
            }
        },
        shortPause);
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

} // namespace lobewright::ui
