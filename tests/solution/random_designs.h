#pragma once

#include "core/design/design.h"

#include <random>
#include <string>
#include <vector>

namespace lobewright::test {

/// Valid designs at random: samples with some of their values moved, first anywhere near, then
/// anywhere in range, and with other lobes. The same seed gives the same designs.
class RandomDesigns {
  public:
    RandomDesigns(std::vector<design::Design> samples, unsigned long seed)
        : samples_(std::move(samples)), random_(seed) {}
    design::Design next();

  private:
    double within(double from, double to);
    bool chance(double share) { return within(0.0, 1.0) < share; }
    std::size_t pick(std::size_t count);
    double nearOrAnywhere(double now, double min, double max);
    design::Design withOneValueMoved(const design::Design& design);
    void reshape(motion::Pattern& pattern);

    std::vector<design::Design> samples_;
    std::mt19937_64 random_;
};

} // namespace lobewright::test
