#include "core/unknowns/turn_bands.h"

#include "core/design/file.h"
#include "core/parallel.h"
#include "core/solution/solution.h"
#include "core/units.h"
#include "core/unknowns/bands.h"
#include "core/unknowns/inputs.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <mutex>
#include <optional>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

constexpr int angles = 361; // every degree, both ends

/// Every degree of all channels of one engine, channel by channel.
using Row = std::vector<float>;

/// Linear between the samples, which hold every half degree: a gap where a neighbour is one.
float valueAt(const Samples& theta, const Samples& values, double at) {
    const auto above = std::upper_bound(theta.begin(), theta.end(), at) - theta.begin();
    if (above == 0 || above == theta.size()) {
        return static_cast<float>(values[above == 0 ? 0 : above - 1]);
    }
    const double share = (at - theta[above - 1]) / (theta[above] - theta[above - 1]);
    return static_cast<float>(share == 0.0 ? values[above - 1]
                                           : values[above - 1] +
                                                 share * (values[above] - values[above - 1]));
}

/// One row an engine of the names; empty where it does not run. Absent: stopped.
std::optional<Row> rowOf(const design::Design& design, const std::vector<std::string>& names,
                         const Samples& theta, Monitor& monitor) {
    if (!design::validateEngine(design).empty()) {
        return Row();
    }
    solution::Request request;
    request.valid = true;
    const auto solved = solution::solve(design, monitor, nullptr, request);
    if (!solved) {
        return std::nullopt; // the rules are kept: only stopping is left
    }
    if (!solved->gas) {
        return Row();
    }
    Row row(names.size() * angles, std::numeric_limits<float>::quiet_NaN());
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (const auto* channel = solved->channel(names[i])) {
            for (int k = 0; k < angles; ++k) {
                row[i * angles + static_cast<std::size_t>(k)] =
                    valueAt(solved->theta, channel->values, theta[k]);
            }
        }
    }
    return row;
}

ChannelBand bandOf(const std::vector<Row>& rows, std::size_t channel) {
    ChannelBand band;
    band.fill(Samples::Constant(angles, std::numeric_limits<double>::quiet_NaN()));
    for (int k = 0; k < angles; ++k) {
        std::vector<double> values;
        for (const Row& row : rows) {
            if (!row.empty()) {
                values.push_back(
                    static_cast<double>(row[channel * angles + static_cast<std::size_t>(k)]));
            }
        }
        if (const auto found = quantiles(std::move(values))) {
            const double edges[] = {found->p05, found->p25, found->p50, found->p75, found->p95};
            for (std::size_t edge = 0; edge < band.size(); ++edge) {
                band[edge][k] = edges[edge];
            }
        }
    }
    return band;
}

} // namespace

Result<TurnBands> turnBands(const design::Design& design, int samples, std::uint64_t seed,
                            Monitor& monitor) {
    if (auto problems = design::validateEngine(design); !problems.empty()) {
        return problems;
    }
    const auto unknowns = unknownsOf(design);
    const draft::Followers followers(design);
    if (unknowns.empty()) {
        return Problem{"/knowledge", LW_TEXT("No input has a range or options: everything counts "
                                             "as known.")};
    }
    const auto library = statistics();
    if (!library) {
        return library.problems();
    }
    const auto nominal = solution::solve(design, monitor);
    if (!nominal) {
        return nominal.problems();
    }
    std::vector<std::string> names;
    for (const auto& channel : nominal->channels) {
        names.push_back(channel.name);
    }
    TurnBands result;
    result.theta = Samples::LinSpaced(angles, 0.0, units::turn);
    const Matrix shares = sharesOf(**library, static_cast<int>(unknowns.size()), seed, 0, samples);
    std::vector<Row> rows(static_cast<std::size_t>(samples));
    std::atomic<bool> stopped = false;
    std::mutex counting;
    long done = 0;
    onAllCores(samples, [&](int i) {
        if (stopped) {
            return;
        }
        const std::vector<double> point(shares.row(i).begin(), shares.row(i).end());
        StoppedByFlag own(stopped);
        auto row = Row();
        if (const auto engine = withShares(design, unknowns, followers, point)) {
            auto found = rowOf(*engine, names, result.theta, own);
            if (!found) {
                return;
            }
            row = std::move(*found);
        }
        rows[static_cast<std::size_t>(i)] = std::move(row);
        const std::scoped_lock lock(counting);
        ++done;
        if (!monitor.step(static_cast<double>(done) / samples,
                          Message(LW_TEXT("%1 of %2 engines"), done, static_cast<long>(samples)))) {
            stopped = true;
        }
    });
    if (stopped) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    result.engines = std::ranges::count_if(rows, [](const Row& row) { return !row.empty(); });
    for (std::size_t i = 0; i < names.size(); ++i) {
        result.channels.emplace(names[i], bandOf(rows, i));
    }
    return result;
}

} // namespace lobewright::unknowns
