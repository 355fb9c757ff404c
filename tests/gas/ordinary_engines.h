#pragma once

#include "tests/gas/engines.h"

#include <random>

namespace lobewright::gas {

/// Engines of ordinary proportions at random, with a constant supply or a blower, of 1 to 16
/// cylinders evenly or unevenly phased, the plenum 0.1 to 20 displacements.
class OrdinaryEngines {
  public:
    explicit OrdinaryEngines(unsigned long long seed) : random_(seed) {}

    /// An engine at its rated speed.
    Engine next();
    /// Speeds from 5 % to 150 % of the rated one, most of them low [rad/s].
    std::vector<double> speeds(const Engine& engine, int count);

  private:
    double within(double from, double to);
    double spread(double from, double to); ///< evenly over the logarithm
    bool chance(double probability) { return within(0.0, 1.0) < probability; }
    int pick(int count);
    PairChamber chamber();
    Settings settings(const PairChamber& chamber, const RunConditions& run);
    RunConditions run(const PairChamber& chamber);

    std::mt19937_64 random_;
};

} // namespace lobewright::gas
