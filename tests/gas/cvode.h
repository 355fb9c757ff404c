#pragma once

#include <functional>
#include <memory>
#include <vector>

namespace lobewright::testing {

/// CVODE's variable-order BDF with a dense Jacobian by differences, as a second opinion on an
/// integration. [Hindmarsh et al. 2005, SUNDIALS]
class Cvode {
  public:
    using Rates = std::function<void(double x, const double* y, double* dy)>;
    using Roots = std::function<void(double x, const double* y, double* g)>;

    /// Backward differentiation with Newton's method for stiff equations, Adams's methods with
    /// fixed-point iteration for others.
    enum class Method { stiff, adams };

    /// `absolute`: tolerated error of each variable.
    Cvode(Rates rates, double relative, std::vector<double> absolute,
          Method method = Method::stiff);
    ~Cvode();
    Cvode(const Cvode&) = delete;
    Cvode& operator=(const Cvode&) = delete;

    /// Functions whose zeros end an integration.
    void watch(int count, Roots roots);
    /// Integrates y from x to `stop` or to the first zero of a watched function; returns where it
    /// ended. Starts afresh: the equations may have changed since the last call. `onStep` sees
    /// every step.
    double integrate(double x, double stop, std::vector<double>& y,
                     const std::function<void(double, const double*)>& onStep = {});
    const std::vector<int>& rootsFound() const { return rootsFound_; } ///< −1, 0 or 1 each
    long evaluations() const { return evaluations_; }

  private:
    struct Handles;
    std::unique_ptr<Handles> handles_;
    Rates rates_;
    Roots roots_;
    int rootCount_ = 0;
    std::vector<int> rootsFound_;
    long evaluations_ = 0;
    friend struct CvodeCallbacks;
};

} // namespace lobewright::testing
