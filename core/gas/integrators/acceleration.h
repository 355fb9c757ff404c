#pragma once

#include <Eigen/Core>

namespace lobewright::gas {

/// Anderson's acceleration of a fixed-point search x = F(x): combines the last few iterates so that
/// their residuals F(x) − x cancel best. Differences of residuals are known as well as F was
/// evaluated: what combining them would gain beyond that is noise, and is left. [Anderson 1965;
/// Walker & Ni 2011; regularized: Scieur, d'Aspremont & Bach 2016]
class AndersonAcceleration {
  public:
    explicit AndersonAcceleration(int memory) : memory_(memory) {}
    /// The next x to try from the present x and F(x), all of one size. `noise`: to which every
    /// number of F(x) is good.
    Eigen::VectorXd next(const Eigen::VectorXd& x, const Eigen::VectorXd& mapped,
                         double noise = 0.0);
    /// F has changed a little: what is known of it stays, but is not compared with what comes.
    void beginAnew() { lastMapped_.resize(0); }
    void forget() {
        stored_ = 0;
        beginAnew();
    }

  private:
    void remember(const Eigen::VectorXd& mappedChange, const Eigen::VectorXd& residualChange,
                  double noise);

    int memory_;
    int stored_ = 0;                                  ///< differences in use
    Eigen::MatrixXd mappedChanges_, residualChanges_; ///< newest first
    Eigen::VectorXd doubts_; ///< how far off a difference of residuals may be
    Eigen::VectorXd lastMapped_, lastResidual_;
    double lastNoise_ = 0.0;
};

} // namespace lobewright::gas
