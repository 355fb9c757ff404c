#include "ui/document/baseline.h"

namespace lobewright::ui {

Baseline::Baseline(QObject* parent) : QObject(parent) {
    connect(&solver_, &Solver::solved, this,
            [this](const SolutionPointer& solution, quint64 number) {
                if (number != wanted_)
                    return;
                solution_ = solution;
                Q_EMIT changed();
            });
    connect(&solver_, &Solver::failed, this, [this](const Problems& problems, quint64 number) {
        if (number == wanted_)
            Q_EMIT failed(problems);
    });
}

void Baseline::keep(const SolutionPointer& solution, const QString& name) {
    ++wanted_;
    solver_.cancel();
    solution_ = solution;
    name_ = name;
    Q_EMIT changed();
}

void Baseline::keep(const design::Design& design, const QString& name) {
    ++wanted_;
    name_ = name;
    solver_.request(design, wanted_, Solver::Pace::settled);
}

void Baseline::forget() {
    keep(SolutionPointer(), {});
}

} // namespace lobewright::ui
