#pragma once

#include "core/design/design.h"
#include "core/gas/cycle/cycle.h"
#include "core/ports/events.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::solution {

/// What a check is about: its id, the name of the quantity, where to look and what to change.
struct CheckSubject {
    std::string id;
    Message quantity; ///< as a sentence begins, e.g. "Pressure angle"
    const Unit* unit = &in::pure;
    std::string path;
    Message advice;                        ///< what to change, a clause without full stop
    std::optional<double> angle;           ///< shaft angle [rad]
    std::optional<QuantityId> figure = {}; ///< that is judged
    std::optional<End> end = {};
};

/// Collects what breaks a limit; what keeps it leaves no entry.
class CheckList {
  public:
    /// Fires when the value exceeds the limit's warning or error threshold. Values in the unit
    /// shown.
    void atMost(const CheckSubject& subject, double value, const design::Limit& limit);
    /// Fires when the value falls below the limit's warning or error threshold.
    void atLeast(const CheckSubject& subject, double value, const design::Limit& limit);
    void add(Check check) { checks_.push_back(std::move(check)); }
    void append(CheckList more);
    /// Errors first, then warnings, then remarks; otherwise in the order of the checks.
    std::vector<Check> take();

  private:
    std::vector<Check> checks_;
};

/// Jumps at the junctions of both tracks: velocity an error, acceleration a warning, jerk a remark.
void addJunctionChecks(CheckList& list, const ports::PortTiming& timing);

/// Pressure angle and undercut on both tracks, on every loaded flank. `lifts` at theta, the sample
/// angles [rad].
void addTrackChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    const PerEnd<motion::LiftSamples>& lifts, const Samples& theta);

/// Webs between ports and the order in which the ports close.
void addPortChecks(CheckList& list, const ports::PortTiming& timing);

/// Rollers of neighbouring cylinders, and skirts against their tracks; the rim over the pull flank
/// of a closed one is `rimThickness` [m] thick.
void addClearanceChecks(CheckList& list, const mechanism::OpposedPair& pair, double rimThickness);

/// What skirt and rings run into in the liner; nothing without the piston section. `lifts` at
/// theta, the sample angles [rad].
void addLinerChecks(CheckList& list, const ports::PortTiming& timing,
                    const PerEnd<motion::LiftSamples>& lifts, const Samples& theta);
/// The inlet opening before the exhaust.
void addOpeningOrderCheck(CheckList& list, const ports::PortTiming& timing);

/// Mean piston speed at ω [rad/s].
void addSpeedChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    double speed);

/// Peak pressure, knock, what the solver remarks, supply power not counted; or why there is no
/// solution.
void addGasChecks(CheckList& list, const Result<gas::CycleSolution>& gas,
                  const design::Design& design);

/// Surge and choke of a compressor.
void addSupplyChecks(CheckList& list, const gas::CycleSolution& gas, const design::Design& design);

/// Lift-off, jam, and where the load changes flank on a closed track.
void addLoadChecks(CheckList& list, const StageResults& results);

/// What nobody judges otherwise: a narrow gap between crowns, fast rollers, roller bearings without
/// a rating. Remarks.
void addDutyChecks(CheckList& list, const StageResults& results);

/// Contact stress, film, roller life, crown truncation.
void addContactChecks(CheckList& list, const contact::Contact& contact,
                      const mechanism::OpposedPair& pair, const design::Limits& limits);

} // namespace lobewright::solution
