#include "core/mechanism/folded_angles.h"

#include "core/mechanism/extremes.h"

#include <algorithm>
#include <cassert>
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
        const double position = angle / period_ * scale_ + 0.5;
        const auto bucket = static_cast<std::size_t>(position);
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

FoldedAngles::FoldedAngles(double period, const Samples& theta, const std::vector<double>& lags) {
    const auto count = static_cast<std::size_t>(theta.size());
    Met met(period, std::max<std::size_t>(count, 1));
    for (const double lag : lags) {
        std::vector<Eigen::Index>& index = index_.emplace_back();
        index.reserve(count);
        for (Eigen::Index i = 0; i < theta.size(); ++i) {
            index.push_back(met.indexOf(wrapped(theta(i) - lag, period)));
        }
        std::vector<Run>& runs = runs_.emplace_back();
        for (Eigen::Index i = 0; i < theta.size(); ++i) {
            const Eigen::Index place = index[static_cast<std::size_t>(i)];
            if (runs.empty() || place != runs.back().place + runs.back().count) {
                runs.push_back({i, place, 0});
            }
            ++runs.back().count;
        }
    }
    places_ = Eigen::Map<const Samples>(met.angles().data(),
                                        static_cast<Eigen::Index>(met.angles().size()));
}

Samples FoldedAngles::unfolded(const Samples& atPlaces, std::size_t lag) const {
    return unfolded(atPlaces, lag, static_cast<Eigen::Index>(index_[lag].size()));
}

Samples FoldedAngles::unfolded(const Samples& atPlaces, std::size_t lag, Eigen::Index count) const {
    Samples result(count);
    for (const Run& run : runs_[lag]) {
        const Eigen::Index end = std::min(run.sample + run.count, count);
        if (run.sample < end) {
            std::copy_n(atPlaces.data() + run.place, end - run.sample, result.data() + run.sample);
        }
    }
    return result;
}

Samples FoldedAngles::folded(const Samples& atTheta) const {
    assert(index_.size() == 1);
    Samples result(places_.size());
    for (Eigen::Index i = 0; i < atTheta.size(); ++i) {
        result(index_.front()[static_cast<std::size_t>(i)]) = atTheta(i);
    }
    return result;
}

std::vector<double> cylinderLags(const Mechanism& mechanism) {
    std::vector<double> lags = cylinderAngles(mechanism);
    const double first = lags.empty() ? 0.0 : lags.front();
    for (double& lag : lags) {
        lag -= first;
    }
    return lags;
}

} // namespace lobewright::mechanism
