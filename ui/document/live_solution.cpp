#include "ui/document/live_solution.h"

#include "core/design/schedules.h"

namespace lobewright::ui {

namespace {

constexpr int restingTime = 150;        // [ms] of a hand after which it may as well be exact
constexpr int patience = 20;            // [ms] that motion waits for the gas of the same picture
constexpr double quickSolution = 0.018; // [s]; of slower ones nothing is expected in that time

/// The quick stages, for a drag; null when one of them finds a fault.
GeometryPointer quickGeometry(const design::Design& given) {
    const design::Design design = design::atItsSpeed(given);
    const auto inlet = motion::LiftCurve::make(design.tracks.inlet);
    const auto exhaust = motion::LiftCurve::make(design.tracks[End::exhaust]);
    if (!inlet || !exhaust)
        return nullptr;
    auto pair = mechanism::OpposedPair::make(design.mechanism, {*inlet, *exhaust});
    if (!pair)
        return nullptr;
    auto timing = ports::PortTiming::make(design.ports, *pair);
    if (!timing)
        return nullptr;
    return std::make_shared<const Geometry>(Geometry{design, *pair, *timing});
}

} // namespace

LiveSolution::LiveSolution(Document& document) : document_(document) {
    connect(&solver_, &Solver::solved, this, &LiveSolution::take);
    connect(&solver_, &Solver::failed, this, &LiveSolution::failed);
    connect(&document_, &Document::editFinished, this, &LiveSolution::settle);
    settle_.setSingleShot(true);
    settle_.setInterval(restingTime);
    connect(&settle_, &QTimer::timeout, this, &LiveSolution::settle);
    geometryDue_.setSingleShot(true);
    geometryDue_.setInterval(patience);
    connect(&geometryDue_, &QTimer::timeout, this, &LiveSolution::showGeometryNow);
}

void LiveSolution::follow(Document::Change change) {
    const bool dragging = change == Document::Change::dragging;
    // Views make their next edit from what they show: never from an older design.
    if (solution_ && dragging)
        showGeometrySoon();
    else if (solution_)
        showGeometryNow();
    request(dragging ? Solver::Pace::live : Solver::Pace::settled);
}

void LiveSolution::request(Solver::Pace pace) {
    settlePending_ = pace == Solver::Pace::live;
    settle_.stop();
    solver_.request(document_.design(), document_.revision(), pace);
    Q_EMIT requested();
}

void LiveSolution::settle() {
    if (settlePending_)
        solve();
}

void LiveSolution::stop() {
    solver_.cancel();
    settlePending_ = false;
    Q_EMIT stopped();
}

bool LiveSolution::isSettled() const {
    return solution_ && solvedRevision_ == document_.revision() && !solution_->live;
}

bool LiveSolution::isQuick() const {
    return settlePending_ && liveSeconds_ <= 1e-3 * blink;
}

void LiveSolution::take(const SolutionPointer& solution, quint64 revision, double seconds) {
    solution_ = solution;
    solvedRevision_ = revision;
    geometryDue_.stop();
    Q_EMIT solved(solution, seconds);
    // A drag is ahead of the solution: motion and ports are shown as they are by now.
    if (revision != document_.revision())
        showGeometryNow();
    if (settlePending_) {
        liveSeconds_ = seconds;
        settle_.start();
    }
}

void LiveSolution::showGeometryNow() {
    geometryDue_.stop();
    if (const GeometryPointer geometry = quickGeometry(document_.design()))
        Q_EMIT geometryChanged(geometry);
}

/// A solution that comes at once paints everything in one go; painting the motion before it would
/// only delay that. Under the hand itself nothing waits.
void LiveSolution::showGeometrySoon() {
    if (liveSeconds_ > quickSolution) {
        showGeometryNow();
        return;
    }
    if (const GeometryPointer geometry = quickGeometry(document_.design()))
        Q_EMIT geometryDragged(geometry);
    if (!geometryDue_.isActive())
        geometryDue_.start();
}

} // namespace lobewright::ui
