#pragma once

#include "core/result.h"
#include "ui/base/shown.h"
#include "ui/document/solver.h"

#include <QObject>
#include <QString>

namespace lobewright::ui {

/// The design that the present one is compared with, with its solution.
class Baseline : public QObject {
    Q_OBJECT

  public:
    explicit Baseline(QObject* parent = nullptr);

    /// Null: none, or not solved yet.
    const SolutionPointer& solution() const { return solution_; }
    const QString& name() const { return name_; }

    void keep(const SolutionPointer& solution, const QString& name);
    /// Solves it in the background first.
    void keep(const design::Design& design, const QString& name);
    void forget();

  Q_SIGNALS:
    void changed();
    void failed(const lobewright::Problems& problems);

  private:
    Solver solver_;
    SolutionPointer solution_;
    QString name_;
    quint64 wanted_ = 0;
};

} // namespace lobewright::ui
