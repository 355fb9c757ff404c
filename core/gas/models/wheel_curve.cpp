#include "core/gas/models/wheel_curve.h"

#include "core/pchip.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <map>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Where the level line to the left of the peak begins, as (φ − φ_p)/(φ_c − φ_p): there it touches
/// the parabola.
constexpr double levelFrom = 0.01;
constexpr double levelHead = 1.0 - levelFrom * levelFrom; ///< ψ/ψ₀ there
constexpr double lowestEfficiency = 0.2;                  ///< share of the best, own estimate

/// ψ = ψ₀·(1 − ((φ − φ_p)/(φ_c − φ_p))²), η = η_b·(2·s − s²) with s = φ/φ_b.
class Parabola final : public WheelCurve {
  public:
    explicit Parabola(const Wheel& wheel) : wheel_(wheel) {}

    double headCoefficient(double phi) const override {
        const double x = (phi - wheel_.peakFlow) / (wheel_.chokeFlow - wheel_.peakFlow);
        const double share =
            x > levelFrom ? 1.0 - x * x : levelHead + 2.0 * levelFrom * (levelFrom - x);
        return wheel_.headCoefficient * share;
    }
    double flowCoefficient(double psi) const override {
        const double share = psi / wheel_.headCoefficient;
        const double x = share < levelHead ? std::sqrt(1.0 - share)
                                           : levelFrom - (share - levelHead) / (2.0 * levelFrom);
        return wheel_.peakFlow + x * (wheel_.chokeFlow - wheel_.peakFlow);
    }
    double efficiency(double phi) const override {
        const double s = phi / wheel_.bestFlow;
        return wheel_.bestEfficiency * std::max(s * (2.0 - s), lowestEfficiency);
    }
    double surgeFlow() const override { return wheel_.surgeFlow; }
    double chokeFlow() const override { return wheel_.chokeFlow; }
    double bestFlow() const override { return wheel_.bestFlow; }

  private:
    Wheel wheel_;
};

using Curve = boost::math::interpolators::pchip<std::vector<double>>;

/// One measured speed: points by rising flow.
struct Line {
    double speed = 0.0; ///< [rad/s]
    std::vector<double> phi, psi, eta;
    std::size_t peak = 0; ///< of ψ
};

/// Rows of a table by speed, in coefficients of the reference state.
std::vector<Line> linesOf(const Wheel& wheel, const GasGroup& air) {
    std::map<double, std::vector<WheelPoint>> rows;
    for (const WheelPoint& point : wheel.points) {
        rows[point.speed].push_back(point);
    }
    const double t = wheel.referenceTemperature;
    const double heat = air.heat(t), exponent = air.gasConstant() / heat;
    const double density = wheel.referencePressure / (air.gasConstant() * t);
    std::vector<Line> lines;
    for (auto& [speed, points] : rows) {
        std::sort(points.begin(), points.end(),
                  [](const WheelPoint& a, const WheelPoint& b) { return a.flow < b.flow; });
        Line line;
        line.speed = speed;
        const double tip = 0.5 * wheel.diameter * speed;
        for (const WheelPoint& point : points) {
            const double phi = point.flow / (density * tip * wheel.diameter * wheel.diameter);
            const double psi =
                heat * t * std::expm1(exponent * std::log(point.pressureRatio)) / (tip * tip);
            const bool falls = line.phi.empty() || psi < line.psi.back();
            if (!line.phi.empty() && phi <= line.phi.back()) {
                continue; // the same flow twice
            }
            line.phi.push_back(phi);
            line.psi.push_back(psi);
            line.eta.push_back(point.efficiency);
            line.peak = falls && line.phi.size() > 1 ? line.peak : line.phi.size() - 1;
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

constexpr int places = 17; ///< at which lines of two speeds are mixed

/// φ and ψ from the peak to the last point, η from the first, at evenly spaced places.
struct Sampled {
    std::vector<double> phi, psi, etaPhi, eta;
};

Curve through(std::vector<double> x, std::vector<double> y) {
    while (x.size() < 4) { // the interpolator asks for four
        const std::size_t at = x.size() - 1;
        x.insert(x.begin() + static_cast<std::ptrdiff_t>(at), 0.5 * (x[at - 1] + x[at]));
        y.insert(y.begin() + static_cast<std::ptrdiff_t>(at), 0.5 * (y[at - 1] + y[at]));
    }
    return {std::move(x), std::move(y)};
}

Sampled sampled(const Line& line) {
    const auto from = static_cast<std::ptrdiff_t>(line.peak);
    const Curve head = through({line.phi.begin() + from, line.phi.end()},
                               {line.psi.begin() + from, line.psi.end()});
    const Curve efficiency = through(line.phi, line.eta);
    Sampled result;
    const double first = line.phi.front(), peak = line.phi[line.peak], last = line.phi.back();
    for (int i = 0; i < places; ++i) {
        const double s = static_cast<double>(i) / (places - 1);
        const double phi = i + 1 < places ? peak + s * (last - peak) : last;
        result.phi.push_back(phi);
        result.psi.push_back(head(phi));
        const double at = i + 1 < places ? first + s * (last - first) : last;
        result.etaPhi.push_back(at);
        result.eta.push_back(efficiency(at));
    }
    return result;
}

/// A table's lines at one speed: between two speeds mixed place by place, beyond them that of the
/// nearest by similarity.
class Measured final : public WheelCurve {
  public:
    Measured(const std::vector<Line>& lines, double speed) {
        const auto above = std::find_if(lines.begin(), lines.end(),
                                        [speed](const Line& line) { return line.speed >= speed; });
        const Line& high = above == lines.end() ? lines.back() : *above;
        const Line& low = above == lines.begin() || above == lines.end() ? high : *std::prev(above);
        const double weight =
            high.speed > low.speed ? (speed - low.speed) / (high.speed - low.speed) : 1.0;
        const Sampled a = sampled(low), b = sampled(high);
        const auto mixed = [weight](const std::vector<double>& one,
                                    const std::vector<double>& other) {
            std::vector<double> sum;
            for (std::size_t i = 0; i < one.size(); ++i) {
                sum.push_back((1.0 - weight) * one[i] + weight * other[i]);
            }
            return sum;
        };
        const std::vector<double> phi = mixed(a.phi, b.phi), psi = mixed(a.psi, b.psi);
        peak_ = phi.front();
        choke_ = phi.back();
        highest_ = psi.front();
        lowest_ = psi.back();
        const std::size_t n = phi.size();
        // beyond the peak as steep as a monotone curve may join, beyond the last point half as
        // steep as before it
        level_ = 3.0 * (phi[1] - phi[0]) / (psi[0] - psi[1]);
        beyond_ = 0.5 * (phi[n - 1] - phi[n - 2]) / (psi[n - 2] - psi[n - 1]);
        flow_ = std::make_shared<const Curve>(std::vector<double>(psi.rbegin(), psi.rend()),
                                              std::vector<double>(phi.rbegin(), phi.rend()),
                                              -beyond_, -level_);
        const std::vector<double> etaPhi = mixed(a.etaPhi, b.etaPhi), eta = mixed(a.eta, b.eta);
        const auto best = std::max_element(eta.begin(), eta.end());
        best_ = etaPhi[static_cast<std::size_t>(best - eta.begin())];
        surge_ = etaPhi.front();
        last_ = etaPhi.back();
        efficiency_ =
            std::make_shared<const Curve>(std::vector<double>(etaPhi), std::vector<double>(eta));
    }

    double flowCoefficient(double psi) const override {
        return psi > highest_  ? peak_ - level_ * (psi - highest_)
               : psi < lowest_ ? choke_ + beyond_ * (lowest_ - psi)
                               : (*flow_)(psi);
    }
    double headCoefficient(double phi) const override {
        if (phi <= peak_) {
            return highest_ + (peak_ - phi) / level_;
        }
        if (phi >= choke_) {
            return lowest_ - (phi - choke_) / beyond_;
        }
        double low = lowest_, high = highest_;
        constexpr int halvings = 50; // to the last digits
        for (int i = 0; i < halvings; ++i) {
            const double middle = 0.5 * (low + high);
            ((*flow_)(middle) > phi ? low : high) = middle;
        }
        return 0.5 * (low + high);
    }
    double efficiency(double phi) const override {
        return (*efficiency_)(std::clamp(phi, surge_, last_));
    }
    double surgeFlow() const override { return surge_; }
    double chokeFlow() const override { return choke_; }
    double bestFlow() const override { return best_; }

  private:
    double surge_, peak_, choke_, best_; ///< φ
    double last_;                        ///< φ of the last efficiency
    double highest_, lowest_;            ///< ψ at peak and choke
    double level_, beyond_; ///< −dφ/dψ left of the peak and right of the last point
    std::shared_ptr<const Curve> flow_, efficiency_;
};

} // namespace

std::optional<Problem> flawOfTable(const Wheel& wheel) {
    const std::vector<Line> lines = linesOf(wheel, dryAir());
    if (lines.empty()) {
        return Problem{"/map", LW_TEXT("the table of the wheel has no rows")};
    }
    for (const Line& line : lines) {
        const bool isShort = line.phi.size() < 3;
        bool falls = line.peak + 1 < line.phi.size();
        for (std::size_t i = line.peak; i + 1 < line.phi.size(); ++i) {
            falls = falls && line.psi[i + 1] < line.psi[i];
        }
        if (isShort || !falls) {
            return Problem{
                "/map", Message(isShort ? LW_TEXT("the line at %1 has fewer than three flows")
                                        : LW_TEXT("the pressure ratio at %1 does not fall to the "
                                                  "right of its peak"),
                                Amount(line.speed, in::rpm))};
        }
    }
    return std::nullopt;
}

std::shared_ptr<const WheelCurve> curveOf(const Wheel& wheel, const GasGroup& air,
                                          double correctedSpeed) {
    if (wheel.characteristic == WheelCharacteristic::coefficients) {
        return std::make_shared<const Parabola>(wheel);
    }
    return std::make_shared<const Measured>(linesOf(wheel, air), correctedSpeed);
}

} // namespace lobewright::gas
