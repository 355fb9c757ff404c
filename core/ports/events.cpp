#include "core/ports/events.h"

#include "core/mechanism/bracketed_root.h"
#include "core/units.h"

#include <boost/math/quadrature/gauss.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::ports {

namespace {

using mechanism::wrapped;

void sortWithoutRepeats(std::vector<double>& angles) {
    std::sort(angles.begin(), angles.end());
    const auto same = [](double a, double b) { return b - a < 1e-12; };
    angles.erase(std::unique(angles.begin(), angles.end(), same), angles.end());
}

/// The rules that a row keeps together with the travel of its piston.
void checkTravel(const Row& row, double lowest, double highest, const std::string& path,
                 Problems& problems) {
    if (row.edge <= lowest) {
        problems.push_back(
            {path + "/edge_mm",
             Message(LW_TEXT("is %1, the piston never goes out that far: the ports never open"),
                     Amount(row.edge, in::mm, 6))});
    }
    if (row.edge >= highest) {
        problems.push_back(
            {path + "/edge_mm",
             Message(LW_TEXT("is %1, the piston never comes in that far: the ports never close"),
                     Amount(row.edge, in::mm, 6))});
    }
}

} // namespace

double CycleEvents::overlap() const {
    return std::max(0.0, std::min(inletCloses, exhaustCloses) - std::max(inletOpens, exhaustOpens));
}

Result<PortTiming> PortTiming::make(const Rows& rows, const mechanism::OpposedPair& pair) {
    Problems problems = rowProblems(rows, pair.mechanism().bore);
    for (const End end : bothEnds) {
        const End piston = pair.uncovers(end);
        const double shift = pair.shift(piston);
        for (std::size_t i = 0; i < rows[end].size(); ++i) {
            checkTravel(rows[end][i], -shift, pair.curve(piston).stroke() - shift,
                        fmt::format("/{}/{}", name(end), i), problems);
        }
    }
    if (!problems.empty()) {
        return problems;
    }
    PortTiming timing(rows, pair);
    if (auto problem = timing.findEvents()) {
        return *problem;
    }
    timing.findKinks();
    return timing;
}

PortTiming::PortTiming(const Rows& rows, const mechanism::OpposedPair& pair)
    : rows_(rows), pair_(pair) {
    shift_ = {pair.shift(pair.uncovers(End::inlet)), pair.shift(pair.uncovers(End::exhaust))};
}

std::vector<double> PortTiming::crossings(End end, double depth) const {
    const double lift = depth + shift_[end];
    const End piston = pair_.uncovers(end);
    const auto above = [&](double theta) { return pair_.lift(piston, theta).y - lift; };
    const std::vector<mechanism::Extreme>& turns = pair_.turningPoints(piston);
    std::vector<double> result;
    for (std::size_t i = 0; i < turns.size(); ++i) {
        const bool last = i + 1 == turns.size();
        const double from = turns[i].end;
        const double to = last ? turns.front().begin + pair_.period() : turns[i + 1].begin;
        const double next = last ? turns.front().value : turns[i + 1].value;
        if ((turns[i].value - lift) * (next - lift) < 0.0) {
            result.push_back(wrapped(mechanism::bracketedRoot(above, from, to), pair_.period()));
        }
    }
    sortWithoutRepeats(result);
    return result;
}

std::optional<Problem> PortTiming::findEvents() {
    for (const mechanism::DeadCentres& centres : pair_.deadCentres()) {
        cycles_.push_back({centres});
    }
    for (const End end : bothEnds) {
        const std::vector<Row>& rows = rows_[end];
        const auto first = std::max_element(
            rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.edge < b.edge; });
        const std::string path = fmt::format("/{}/{}/edge_mm", name(end), first - rows.begin());
        const std::vector<double> angles = crossings(end, first->edge);
        for (std::size_t j = 0; j < cycles_.size(); ++j) {
            CycleEvents& cycle = cycles_[j];
            const double idc = cycle.centres.idc;
            const double next = j + 1 < cycles_.size() ? cycles_[j + 1].centres.idc
                                                       : cycles_[0].centres.idc + pair_.period();
            if (position(end, idc) <= first->edge) {
                return Problem{
                    path,
                    Message(
                        LW_TEXT("is %1: the port is open at inner dead centre, %2 of the shaft"),
                        Amount(first->edge, in::mm, 6), Amount(idc, in::degrees, 5))};
            }
            std::vector<double> inside;
            for (const double angle : angles) {
                const double at = idc + wrapped(angle - idc, pair_.period());
                if (at > idc && at < next) {
                    inside.push_back(at);
                }
            }
            std::sort(inside.begin(), inside.end());
            if (inside.size() != 2) {
                return Problem{path,
                               Message(LW_TEXT("is %1: the port must open and close once in the "
                                               "cycle from %2 to %3 of the shaft, opens %4 times"),
                                       Amount(first->edge, in::mm, 6), Amount(idc, in::degrees, 5),
                                       Amount(next, in::degrees, 5), inside.size() / 2)};
            }
            (end == End::inlet ? cycle.inletOpens : cycle.exhaustOpens) = inside[0];
            (end == End::inlet ? cycle.inletCloses : cycle.exhaustCloses) = inside[1];
        }
    }
    return std::nullopt;
}

void PortTiming::findKinks() {
    for (const End end : bothEnds) {
        std::vector<double>& bounds = bounds_[end];
        for (const Row& row : rows_[end]) {
            for (const double depth : {row.edge, row.edge - row.height}) {
                const std::vector<double> angles = crossings(end, depth);
                kinks_.insert(kinks_.end(), angles.begin(), angles.end());
                bounds.insert(bounds.end(), angles.begin(), angles.end());
            }
            for (const double depth :
                 {row.edge - row.cornerRadius, row.edge - row.height + row.cornerRadius}) {
                const std::vector<double> angles = crossings(end, depth);
                bounds.insert(bounds.end(), angles.begin(), angles.end());
            }
        }
        for (const mechanism::Extreme& extreme : pair_.turningPoints(pair_.uncovers(end))) {
            bounds.push_back(wrapped(extreme.begin, pair_.period()));
            bounds.push_back(wrapped(extreme.end, pair_.period()));
        }
        bounds.insert(bounds.end(), pair_.junctions().begin(), pair_.junctions().end());
        sortWithoutRepeats(bounds);
    }
    sortWithoutRepeats(kinks_);
}

ChamberState PortTiming::at(double theta) const {
    ChamberState state;
    state.pair = pair_.at(theta);
    for (const End end : bothEnds) {
        const double position = state.pair.lift[pair_.uncovers(end)].y - shift_[end];
        double area = 0.0;
        double effective = 0.0;
        for (const Row& row : rows_[end]) {
            if (position < row.edge) {
                const double open = row.count * openArea(row, row.edge - position);
                area += open;
                effective += row.dischargeCoefficient * open;
            }
        }
        state.area[end] = area;
        state.effectiveArea[end] = effective;
    }
    return state;
}

double PortTiming::position(End end, double theta) const {
    return pair_.lift(pair_.uncovers(end), theta).y - shift_[end];
}

Samples PortTiming::position(End end, const Samples& theta) const {
    return pair_.lift(pair_.uncovers(end), theta).y - shift_[end];
}

double PortTiming::area(End end, double theta) const {
    const double depth = position(end, theta);
    double sum = 0.0;
    for (const Row& row : rows_[end]) {
        sum += row.count * openArea(row, row.edge - depth);
    }
    return sum;
}

double PortTiming::effectiveArea(End end, double theta) const {
    const double depth = position(end, theta);
    double sum = 0.0;
    for (const Row& row : rows_[end]) {
        sum += row.dischargeCoefficient * row.count * openArea(row, row.edge - depth);
    }
    return sum;
}

Samples PortTiming::area(End end, const Samples& theta) const {
    const Samples depth = position(end, theta);
    Samples sum = Samples::Zero(theta.size());
    for (const Row& row : rows_[end]) {
        sum +=
            depth.unaryExpr([&row](double y) { return row.count * openArea(row, row.edge - y); });
    }
    return sum;
}

Samples PortTiming::effectiveArea(End end, const Samples& theta) const {
    const Samples depth = position(end, theta);
    Samples sum = Samples::Zero(theta.size());
    for (const Row& row : rows_[end]) {
        sum += depth.unaryExpr([&row](double y) {
            return row.dischargeCoefficient * row.count * openArea(row, row.edge - y);
        });
    }
    return sum;
}

double PortTiming::fullArea(End end) const {
    double sum = 0.0;
    for (const Row& row : rows_[end]) {
        sum += row.count * openArea(row, row.height);
    }
    return sum;
}

double PortTiming::areaIntegral(End end, double from, double to) const {
    if (to < from) {
        return -areaIntegral(end, to, from);
    }
    std::vector<double> cuts{from, to};
    const double period = pair_.period();
    for (const double bound : bounds_[end]) {
        for (double at = from + wrapped(bound - from, period); at < to; at += period) {
            cuts.push_back(at);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    double sum = 0.0;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double a = cuts[i];
        const double span = cuts[i + 1] - a;
        if (span > 0.0) {
            // Rounded corners open with the power 3/2 of the depth; t²(3 − 2t) makes that smooth.
            sum += span * boost::math::quadrature::gauss<double, 20>::integrate(
                              [&](double t) {
                                  return 6.0 * t * (1.0 - t) *
                                         area(end, a + span * t * t * (3.0 - 2.0 * t));
                              },
                              0.0, 1.0);
        }
    }
    return sum;
}

SpecificTimeAreas specificTimeAreas(const PortTiming& timing, const CycleEvents& cycle,
                                    double sweptVolume, double omega) {
    const double scale = 1.0 / (omega * sweptVolume);
    SpecificTimeAreas result;
    if (cycle.inletOpens > cycle.exhaustOpens) {
        result.blowdown =
            scale * timing.areaIntegral(End::exhaust, cycle.exhaustOpens, cycle.inletOpens);
    }
    result.inlet = scale * timing.areaIntegral(End::inlet, cycle.inletOpens, cycle.inletCloses);
    result.exhaust =
        scale * timing.areaIntegral(End::exhaust, cycle.exhaustOpens, cycle.exhaustCloses);
    return result;
}

} // namespace lobewright::ports
