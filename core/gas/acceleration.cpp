#include "core/gas/acceleration.h"

#include <Eigen/Dense>

#include <algorithm>

namespace lobewright::gas {

Eigen::VectorXd AndersonAcceleration::next(const Eigen::VectorXd& x, const Eigen::VectorXd& mapped,
                                           bool comparable) {
    const Eigen::Index size = x.size();
    const Eigen::VectorXd residual = mapped - x;
    if (mappedChanges_.rows() != size) {
        mappedChanges_ = residualChanges_ = Eigen::MatrixXd::Zero(size, memory_);
        stored_ = 0;
        lastMapped_.resize(0);
    }
    if (comparable && lastMapped_.size() == size) {
        const Eigen::Index kept = std::min(stored_, memory_ - 1);
        for (Eigen::Index j = kept; j > 0; --j) {
            mappedChanges_.col(j) = mappedChanges_.col(j - 1);
            residualChanges_.col(j) = residualChanges_.col(j - 1);
        }
        mappedChanges_.col(0) = mapped - lastMapped_;
        residualChanges_.col(0) = residual - lastResidual_;
        stored_ = static_cast<int>(kept) + 1;
    }
    lastMapped_ = mapped;
    lastResidual_ = residual;
    if (stored_ == 0) {
        return mapped;
    }
    // columns that are combinations of newer ones carry noise, not news
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(residualChanges_.leftCols(stored_));
    qr.setThreshold(1e-8);
    const Eigen::VectorXd gamma = qr.solve(residual);
    return mapped - mappedChanges_.leftCols(stored_) * gamma;
}

} // namespace lobewright::gas
