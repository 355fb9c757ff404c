// How far the window is behind the hand: needs a screen (xvfb-run -a
// build/release/tests/bench/bench_window). Run with every plot of the designer's arrangement in
// sight.
#include "core/design/schedules.h"
#include "core/units.h"
#include "tests/places.h"
#include "ui/base/look.h"
#include "ui/document/samples.h"
#include "ui/scene/base/turn_view.h"
#include "ui/window/arrangement.h"
#include "ui/window/main_window.h"
#include "ui/window/pane_grid.h"

#include <QApplication>
#include <QDir>
#include <QMouseEvent>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <ctime>

namespace {

using namespace lobewright;
using namespace lobewright::ui;
using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point begin) {
    return std::chrono::duration<double>(Clock::now() - begin).count();
}

/// Of the window's thread alone: what its work takes on a machine with nothing else to do.
double threadSeconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

double quantile(std::vector<double> times, double share) {
    std::sort(times.begin(), times.end());
    const auto last = static_cast<double>(times.size() - 1);
    return times[static_cast<size_t>(share * last)];
}

void report(benchmark::State& state, const std::vector<double>& times) {
    state.counters["p50_ms"] = 1e3 * quantile(times, 0.5);
    state.counters["p95_ms"] = 1e3 * quantile(times, 0.95);
    state.counters["worst_ms"] = 1e3 * quantile(times, 1.0);
}

bool isSettled(MainWindow& window) {
    return !window.solver().isBusy() && window.solution() &&
           window.solution()->design == design::atItsSpeed(window.document().design());
}

std::unique_ptr<MainWindow> openedOn(const QString& sample, const QTemporaryDir& recovery) {
    auto window = std::make_unique<MainWindow>(MainWindow::Options{recovery.path(), false});
    window->resize(1280, 800);
    window->show();
    window->openFile(QString::fromStdString(test::sourceFolder() + "/samples/") + sample +
                     QStringLiteral(".lobewright.json"));
    window->arrange(QStringLiteral("designer"));
    if (!QTest::qWaitFor([&] { return isSettled(*window); }, 60000))
        std::abort();
    QTest::qWait(200);
    return window;
}

void send(QWidget& widget, QEvent::Type type, const QPointF& at) {
    QMouseEvent event(
        type, at, widget.mapToGlobal(at), type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton,
        type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
}

/// The first handle of the unrolled tracks that moves a piece of a lobe.
std::optional<QPointF> lobeHandle(TurnView& view) {
    for (const Handle& handle : view.handles()) {
        const bool ofLobe = handle.key.find("knots/1") != std::string::npos ||
                            handle.key.find("segments/0") != std::string::npos;
        if (ofLobe && view.rect().contains(handle.at.toPoint()))
            return handle.at;
    }
    return {};
}

/// From a mouse move on a lobe to the repaint of what the geometry decides (`solved` false), or of
/// every plot with the new solution.
void dragLobe(benchmark::State& state, const char* sample, bool solved) {
    const QTemporaryDir recovery;
    const auto window = openedOn(QString::fromLatin1(sample), recovery);
    auto& view = dynamic_cast<TurnView&>(*window->views().find(QStringLiteral("tracks"))->widget);
    const auto start = lobeHandle(view);
    if (!start) {
        state.SkipWithError("no handle of a lobe in sight");
        return;
    }
    send(view, QEvent::MouseButtonPress, *start);
    std::vector<double> times, own; // until repainted, and of it in the window's thread
    std::vector<double> solving;    // in the background, of it
    QObject::connect(&window->solver(), &Solver::solved, window.get(),
                     [&solving](const SolutionPointer&, quint64, double seconds) {
                         solving.push_back(seconds);
                     });
    int step = 0;
    for (auto _ : state) {
        const double phase = 0.4 * ++step;
        const quint64 before = window->document().revision();
        const auto begin = Clock::now();
        const double ownBegin = threadSeconds();
        send(view, QEvent::MouseMove,
             *start + QPointF(6.0 * std::sin(phase), 5.0 * std::sin(0.7 * phase)));
        QApplication::processEvents();
        if (solved) {
            while (!isSettled(*window))
                QApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents,
                                            5);
            QApplication::processEvents();
        }
        const double taken = secondsSince(begin), ownTaken = threadSeconds() - ownBegin;
        if (!solved && !QTest::qWaitFor([&] { return isSettled(*window); }, 10000))
            state.SkipWithError("not solved within ten seconds");
        if (window->document().revision() != before) {
            times.push_back(taken);
            own.push_back(ownTaken);
        }
        state.SetIterationTime(taken);
    }
    send(view, QEvent::MouseButtonRelease, *start);
    if (times.size() < 20)
        state.SkipWithError("the drag changed nothing");
    else
        report(state, times);
    if (!own.empty())
        state.counters["own_p95_ms"] = 1e3 * quantile(own, 0.95);
    if (!solving.empty())
        state.counters["solve_p95_ms"] = 1e3 * quantile(solving, 0.95);
}

/// From the cursor's move to its repaint in every pane.
void turnShaft(benchmark::State& state, const char* arrangement) {
    const QTemporaryDir recovery;
    const auto window = openedOn(QStringLiteral("biogas-pump-set"), recovery);
    window->arrange(QString::fromLatin1(arrangement));
    QTest::qWait(300);
    std::vector<double> times;
    double angle = 0.0;
    for (auto _ : state) {
        const auto begin = Clock::now();
        window->cursor().setAngle(angle += 0.05);
        QApplication::processEvents();
        times.push_back(secondsSince(begin));
        state.SetIterationTime(times.back());
    }
    report(state, times);
}

double processorSeconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

/// A playing shaft at 1280 × 800: from one angle to the next, every pane repainted. Frames a second
/// that a machine with nothing else to do reaches, for the time counted is that of the processor.
void play(benchmark::State& state, const char* arrangement, const char* view) {
    const QTemporaryDir recovery;
    const auto window = openedOn(QStringLiteral("biogas-pump-set"), recovery);
    window->arrange(QString::fromLatin1(arrangement));
    if (*view)
        window->findChild<PaneGrid*>()->reveal(QString::fromLatin1(view));
    QTest::qWait(500);
    TurnCursor& cursor = window->cursor();
    cursor.setRate(0.0); // the angles are these, and playing is what views are told
    cursor.setPlaying(true);
    std::vector<double> times;
    const double begin = processorSeconds();
    for (auto _ : state) {
        const auto start = Clock::now();
        cursor.setAngle(cursor.angle() + 0.02);
        QApplication::processEvents();
        times.push_back(secondsSince(start));
        state.SetIterationTime(times.back());
    }
    const double taken = processorSeconds() - begin;
    cursor.setPlaying(false);
    report(state, times);
    state.counters["frames_per_s"] = static_cast<double>(times.size()) / taken;
}

/// From nothing to the first sample solved and painted.
void start(benchmark::State& state) {
    std::vector<double> times;
    for (auto _ : state) {
        const QTemporaryDir recovery;
        const auto begin = Clock::now();
        MainWindow window({recovery.path(), false});
        window.resize(1280, 800);
        window.show();
        window.openSomething();
        while (!isSettled(window))
            QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
        QApplication::processEvents();
        times.push_back(secondsSince(begin));
        state.SetIterationTime(times.back());
    }
    report(state, times);
}

void registerDrags() {
    const QDir folder(QString::fromStdString(test::sourceFolder() + "/samples"));
    const QString ending = QStringLiteral(".lobewright.json");
    for (QString sample : folder.entryList({QLatin1Char('*') + ending}, QDir::Files, QDir::Name)) {
        sample.chop(ending.size());
        for (const bool solved : {false, true}) {
            const std::string name = "dragLobe/" + sample.toStdString() +
                                     (solved ? "/everyPlot" : "/whatTheGeometryDecides");
            benchmark::RegisterBenchmark(
                name.c_str(),
                [sample = sample.toStdString(), solved](benchmark::State& state) {
                    dragLobe(state, sample.c_str(), solved);
                })
                ->UseManualTime()
                ->Unit(benchmark::kMillisecond)
                ->Iterations(solved ? 100 : 200);
        }
    }
}

BENCHMARK_CAPTURE(turnShaft, Designer, "designer")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);
BENCHMARK_CAPTURE(turnShaft, Student, "student")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);
BENCHMARK_CAPTURE(play, SectionInLearn, "student", "")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);
BENCHMARK_CAPTURE(play, SectionAmongPlots, "designer", "")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);
BENCHMARK_CAPTURE(play, Solid, "claims", "solid")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(120);
BENCHMARK_CAPTURE(play, SolidAmongPlots, "durability", "solid")
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(120);
BENCHMARK(start)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(5);

} // namespace

int main(int argc, char** argv) {
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Benchmark"));
    applyLook(application, Theme::light);
    registerDrags();
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
