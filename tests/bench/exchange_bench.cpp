// Exports of a whole track ring at 1 µm. Targets on two cores: STEP within 10 s, STL within 2 s.
// bench_exchange --benchmark_filter=.
#include "core/exchange/track_export.h"
#include "tests/design/sample.h"
#include "tests/machines.h"

#include <benchmark/benchmark.h>

namespace lobewright::exchange {
namespace {

/// The pump set, open or closed, or with one unequal turn through twenty-four knots.
design::Design designOf(const std::string& what) {
    design::Design design = design::testing::sample();
    design.mechanism.closedTrack = what != "open";
    if (what == "knots") {
        motion::KnotShape shape;
        for (int i = 0; i < 24; ++i) {
            const double angle = units::turn * i / 24.0;
            shape.knots.push_back(
                {angle, 0.017 * (1.0 - std::cos(2.0 * angle)) + 0.003 * std::sin(angle), {}});
        }
        design.tracks.inlet = {1, shape};
    }
    return design;
}

void exportOne(benchmark::State& state, ExportKind kind, const std::string& what) {
    const design::Design design = designOf(what);
    ExportOptions options;
    options.kind = kind;
    options.tolerance = 1e-6;
    SilentMonitor monitor;
    std::size_t size = 0;
    for (auto _ : state) {
        const auto bytes = exportTrack(design, options, monitor);
        if (!bytes) {
            state.SkipWithError(bytes.problems().front().message.english().c_str());
            return;
        }
        size = bytes->size();
    }
    state.counters["MB"] = static_cast<double>(size) * 1e-6;
}

void registerAll() {
    for (const ExportWords& kind : exportWords) {
        for (const char* what : {"open", "closed", "knots"}) {
            benchmark::RegisterBenchmark(
                (std::string(kind.key) + "/" + what).c_str(),
                [kind, what](benchmark::State& state) { exportOne(state, kind.kind, what); })
                ->Unit(benchmark::kMillisecond);
        }
    }
}

const bool isRegistered = (registerAll(), true);

} // namespace
} // namespace lobewright::exchange
