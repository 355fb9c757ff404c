#include "core/mechanism/opposed_pair.h"

#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::mechanism {

namespace {

/// Middles of the troughs of one end [rad], ascending in [0, period).
std::vector<double> troughs(const std::vector<Extreme>& turningPoints, double period) {
    std::vector<double> angles;
    for (const Extreme& extreme : turningPoints) {
        if (!extreme.maximum) {
            angles.push_back(wrapped(extreme.middle(), period));
        }
    }
    std::sort(angles.begin(), angles.end());
    return angles;
}

/// b less a in [−period/2, period/2).
double signedDistance(double a, double b, double period) {
    const double distance = b - a;
    return distance - period * std::floor(distance / period + 0.5);
}

/// Where one cycle of the pair ends and the next begins: midway between the troughs of the two
/// pistons that belong together, paired so that the sum of distances is least.
std::vector<double> cycleBounds(const PerEnd<std::vector<double>>& troughs, double period) {
    const std::size_t count = troughs.inlet.size();
    double least = std::numeric_limits<double>::infinity();
    std::vector<double> best;
    for (std::size_t shift = 0; shift < count; ++shift) {
        double sum = 0.0;
        std::vector<double> bounds;
        for (std::size_t j = 0; j < count; ++j) {
            const double apart =
                signedDistance(troughs.inlet[j], troughs.exhaust[(j + shift) % count], period);
            sum += std::abs(apart);
            bounds.push_back(troughs.inlet[j] + 0.5 * apart);
        }
        if (sum < least) {
            least = sum;
            best = bounds;
        }
    }
    std::sort(best.begin(), best.end());
    return best;
}

/// The first of the highest (sign +1) or lowest (sign −1) extremes in [from, to), unrolled; absent
/// when there is none.
std::optional<double> outermost(const std::vector<Extreme>& extremes, double sign, double from,
                                double to, double period, double equal) {
    std::optional<double> angle;
    double best = 0.0;
    std::vector<std::pair<double, double>> inside; // angle, value
    for (const Extreme& extreme : extremes) {
        const double at = from + wrapped(extreme.middle() - from, period);
        if (extreme.maximum == (sign > 0.0) && at < to) {
            inside.emplace_back(at, sign * extreme.value);
        }
    }
    std::sort(inside.begin(), inside.end());
    for (const auto& [at, value] : inside) {
        if (!angle || value > best + equal) {
            angle = at;
            best = value;
        }
    }
    return angle;
}

std::optional<Problem> mismatch(const PerEnd<motion::LiftCurve>& lifts,
                                const PerEnd<std::vector<Extreme>>& turningPoints, bool oneSided) {
    if (lifts.inlet.lobes() != lifts.exhaust.lobes()) {
        return Problem{"/tracks/exhaust/lobes",
                       Message(LW_TEXT("the exhaust track has %1 lobes where the inlet track has "
                                       "%2: both tracks must have the same period"),
                               lifts.exhaust.lobes(), lifts.inlet.lobes())};
    }
    if (!oneSided && turningPoints.inlet.size() != turningPoints.exhaust.size()) {
        return Problem{"/tracks/exhaust",
                       Message(LW_TEXT("the exhaust track has %1 rises per pattern where the inlet "
                                       "track has %2: both tracks must have the same number"),
                               turningPoints.exhaust.size() / 2, turningPoints.inlet.size() / 2)};
    }
    if (turningPoints.inlet.empty()) {
        return Problem{"/tracks/inlet",
                       LW_TEXT("the lift of the inlet track is constant: it must rise and return")};
    }
    return std::nullopt;
}

std::optional<Problem> notPositive(const char* path, double length) {
    if (length > 0.0 && std::isfinite(length)) {
        return std::nullopt;
    }
    return Problem{path, Message(LW_TEXT("is %1, must be positive"),
                                 asTyped(length / units::millimetre, in::mm))};
}

} // namespace

Result<OpposedPair> OpposedPair::make(const Mechanism& mechanism,
                                      const PerEnd<motion::LiftCurve>& lifts) {
    Problems problems;
    for (const auto& problem : {notPositive("/mechanism/bore_mm", mechanism.bore),
                                notPositive("/mechanism/pitch_radius_mm", mechanism.pitchRadius)}) {
        if (problem) {
            problems.push_back(*problem);
        }
    }
    if (!problems.empty()) {
        return problems;
    }
    OpposedPair pair(mechanism, lifts);
    if (auto problem = mismatch(pair.lifts_, pair.turningPoints_, mechanism.isOneSided())) {
        return *problem;
    }
    if (auto problem = pair.findDeadCentres()) {
        return *problem;
    }
    for (const DeadCentres& centres : pair.deadCentres_) {
        const double least = pair.gap(centres.idc);
        if (!(least > 0.0)) {
            return Problem{"/mechanism/clearance_mm",
                           Message(LW_TEXT("leaves a gap of %1 between the crowns at %2 of the "
                                           "shaft, must be positive: the pistons collide"),
                                   Amount(least, in::mm), Amount(centres.idc, in::degrees))};
        }
    }
    return pair;
}

OpposedPair::OpposedPair(const Mechanism& mechanism, const PerEnd<motion::LiftCurve>& lifts)
    : mechanism_(mechanism), lifts_(lifts) {
    if (mechanism.isOneSided()) {
        lifts_.exhaust = motion::LiftCurve::still(lifts.inlet.lobes());
    }
    const std::vector<double> angles = cylinderAngles(mechanism);
    const double first = angles.empty() ? 0.0 : angles.front();
    phase_.inlet = -first;
    phase_.exhaust =
        (mechanism.isOneSided() ? 0.0 : mechanism.exhaustLead + mechanism.adjuster.setting) - first;
    pistonArea_ = units::pi * mechanism.bore * mechanism.bore / 4.0;
    outerGap_ = mechanism.clearance + lifts_.inlet.stroke() + lifts_.exhaust.stroke() +
                shift(End::inlet) + shift(End::exhaust);
    for (const End end : bothEnds) {
        for (Extreme extreme : extremes(lifts_[end])) {
            const double begin = wrapped(extreme.begin - phase_[end], period());
            extreme.end += begin - extreme.begin;
            extreme.begin = begin;
            turningPoints_[end].push_back(extreme);
        }
        std::sort(turningPoints_[end].begin(), turningPoints_[end].end(),
                  [](const Extreme& a, const Extreme& b) { return a.begin < b.begin; });
        for (const motion::Junction& junction : lifts_[end].junctions()) {
            junctions_.push_back(wrapped(junction.angle - phase_[end], period()));
        }
    }
    std::sort(junctions_.begin(), junctions_.end());
    const auto same = [](double a, double b) { return b - a < 1e-12; };
    junctions_.erase(std::unique(junctions_.begin(), junctions_.end(), same), junctions_.end());
}

std::vector<Extreme> OpposedPair::volumeExtremes() const {
    if (mechanism_.isOneSided()) {
        return turningPoints_.inlet;
    }
    PeriodicFunction liftSum;
    liftSum.value = [this](double theta) {
        return lift(End::inlet, theta).y + lift(End::exhaust, theta).y;
    };
    liftSum.slope = [this](double theta) {
        return lift(End::inlet, theta).y1 + lift(End::exhaust, theta).y1;
    };
    liftSum.period = period();
    liftSum.slopeScale = (lifts_.inlet.stroke() + lifts_.exhaust.stroke()) / period();
    liftSum.breaks = junctions_;
    for (const motion::Plateau& inlet : lifts_.inlet.plateaus()) {
        for (const motion::Plateau& exhaust : lifts_.exhaust.plateaus()) {
            const double begin = inlet.begin - phase_.inlet;
            const double end = inlet.end - phase_.inlet;
            const double apart = exhaust.begin - phase_.exhaust - begin;
            const double turns = std::floor(apart / period());
            for (const double k : {turns, turns + 1.0}) {
                const double other = exhaust.begin - phase_.exhaust - k * period();
                const double from = std::max(begin, other);
                const double to = std::min(end, other + exhaust.end - exhaust.begin);
                if (to > from) {
                    liftSum.levels.push_back({from, to});
                }
            }
        }
    }
    return extremes(liftSum);
}

std::optional<Problem> OpposedPair::findDeadCentres() {
    const Problem unchanging{
        "/mechanism/exhaust_lead_deg",
        Message(LW_TEXT("with a lead of %1 in total the exhaust piston moves out as far as the "
                        "inlet piston moves in, so that a cycle has no dead centre"),
                Amount((phase_.exhaust - phase_.inlet), in::degrees))};
    const std::vector<Extreme> sums = volumeExtremes();
    const double strokes = lifts_.inlet.stroke() + lifts_.exhaust.stroke();
    const double equal = 1e-12 * strokes;
    const End other = pistons().back();
    const std::vector<double> bounds = cycleBounds(
        {troughs(turningPoints_.inlet, period()), troughs(turningPoints_[other], period())},
        period());
    for (std::size_t j = 0; j < bounds.size(); ++j) {
        const double to = j + 1 < bounds.size() ? bounds[j + 1] : bounds.front() + period();
        const auto idc = outermost(sums, 1.0, bounds[j], to, period(), equal);
        if (!idc) {
            return unchanging;
        }
        deadCentres_.push_back({wrapped(*idc, period()), 0.0});
    }
    std::sort(deadCentres_.begin(), deadCentres_.end(),
              [](const DeadCentres& a, const DeadCentres& b) { return a.idc < b.idc; });
    for (std::size_t j = 0; j < deadCentres_.size(); ++j) {
        const double next = j + 1 < deadCentres_.size() ? deadCentres_[j + 1].idc
                                                        : deadCentres_.front().idc + period();
        const auto odc = outermost(sums, -1.0, deadCentres_[j].idc, next, period(), equal);
        if (!odc) {
            return unchanging;
        }
        deadCentres_[j].odc = *odc;
    }
    return std::nullopt;
}

int OpposedPair::cyclesPerTurn() const {
    return lifts_.inlet.lobes() * static_cast<int>(deadCentres_.size());
}

double OpposedPair::period() const {
    return lifts_.inlet.period();
}

double OpposedPair::trackAngle(End end, double theta) const {
    return theta + phase_[end];
}

double OpposedPair::shift(End end) const {
    const Adjuster& adjuster = mechanism_.adjuster;
    if (mechanism_.isOneSided()) {
        return end == End::inlet ? adjuster.axial : 0.0;
    }
    return end == End::inlet ? 0.0
                             : adjuster.helixLead * adjuster.setting / units::turn + adjuster.axial;
}

PairState OpposedPair::at(double theta) const {
    PairState state;
    state.lift.inlet = lift(End::inlet, theta);
    state.lift.exhaust = lift(End::exhaust, theta);
    state.gap = outerGap_ - state.lift.inlet.y - state.lift.exhaust.y;
    state.volume = pistonArea_ * state.gap + mechanism_.recess;
    state.volumeRate = -pistonArea_ * (state.lift.inlet.y1 + state.lift.exhaust.y1);
    return state;
}

motion::Lift OpposedPair::lift(End end, double theta) const {
    return lifts_[end].at(trackAngle(end, theta));
}

motion::LiftSamples OpposedPair::lift(End end, const Samples& theta) const {
    return lifts_[end].sample(theta + phase_[end]);
}

double OpposedPair::pistonArea() const {
    return pistonArea_;
}

double OpposedPair::sweptVolume() const {
    return pistonArea_ * (lifts_.inlet.stroke() + lifts_.exhaust.stroke());
}

double OpposedPair::meanStroke() const {
    return (lifts_.inlet.stroke() + lifts_.exhaust.stroke()) /
           static_cast<double>(pistons().size());
}

double OpposedPair::gap(double theta) const {
    return at(theta).gap;
}

double OpposedPair::volume(double theta) const {
    return at(theta).volume;
}

double OpposedPair::volumeRate(double theta) const {
    return at(theta).volumeRate;
}

Samples OpposedPair::volume(const Samples& theta) const {
    return pistonArea_ * (outerGap_ - lift(End::inlet, theta).y - lift(End::exhaust, theta).y) +
           mechanism_.recess;
}

Samples OpposedPair::volumeRate(const Samples& theta) const {
    return -pistonArea_ * (lift(End::inlet, theta).y1 + lift(End::exhaust, theta).y1);
}

} // namespace lobewright::mechanism
