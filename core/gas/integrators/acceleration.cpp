#include "core/gas/integrators/acceleration.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
void AndersonAcceleration::remember(const Eigen::VectorXd& mappedChange,
                                    const Eigen::VectorXd& residualChange, double noise) {
    const Eigen::Index kept = std::min(stored_, memory_ - 1);
    for (Eigen::Index j = kept; j > 0; --j) {
        mappedChanges_.col(j) = mappedChanges_.col(j - 1);
        residualChanges_.col(j) = residualChanges_.col(j - 1);
        doubts_[j] = doubts_[j - 1];
    }
    mappedChanges_.col(0) = mappedChange;
    residualChanges_.col(0) = residualChange;
    doubts_[0] = noise * std::sqrt(static_cast<double>(mappedChange.size()));
    stored_ = static_cast<int>(kept) + 1;
}

Eigen::VectorXd AndersonAcceleration::next(const Eigen::VectorXd& x, const Eigen::VectorXd& mapped,
                                           double noise) {
    const Eigen::Index size = x.size();
    const Eigen::VectorXd residual = mapped - x;
    if (mappedChanges_.rows() != size) {
        mappedChanges_ = residualChanges_ = Eigen::MatrixXd::Zero(size, memory_);
        doubts_ = Eigen::VectorXd::Zero(memory_);
        forget();
    }
    if (lastMapped_.size() == size) {
        remember(mapped - lastMapped_, residual - lastResidual_, std::max(noise, lastNoise_));
    }
    lastMapped_ = mapped;
    lastResidual_ = residual;
    lastNoise_ = noise;
    if (stored_ == 0) {
        return mapped;
    }
    // min |r − ΔR·γ|² + Σ (doubt·γ)²
    Eigen::MatrixXd system = Eigen::MatrixXd::Zero(size + stored_, stored_);
    system.topRows(size) = residualChanges_.leftCols(stored_);
    system.bottomRows(stored_).diagonal() = doubts_.head(stored_);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(size + stored_);
    right.head(size) = residual;
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(system);
    qr.setThreshold(1e-8);
    const Eigen::VectorXd gamma = qr.solve(right);
    return mapped - mappedChanges_.leftCols(stored_) * gamma;
}

} // namespace lobewright::gas
