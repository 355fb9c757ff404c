#include "ui/plots/base/turn_events.h"

#include "core/solution/pipeline/stages.h"
#include "core/units.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TurnEvents)
};

double reduced(double theta) {
    const double rest = std::fmod(theta, units::turn);
    return rest < 0.0 ? rest + units::turn : rest;
}

struct EventWords {
    QString letters, words;
};

/// In the order of the kinds.
const EventWords& namesOf(TurnEvent::Kind kind) {
    static const EventWords all[] = {{Words::tr("IDC"), Words::tr("inner dead centre")},
                                     {Words::tr("EO"), Words::tr("exhaust opens")},
                                     {Words::tr("IO"), Words::tr("inlet opens")},
                                     {Words::tr("ODC"), Words::tr("outer dead centre")},
                                     {Words::tr("EC"), Words::tr("exhaust closes")},
                                     {Words::tr("IC"), Words::tr("inlet closes")}};
    return all[static_cast<std::size_t>(kind)];
}

} // namespace

QString letters(TurnEvent::Kind kind) {
    return namesOf(kind).letters;
}

QString wordsOf(TurnEvent::Kind kind) {
    return namesOf(kind).words;
}

QColor toneOf(const Palette& tones, const TurnEvent& event) {
    using Kind = TurnEvent::Kind;
    if (event.kind == Kind::inletOpens || event.kind == Kind::inletCloses)
        return tones.inlet;
    if (event.kind == Kind::exhaustOpens || event.kind == Kind::exhaustCloses)
        return tones.exhaust;
    return tones.quiet;
}

std::vector<TurnEvent> turnEvents(const mechanism::OpposedPair& pair,
                                  const ports::PortTiming& timing) {
    using Kind = TurnEvent::Kind;
    std::vector<TurnEvent> events;
    const int periods = static_cast<int>(std::lround(units::turn / pair.period()));
    int cycle = 0;
    for (const ports::CycleEvents& c : timing.cycles()) {
        const std::pair<Kind, double> once[] = {
            {Kind::innerDeadCentre, c.centres.idc}, {Kind::exhaustOpens, c.exhaustOpens},
            {Kind::inletOpens, c.inletOpens},       {Kind::outerDeadCentre, c.centres.odc},
            {Kind::exhaustCloses, c.exhaustCloses}, {Kind::inletCloses, c.inletCloses}};
        for (int k = 0; k < periods; ++k) {
            for (const auto& [kind, theta] : once)
                events.push_back({kind, reduced(theta + k * pair.period()), cycle});
        }
        ++cycle;
    }
    std::ranges::sort(events, {}, &TurnEvent::theta);
    return events;
}

PortSpans portSpans(const mechanism::OpposedPair& pair, const ports::PortTiming& timing) {
    PortSpans spans;
    const int periods = static_cast<int>(std::lround(units::turn / pair.period()));
    const auto add = [](std::vector<Span>& list, double from, double to) {
        if (to > from)
            list.push_back({from, to});
    };
    for (int k = -1; k <= periods; ++k) {
        const double shift = k * pair.period();
        for (const ports::CycleEvents& c : timing.cycles()) {
            add(spans.blowdown, c.exhaustOpens + shift, c.inletOpens + shift);
            add(spans.overlap, std::max(c.exhaustOpens, c.inletOpens) + shift,
                std::min(c.exhaustCloses, c.inletCloses) + shift);
            add(spans.afterCharge, c.exhaustCloses + shift, c.inletCloses + shift);
        }
    }
    return spans;
}

std::vector<Rattle> rattles(const solution::Solution& solution) {
    std::vector<Rattle> result;
    if (!solution.pair.mechanism().closedTrack || !solution.stages || !solution.stages->loads)
        return result;
    const double period = solution.pair.period();
    const int periods = static_cast<int>(std::lround(units::turn / period));
    for (int k = 0; k < periods; ++k) {
        for (const loads::FlankChange& change : solution.stages->loads->flankChanges)
            result.push_back({change.end, change.theta + k * period, change.leavesPush});
    }
    return result;
}

std::vector<double> innerDeadCentres(const mechanism::OpposedPair& pair) {
    std::vector<double> centres;
    const int periods = static_cast<int>(std::lround(units::turn / pair.period()));
    for (int k = -1; k <= periods; ++k) {
        for (const mechanism::DeadCentres& c : pair.deadCentres())
            centres.push_back(c.idc + k * pair.period());
    }
    return centres;
}

double cycleAngle(const mechanism::OpposedPair& pair, double theta) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const double idc : innerDeadCentres(pair)) {
        if (std::abs(theta - idc) < std::abs(nearest))
            nearest = theta - idc;
    }
    const double angle = pair.cyclesPerTurn() * nearest;
    return angle >= units::pi ? angle - units::turn : angle;
}

CyclePlace cyclePlace(const ports::PortTiming& timing, double theta) {
    const auto& cycles = timing.cycles();
    const double period = timing.pair().period();
    CyclePlace place;
    double nearest = std::numeric_limits<double>::infinity();
    for (size_t i = 0; i < cycles.size(); ++i) {
        const double closing = cycles[i].lastClosing();
        const double turned = period * (std::floor((theta - closing) / period) + 1.0);
        if (closing + turned < nearest) {
            nearest = closing + turned;
            place = {i, theta - cycles[i].centres.idc - turned};
        }
    }
    return place;
}

std::optional<double> nextStop(const std::vector<double>& stops, double theta, bool forward) {
    constexpr double same = 1e-6; // [rad]; standing on one goes to the next
    if (stops.empty())
        return std::nullopt;
    if (forward) {
        const auto found = std::ranges::upper_bound(stops, theta + same);
        return found == stops.end() ? stops.front() : *found;
    }
    const auto found = std::ranges::lower_bound(stops, theta - same);
    return found == stops.begin() ? stops.back() : *(found - 1);
}

std::vector<Span> stretchesWithout(const Samples& theta, const Samples& value) {
    std::vector<Span> stretches;
    bool open = false;
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const bool without = !(value[i] > 0.0);
        if (without && !open) {
            stretches.push_back({theta[i], theta[i]});
        } else if (without) {
            stretches.back().to = theta[i];
        }
        open = without;
    }
    return stretches;
}

double valueAt(const Samples& theta, const Samples& values, double at) {
    if (theta.size() == 0 || theta.size() != values.size())
        return std::numeric_limits<double>::quiet_NaN();
    const auto* begin = theta.data();
    const auto* end = begin + theta.size();
    const auto above = std::upper_bound(begin, end, at) - begin;
    if (above == 0)
        return values[0];
    if (above == theta.size())
        return values[above - 1];
    const double width = theta[above] - theta[above - 1];
    const double share = width > 0.0 ? (at - theta[above - 1]) / width : 0.0;
    if (share == 0.0)
        return values[above - 1];
    return values[above - 1] + share * (values[above] - values[above - 1]);
}

} // namespace lobewright::ui
