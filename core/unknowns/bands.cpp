#include "core/unknowns/bands.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::unknowns {

namespace {

std::optional<double> finite(double value) {
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// Of the engines with a cycle at this speed, those whose rollers leave the track.
std::optional<double> liftOffShare(const Ensemble& ensemble, std::size_t speed) {
    long judged = 0, lifting = 0;
    for (const Run& run : ensemble.runs) {
        if (run.runs() && std::isfinite(run.curveAt(speed, keepsContact))) {
            ++judged;
            lifting += run.curveAt(speed, keepsContact) < 0.5 ? 1 : 0;
        }
    }
    return judged > 0 ? std::optional(static_cast<double>(lifting) / static_cast<double>(judged))
                      : std::nullopt;
}

} // namespace

double quantile(std::span<const double> values, double share) {
    assert(!values.empty());
    const double place = share * static_cast<double>(values.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    if (below + 1 >= values.size()) {
        return values.back();
    }
    const double rest = place - static_cast<double>(below);
    return values[below] + rest * (values[below + 1] - values[below]);
}

std::optional<Quantiles> quantiles(std::vector<double> values) {
    std::erase_if(values, [](double value) { return !std::isfinite(value); });
    if (values.empty()) {
        return std::nullopt;
    }
    std::ranges::sort(values);
    return Quantiles{quantile(values, 0.05), quantile(values, 0.25), quantile(values, 0.5),
                     quantile(values, 0.75), quantile(values, 0.95), values.size()};
}

std::vector<double> valuesOf(const Ensemble& ensemble, std::size_t result) {
    std::vector<double> values;
    values.reserve(ensemble.runs.size());
    for (const Run& run : ensemble.runs) {
        if (run.runs()) {
            values.push_back(run.results[result]);
        }
    }
    return values;
}

std::vector<ResultBand> resultBands(const Ensemble& ensemble) {
    std::vector<ResultBand> bands;
    for (std::size_t i = 0; i < ensemble.results.size(); ++i) {
        bands.push_back({ensemble.results[i], finite(ensemble.nominal.results[i]),
                         quantiles(valuesOf(ensemble, i))});
    }
    return bands;
}

study::ResultQuantileMap bandsByName(const Ensemble& ensemble) {
    study::ResultQuantileMap bands;
    for (std::size_t i = 0; i < ensemble.results.size(); ++i) {
        if (const auto band = quantiles(valuesOf(ensemble, i))) {
            bands.emplace(
                ensemble.results[i].name,
                study::ResultQuantiles{band->p05, band->p25, band->p50, band->p75, band->p95});
        }
    }
    return bands;
}

std::vector<CurvePoint> curveBands(const Ensemble& ensemble) {
    std::vector<CurvePoint> points;
    for (std::size_t i = 0; i < ensemble.plan.speeds.size(); ++i) {
        CurvePoint point;
        point.speed = ensemble.plan.speeds[i];
        for (int k = 0; k < keepsContact; ++k) {
            const auto quantity = static_cast<CurveQuantity>(k);
            std::vector<double> values;
            for (const Run& run : ensemble.runs) {
                if (run.runs()) {
                    values.push_back(run.curveAt(i, quantity));
                }
            }
            const auto place = static_cast<std::size_t>(k);
            point.nominal[place] = finite(ensemble.nominal.curveAt(i, quantity));
            point.band[place] = quantiles(std::move(values));
        }
        point.nominal[keepsContact] = finite(ensemble.nominal.curveAt(i, keepsContact));
        point.liftOffShare = liftOffShare(ensemble, i);
        points.push_back(point);
    }
    return points;
}

Feasibility feasibility(const Ensemble& ensemble) {
    Feasibility found;
    const auto power = ensemble.result("brake_power_kW");
    for (const Run& run : ensemble.runs) {
        ++found.engines;
        if (run.runs()) {
            ++found.runs;
            found.withoutPower += power && run.results[*power] <= 0.0 ? 1 : 0;
            continue;
        }
        ++(run.failure.kind == Failure::Kind::notBuilt ? found.notBuilt : found.notRun);
        const auto same = std::ranges::find_if(found.reasons, [&](const FailureCount& reason) {
            return reason.kind == run.failure.kind && reason.rule == run.failure.rule;
        });
        if (same != found.reasons.end()) {
            ++same->count;
        } else {
            found.reasons.push_back({run.failure.kind, run.failure.rule, run.failure.message, 1});
        }
    }
    std::ranges::stable_sort(found.reasons, std::ranges::greater{}, &FailureCount::count);
    return found;
}

} // namespace lobewright::unknowns
