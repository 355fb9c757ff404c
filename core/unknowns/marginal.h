#pragma once

#include <limits>

namespace lobewright::unknowns {

/// How the values of one unknown are spread, in the unit of the design file.
struct Marginal {
    enum class Kind {
        uniform,
        triangular, ///< mode inside low … high
        normal,     ///< low and high are the 5th and the 95th percentile
        choice      ///< one of several words, each as likely; the value is its index
    };
    Kind kind = Kind::uniform;
    double low = 0.0, high = 1.0;
    double mode = 0.5;
    int options = 0; ///< of a choice, ≥ 2
    /// Admissible values: a normal distribution is cut off there.
    double least = -std::numeric_limits<double>::infinity();
    double most = std::numeric_limits<double>::infinity();

    /// The value below which this share of the values lies; share 0 … 1. Of a choice: the index of
    /// the word.
    double value(double share) const;
    /// Half the width of what is thought possible: (high − low)/2; of a choice 0.
    double halfWidth() const { return kind == Kind::choice ? 0.0 : 0.5 * (high - low); }
    /// Mean and standard deviation of the normal distribution before it is cut off.
    double mean() const { return 0.5 * (low + high); }
    double deviation() const;
    /// Whether the admissible values cut off more than one in ten thousand.
    bool isCut() const;
};

} // namespace lobewright::unknowns
