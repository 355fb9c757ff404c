#pragma once

#include "core/design/design.h"
#include "core/monitor.h"
#include "core/study/operating_points.h"
#include "core/unknowns/inputs.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lobewright::unknowns {

/// How many engines to compute, and at which speeds.
struct Plan {
    int samples = 512;
    std::uint64_t seed = 1;
    std::vector<double> speeds; ///< of the curve [1/min], ascending, > 0; ≥ 3
    study::Shard part = {};     ///< samples i with i % of == part
};

/// Speeds for the curve of a design: eight from 25 to 130 % of its own speed, which is one of them.
std::vector<double> usualSpeeds(const design::Design& design);

/// Why an engine gives no results.
struct Failure {
    enum class Kind {
        none,
        notBuilt, ///< a rule of the geometry is broken
        notRun    ///< the gas cycle has no solution
    };
    Kind kind = Kind::none;
    std::string rule; ///< its text without values, the same for all engines that break it
    Message message;  ///< of this engine, with its values
};

/// Quantities of the curve, the same at every speed.
enum CurveQuantity : int { torque, power, peakPressure, contactStress, keepsContact };
/// A million engines of fifty values each are half a gigabyte.
inline constexpr int mostSamples = 1000000;
inline constexpr int curveQuantities = 5;
/// Their columns; contact stress is the larger of both sides.
std::vector<study::Column> curveColumns();

/// One engine of the study. Values that are not available are NaN, as in a channel.
struct Run {
    long index = 0;             ///< in the sequence; −1: the design as it is
    std::vector<double> shares; ///< one an unknown, 0 … 1
    Failure failure = {};
    std::vector<double> results = {}; ///< one a result
    std::vector<double> curve = {};   ///< speed by speed, the quantities of each

    bool runs() const { return failure.kind == Failure::Kind::none; }
    double curveAt(std::size_t speed, CurveQuantity quantity) const {
        return curve[speed * curveQuantities + static_cast<std::size_t>(quantity)];
    }
};

/// Engines drawn from what is known of a design.
struct Ensemble {
    Plan plan;
    std::vector<Unknown> unknowns;
    draft::Followers followers; ///< of the unknowns
    std::vector<study::Column> results;
    Run nominal;           ///< the design as it is
    std::vector<Run> runs; ///< ascending index

    std::optional<std::size_t> result(std::string_view name) const;
    /// What the unknowns are in an engine, in their units; of a choice the index of the word.
    std::vector<double> inputsOf(const Run& run) const;
};

/// Names of the results that are kept of every engine that a design stands for: those of the
/// operating point, the air supply of the design included, then what its curve tells
/// (resultsOfCurve()).
std::vector<std::string> resultsOfPoint(const design::Design& design);
/// Highest torque and power over the speeds with where they lie, by a parabola through the highest
/// point and its neighbours; at an end of the curve that end.
std::vector<study::Column> resultsOfCurve();

/// The design at one point of a study, with what follows the unknowns. shares: one an unknown,
/// 0 … 1. Errors: a value that breaks a rule of its field (its path).
Result<design::Design> withShares(const design::Design& design,
                                  const std::vector<Unknown>& unknowns,
                                  const draft::Followers& followers,
                                  const std::vector<double>& shares);

/// Computes single engines of a study.
class Engines {
  public:
    Engines(const design::Design& design, std::vector<double> speeds);

    const std::vector<Unknown>& unknowns() const { return unknowns_; }
    const draft::Followers& followers() const { return followers_; }
    const std::vector<study::Column>& results() const { return results_; }
    /// The design as it is.
    const Run& nominal() const { return nominal_; }
    /// One engine. Absent: stopped by the monitor. May be called from several threads.
    std::optional<Run> run(long index, std::vector<double> shares, Monitor& monitor) const;

  private:
    std::optional<Run> solved(const design::Design& design, Run run, Monitor& monitor) const;

    design::Design design_;
    std::vector<double> speeds_;
    std::vector<Unknown> unknowns_;
    draft::Followers followers_;
    std::vector<std::string> names_; ///< of the results at the operating point
    std::vector<study::Column> results_;
    Run nominal_;
};

/// Called for each finished engine, from several threads but never at the same time.
using RunSink = std::function<void(const Run&)>;
/// Called with the ensemble before its engines come.
using EmptySink = std::function<void(const Ensemble&)>;

/// Shares of the engines `from` … `to` − 1: a Sobol' sequence, shifted by the seed [Cranley 1976].
Matrix sharesOf(const Statistics& statistics, int unknowns, std::uint64_t seed, long from, long to);

/// An ensemble before its engines are computed: unknowns, results, the design as it is.
/// Errors: as computeEnsemble().
Result<Ensemble> emptyEnsemble(const design::Design& design, const Plan& plan);

/// Engines of a plan on all cores. The answers depend on design, speeds, samples and seed alone:
/// not on the cores, nor on the part that an engine is in.
/// Errors: the design is invalid (paths), nothing in it is uncertain (path "/knowledge"), speeds
/// out of order (path ""), no statistics (path ""), cancelled (path "").
Result<Ensemble> computeEnsemble(const design::Design& design, const Plan& plan, Monitor& monitor,
                                 const RunSink& sink = {}, const EmptySink& begun = {});

} // namespace lobewright::unknowns
