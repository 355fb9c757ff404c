#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/ports/events.h"
#include "core/solution/solution.h"
#include "ui/base/palette.h"

#include <QString>

#include <optional>
#include <vector>

/// Angles that every view speaks of, for cylinder 1 over one shaft turn.
namespace lobewright::ui {

/// Something that happens at an angle and is marked in every plot.
struct TurnEvent {
    enum class Kind {
        innerDeadCentre,
        exhaustOpens,
        inletOpens,
        outerDeadCentre,
        exhaustCloses,
        inletCloses
    };
    Kind kind = Kind::innerDeadCentre;
    double theta = 0.0; ///< [rad] in [0, 2π)
    int cycle = 0;      ///< index into PortTiming::cycles()
};

/// "IDC", "EO", … as the trade letters a timing diagram.
QString letters(TurnEvent::Kind kind);
/// "exhaust opens", …
QString wordsOf(TurnEvent::Kind kind);

/// In the colour of its side; dead centres quiet.
QColor toneOf(const Palette& tones, const TurnEvent& event);

/// Every event of a turn, ascending.
std::vector<TurnEvent> turnEvents(const mechanism::OpposedPair& pair,
                                  const ports::PortTiming& timing);

/// Where the load of a roller of cylinder 1 changes from one flank of a closed track to the other:
/// it rattles there.
struct Rattle {
    End end = End::inlet;
    double theta = 0.0;      ///< [rad] in [0, 2π)
    bool leavesPush = false; ///< the push flank; false: comes back to it
};
/// Every one of a turn, ascending; none on an open track or without loads.
std::vector<Rattle> rattles(const solution::Solution& solution);

/// An interval of the shaft angle [rad]; may lie partly outside [0, 2π).
struct Span {
    double from = 0.0, to = 0.0;
    double middle() const { return 0.5 * (from + to); }
    double length() const { return to - from; }
};

/// The intervals of one kind over a turn and a period to either side, so that what wraps shows at
/// both edges.
struct PortSpans {
    std::vector<Span> blowdown;    ///< exhaust open, inlet not yet
    std::vector<Span> overlap;     ///< both open
    std::vector<Span> afterCharge; ///< exhaust closed, inlet still open
};
PortSpans portSpans(const mechanism::OpposedPair& pair, const ports::PortTiming& timing);

/// Shaft angles of every IDC from one period before the turn to one after [rad], ascending.
std::vector<double> innerDeadCentres(const mechanism::OpposedPair& pair);

/// Cycle angle of a shaft angle [rad] in [−π, π), from the nearest IDC of `pair`.
double cycleAngle(const mechanism::OpposedPair& pair, double theta);

/// Where a shaft angle lies among the gas cycles, each from the last port closing of the one before
/// to its own.
struct CyclePlace {
    size_t cycle = 0;    ///< index into PortTiming::cycles()
    double offset = 0.0; ///< from the inner dead centre of that cycle [rad of the shaft]
};
CyclePlace cyclePlace(const ports::PortTiming& timing, double theta);

/// The angle of `stops` after (before) `theta`, round the turn; stops ascending.
std::optional<double> nextStop(const std::vector<double>& stops, double theta, bool forward);

/// Stretches of a turn where `value` ≤ 0 or is not a number, at the given angles [rad].
std::vector<Span> stretchesWithout(const Samples& theta, const Samples& value);

/// Value at `at` by linear interpolation, not-a-number where a neighbour is; θ ascending.
double valueAt(const Samples& theta, const Samples& values, double at);

} // namespace lobewright::ui
