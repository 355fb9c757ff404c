#pragma once

#include <Eigen/Core>

namespace lobewright::gas {

/// Anderson's acceleration of a fixed-point search x = F(x): combines the last few iterates so that
/// their residuals F(x) − x cancel best. [Anderson 1965; Walker & Ni 2011]
class AndersonAcceleration {
  public:
    explicit AndersonAcceleration(int memory) : memory_(memory) {}
    /// The next x to try from the present x and F(x), all of one size. `comparable`: F was
    /// evaluated as exactly as at the last call, so that the two can be subtracted.
    Eigen::VectorXd next(const Eigen::VectorXd& x, const Eigen::VectorXd& mapped,
                         bool comparable = true);
    void restart() {
        stored_ = 0;
        lastMapped_.resize(0);
    }

  private:
    int memory_;
    int stored_ = 0;                                  ///< differences in use
    Eigen::MatrixXd mappedChanges_, residualChanges_; ///< newest first
    Eigen::VectorXd lastMapped_, lastResidual_;
};

} // namespace lobewright::gas
