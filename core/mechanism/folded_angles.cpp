#include "core/mechanism/folded_angles.h"

#include "core/mechanism/extremes.h"

#include <algorithm>
#include <cmath>

namespace lobewright::mechanism {

namespace {

/// Finds an angle again among those already met, by buckets over the period.
class Met {
  public:
    Met(double period, std::size_t expected)
        : period_(period), buckets_(expected + 1, none), scale_(static_cast<double>(expected)) {}

    Eigen::Index indexOf(double angle) {
        constexpr double same = 1e-12;
        // Even grids fall into the middle of a bucket, away from its bounds.
        const auto bucket = static_cast<std::size_t>(angle / period_ * scale_ + 0.5);
        for (Eigen::Index i = buckets_[bucket]; i != none; i = next_[static_cast<std::size_t>(i)]) {
            if (std::abs(angles_[static_cast<std::size_t>(i)] - angle) <= same) {
                return i;
            }
        }
        const auto added = static_cast<Eigen::Index>(angles_.size());
        angles_.push_back(angle);
        next_.push_back(buckets_[bucket]);
        buckets_[bucket] = added;
        return added;
    }
    const std::vector<double>& angles() const { return angles_; }

  private:
    static constexpr Eigen::Index none = -1;
    double period_;
    std::vector<Eigen::Index> buckets_;
    double scale_;
    std::vector<double> angles_;
    std::vector<Eigen::Index> next_;
};

} // namespace

FoldedAngles::FoldedAngles(const OpposedPair& pair, const Samples& theta) {
    const std::vector<double> psi = cylinderAngles(pair.mechanism());
    const auto count = static_cast<std::size_t>(theta.size());
    Met met(pair.period(), std::max<std::size_t>(count, 1));
    for (const double angle : psi) {
        std::vector<Eigen::Index>& index = index_.emplace_back();
        index.reserve(count);
        for (Eigen::Index i = 0; i < theta.size(); ++i) {
            index.push_back(met.indexOf(wrapped(theta(i) - (angle - psi.front()), pair.period())));
        }
    }
    angles_ = Eigen::Map<const Samples>(met.angles().data(),
                                        static_cast<Eigen::Index>(met.angles().size()));
}

Samples FoldedAngles::unfolded(const Samples& values, int cylinder) const {
    const std::vector<Eigen::Index>& index = index_[static_cast<std::size_t>(cylinder)];
    Samples result(static_cast<Eigen::Index>(index.size()));
    for (Eigen::Index i = 0; i < result.size(); ++i) {
        result(i) = values(index[static_cast<std::size_t>(i)]);
    }
    return result;
}

} // namespace lobewright::mechanism
