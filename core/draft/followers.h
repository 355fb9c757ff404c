#pragma once

#include "core/design/fields.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace lobewright::draft {

/// The inputs of a drafted design that follow others by the rule that gave them: when those move,
/// they go along, so that what was given stays given. Of a displacement that is given, the stroke
/// goes with 1/B²; of a compression ratio, the clearance with the stroke.
class Followers {
  public:
    /// Nothing follows.
    Followers() = default;
    /// Inputs that are derived or assumed by one of these rules, as they are noted in the design.
    explicit Followers(const design::Design& design);

    /// In the order in which they follow, JSON pointers; none where nothing was drafted.
    std::vector<std::string> paths() const;
    bool follows(const std::string& path) const;

    /// Sets all followers for these values of other inputs; what is not among them is as in the
    /// design. The value of a follower among them is that at the size of the design, to which the
    /// rule is applied. The followers that were not among them stand at the end, in the order of
    /// paths(). values: in the unit of the file.
    design::FieldValues completed(design::FieldValues values) const;

  private:
    using Numbers = std::map<std::string, double, std::less<>>;
    /// What a rule says of the numbers of an engine, but for a constant factor.
    using Law = std::function<double(const Numbers&)>;
    struct Follower {
        std::string path;
        Law law;
        double byRule = 1.0; ///< the law in the design
        design::Range range;
    };
    /// In the order of the draft: what a law speaks of stands before it.
    static std::vector<std::pair<std::string_view, Law>> lawsFor(const design::Design& design);
    Numbers nominal_; ///< of the design, all that a law may speak of
    std::vector<Follower> followers_;
};

} // namespace lobewright::draft
