#pragma once

#include "ui/document/document.h"
#include "ui/document/solver.h"

#include <QObject>
#include <QTimer>

namespace lobewright::ui {

/// Keeps up with a document: solves what it holds at the pace of the hand, and gives motion and
/// ports ahead of the rest.
class LiveSolution : public QObject {
    Q_OBJECT

  public:
    explicit LiveSolution(Document& document);

    Solver& solver() { return solver_; }
    /// Of the newest design that could be solved; null before the first.
    const SolutionPointer& solution() const { return solution_; }
    bool isBusy() const { return solver_.isBusy(); }
    /// There is a solution of the present design, more than a picture under the hand.
    bool isSettled() const;
    /// The next picture is there before words about it could be read.
    bool isQuick() const;

    /// The design has changed.
    void follow(Document::Change change);
    void solve() { request(Solver::Pace::settled); }
    /// The solution stays that of an earlier input.
    void stop();

    static constexpr int blink = 150; ///< [ms] that nobody needs to be told of

  Q_SIGNALS:
    /// The solution is of an earlier input from now on.
    void requested();
    void solved(const lobewright::ui::SolutionPointer& solution, double seconds);
    void failed(const lobewright::Problems& problems);
    void stopped();
    void geometryChanged(const lobewright::ui::GeometryPointer& geometry);
    /// For the view under the hand: all others get it with the solution, or soon.
    void geometryDragged(const lobewright::ui::GeometryPointer& geometry);

  private:
    void request(Solver::Pace pace);
    void take(const SolutionPointer& solution, quint64 revision, double seconds);
    void showGeometryNow();
    void showGeometrySoon();
    void settle();

    Document& document_;
    Solver solver_;
    SolutionPointer solution_;
    quint64 solvedRevision_ = 0;
    bool settlePending_ = false; ///< the newest request was for a picture under the hand
    double liveSeconds_ = 1.0;   ///< that the last such picture took to solve
    QTimer settle_, geometryDue_;
};

} // namespace lobewright::ui
