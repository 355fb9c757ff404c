#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/mechanism/opposed_pair.h"

#include <cmath>
#include <functional>
#include <utility>

/// Pressure traces in closed form, for tests that need no gas cycle.
namespace lobewright::traces {

/// Pressure of cylinder 1 as a function of the shaft angle; other cylinders lag by ψ_k − ψ_1.
class FunctionTrace final : public gas::GasTrace {
  public:
    FunctionTrace(std::function<double(double)> pressure, std::vector<double> psi)
        : pressure_(std::move(pressure)), psi_(std::move(psi)) {}

    gas::GasSamples sample(const Samples& theta, int cylinder) const override {
        const Samples none = Samples::Zero(theta.size());
        return {theta.unaryExpr([&](double at) { return pressure(at, cylinder); }), none, none,
                none};
    }
    double pressure(double theta, int cylinder) const override {
        return pressure_(theta - (psi_[static_cast<std::size_t>(cylinder)] - psi_.front()));
    }

  private:
    std::function<double(double)> pressure_;
    std::vector<double> psi_;
};

/// Polytropic compression from `outer` pressure at ODC, pressure raised `burn` times at IDC,
/// polytropic expansion, back to `outer` at ODC at once. Work of a cycle in closed form.
struct BurnAtIdc {
    mechanism::OpposedPair pair;
    double outer = 1.2e5; ///< [Pa]
    double burn = 3.0;
    double compression = 1.33, expansion = 1.28; ///< polytropic exponents

    double volumeAtIdc() const { return pair.volume(pair.deadCentres()[0].idc); }
    double volumeAtOdc() const { return pair.volume(pair.deadCentres()[0].odc); }
    double peak() const {
        return burn * outer * std::pow(volumeAtOdc() / volumeAtIdc(), compression);
    }
    double pressure(double theta) const {
        const auto& centres = pair.deadCentres()[0];
        const double since = mechanism::wrapped(theta - centres.idc, pair.period());
        const double volume = pair.volume(theta);
        return since < centres.odc - centres.idc
                   ? peak() * std::pow(volumeAtIdc() / volume, expansion)
                   : outer * std::pow(volumeAtOdc() / volume, compression);
    }
    double work() const {
        const auto polytropic = [](double p, double v, double to, double n) {
            return p * v / (n - 1.0) * (1.0 - std::pow(v / to, n - 1.0));
        };
        return polytropic(peak(), volumeAtIdc(), volumeAtOdc(), expansion) +
               polytropic(outer, volumeAtOdc(), volumeAtIdc(), compression);
    }
    FunctionTrace trace() const {
        return {[*this](double theta) { return pressure(theta); },
                mechanism::cylinderAngles(pair.mechanism())};
    }
    std::vector<double> breaks() const {
        return {pair.deadCentres()[0].idc, pair.deadCentres()[0].odc};
    }
};

} // namespace lobewright::traces
