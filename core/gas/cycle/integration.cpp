#include "core/gas/cycle/integration.h"

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr long stepLimit = 400000;          ///< steps between two stops
constexpr std::size_t reservedSteps = 4096; ///< memory taken beforehand for the record
/// Steps to and from where no polynomial follows the flow are to be this much more exact than
/// others: it falls as the root of the pressure drop before it turns, and grows as the power of 1.5
/// of the way that the edge of a port has gone, of which the estimate sees too little.
constexpr double strictError = 0.2;
/// Of the last step's, as the next step's size is to know it: of 1e-4.
constexpr double leastLogarithmOfError = -9.210340371976182;
/// Where pressures are nearly equal, a looser one would blur the flow between them.
constexpr double implicitTolerance = 1e-7, roughImplicitTolerance = 1e-5;

/// Scales of the variables of a cylinder: an error of `tolerance` times the scale is tolerated.
std::array<double, cylinderVariables> variableScales(const Model& model) {
    std::array<double, cylinderVariables> scales{};
    scales.fill(model.massScale);
    scales[temperature] = scales[unburntTemperature] = 300.0;
    scales[knockIntegral] = 1.0;
    // of the outflow only the mean counts, and that as far as some of it comes back
    scales[outflowMass] = scales[outflowProducts] = 10.0 * model.massScale;
    scales[outflowTemperature] = 3000.0 * model.massScale;
    for (const Variable variable : {slugEnthalpy, work, wallHeat, inletEnthalpy, exhaustEnthalpy}) {
        scales[variable] = model.energyScale;
    }
    // what is left unburnt, a few hundredths of the fuel, is shown by itself
    scales[burntFuel] = 0.2 * model.massScale / model.gas.airFuelRatio;
    return scales;
}

} // namespace

Integration::Integration(const Model& model, const SupplyState& supply, bool withPlenum)
    : model_(&model), constant_(supply), hasPlenum_(withPlenum), outside_(model, supply),
      scales_(variableScales(model)), plenumScales_(outside_.scales()), supply_(supply),
      h_(model.period() / 500.0), logarithmOfLastError_(leastLogarithmOfError) {
    if (withPlenum) {
        coupled_ = outside_.coupled();
        coupledCourse_.resize(coupled_.size());
    }
    plenumRecord.variables = coupled_;
    plenumRecord.constant = supply;
    plenumRecord.pump = model.pumpSpace;
    if (withPlenum) {
        plenumRecord.begin.reserve(reservedSteps);
        plenumRecord.length.reserve(reservedSteps);
        plenumRecord.coefficients.reserve(coupled_.size() * StepRecord::terms * reservedSteps);
    }
}

PortPressures Integration::pressures() const {
    if (!hasPlenum_) {
        return {constant_.pressure, constant_.exhaustPressure};
    }
    const SupplyState now = outside_.state(theta, plenum.data());
    return {now.pressure, now.exhaustPressure};
}

void Integration::gather() {
    const std::size_t count = cylinders.size();
    while (methodsOf_.size() <= count) {
        methodsOf_.emplace_back();
    }
    if (!methodsOf_[count]) {
        methodsOf_[count] = std::make_unique<Methods>(count, coupled_, outsideSize());
    }
    methods_ = methodsOf_[count].get();
    const std::size_t needed = sizeOf(count, outsideSize());
    for (std::vector<double>* values : {&y_, &dy_, &weights_, &scratch_}) {
        values->resize(needed);
    }
    offsets_.resize(count);
    for (std::size_t k = 0; k < count; ++k) {
        std::copy(cylinders[k]->y.begin(), cylinders[k]->y.end(), variables(k));
        offsets_[k] = cylinders[k]->angle;
    }
    if (hasPlenum_) {
        std::copy_n(plenum.begin(), outsideSize(), variables(count));
    }
    x_ = 0.0;
}

void Integration::scatter() {
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        std::copy_n(variables(k), cylinderVariables, cylinders[k]->y.begin());
        cylinders[k]->angle = offsets_[k] + x_;
    }
    if (hasPlenum_) {
        std::copy_n(variables(cylinders.size()), outsideSize(), plenum.begin());
    }
}

std::optional<Problem> Integration::advance(double length, double relativeTolerance) {
    tolerance_ = relativeTolerance;
    slack_ = 0.1 * relativeTolerance;
    turnNear_ = dropNearTurn(relativeTolerance);
    rough_ = relativeTolerance > roughTolerance;
    gather();
    refresh();
    const double from = theta;
    if (auto problem = integrateTo(length)) {
        return problem;
    }
    scatter();
    theta = from + length;
    return std::nullopt;
}

std::optional<Problem> Integration::followTo(double angle, double relativeTolerance) {
    RunningCylinder& cylinder = *cylinders.front();
    while (cylinder.angle < angle - sameAngle) {
        const double stop = std::min(angle, cylinder.nextStopAngle());
        if (auto problem = advance(stop - cylinder.angle, relativeTolerance)) {
            return problem;
        }
        cylinder.angle = stop;
        cylinder.applyStops(pressures());
    }
    return std::nullopt;
}

SupplyState Integration::supplyOf(double x, const double* y) const {
    if (!hasPlenum_) {
        return constant_;
    }
    return outside_.state(theta + x, y + cylinders.size() * cylinderVariables);
}

void Integration::rates(double x, const double* y, double* dy) {
    if (!hasPlenum_) {
        ++cylinderEvaluations_;
        RunningCylinder& only = *cylinders.front();
        only.equations.rates(offsets_.front() + x, y, only.memory, supply_, dy);
        return;
    }
    supply_ = supplyOf(x, y);
    cylinderEvaluations_ += static_cast<long>(cylinders.size());
    const SupplyState& supply = supply_;
    PortTraffic traffic;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        RunningCylinder& cylinder = *cylinders[k];
        const double* own = y + k * cylinderVariables;
        double* rate = dy + k * cylinderVariables;
        cylinder.equations.rates(offsets_[k] + x, own, cylinder.memory, supply, rate);
        traffic.add(cylinder.weight, own, rate, cylinder.memory, supply);
    }
    const std::size_t first = cylinders.size() * cylinderVariables;
    outside_.rates(theta + x, y + first, supply, traffic, dy + first);
}

void Integration::refresh() {
    ++effort_.restartEvaluations;
    rates(x_, y_.data(), dy_.data());
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        RunningCylinder& cylinder = *cylinders[k];
        if (cylinder.hintsStale) {
            Mode& mode = cylinder.memory.mode;
            mode.inletChoked = mode.exhaustChoked = mode.hot = false;
            mode.freshLimitsShortCircuit = true;
            const Margins now = marginsOf(k, variables(k), x_, true);
            const auto past = [&now](Event event) {
                return now[static_cast<std::size_t>(event)] < 0.0;
            };
            mode.inletChoked = past(Event::inletChokes);
            mode.exhaustChoked = past(Event::exhaustChokes);
            mode.hot = past(Event::fitBreakCrossed);
            mode.freshLimitsShortCircuit = !past(Event::shortCircuitLimited);
            cylinder.hintsStale = false;
        }
        cylinder.written->modeChanges.push_back(
            {offsets_[k] + x_ - model_->start, cylinder.memory});
    }
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        cylinders[k]->margins = marginsOf(k, variables(k), x_, !rough_);
    }
    settle();
    if (const auto size = firstSteps_.begin(tolerance_, stiff_)) {
        h_ = *size;
    }
    if (keepRestarts) {
        restarts.push_back({offsets_[0] + x_, {}, cylinders[0]->memory});
        std::copy_n(variables(0), cylinderVariables, restarts.back().y.begin());
    }
}

void Integration::settle() {
    relaxation_ = 0.0;
    TrafficAnswer answer;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        RunningCylinder& cylinder = *cylinders[k];
        if (cylinder.memory.mode.portsOpen()) {
            cylinder.responses = cylinder.equations.responses(offsets_[k] + x_, variables(k),
                                                              cylinder.memory, supply_);
            relaxation_ = std::max(relaxation_, cylinder.responses.relaxation());
            if (hasPlenum_) {
                answer.add(cylinder.weight, cylinder.memory.mode, cylinder.responses);
            }
        }
    }
    if (hasPlenum_) {
        relaxation_ = outside_.relaxation(relaxation_, theta + x_, variables(cylinders.size()),
                                          supply_, answer);
    }
}

/// An explicit step is stable up to about 3.3/rate. Where that would take hundreds of steps to the
/// next stop, an implicit method is cheaper.
void Integration::chooseMethod(double stop) {
    constexpr double enter = 100.0;
    constexpr double binding = 1.5; // a step so long is limited by stability, not by accuracy
    constexpr double leave = 20.0;
    const double relaxations = relaxation_ * (stop - x_);
    if (!stiff_ && relaxations > enter && relaxation_ * h_ > binding) {
        stiff_ = true;
    } else if (stiff_ && relaxations < leave) {
        stiff_ = false;
        h_ = std::min(h_, 2.0 / std::max(relaxation_, 1e-3));
    }
}

void Integration::setWeights(double relativeTolerance) {
    weightsTolerance_ = relativeTolerance;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        double* weights = &weights_[k * cylinderVariables];
        for (std::size_t i = 0; i < cylinderVariables; ++i) {
            weights[i] = relativeTolerance * scales_[i];
        }
        weights[temperature] = relativeTolerance * std::fabs(variables(k)[temperature]);
    }
    for (std::size_t i = 0; i < static_cast<std::size_t>(outsideSize()); ++i) {
        weights_[cylinders.size() * cylinderVariables + i] = relativeTolerance * plenumScales_[i];
    }
}

double Integration::tryStep(double h) {
    const auto evaluate = [this](double x, const double* y, double* dy) {
        ++effort_.stepEvaluations;
        rates(x, y, dy);
    };
    setWeights(!stiff_ ? tolerance_
                       : std::min(tolerance_, rough_ ? roughImplicitTolerance : implicitTolerance));
    if (!stiff_) {
        methods_->explicitly.attempt(evaluate, x_, h, y_.data(), dy_.data());
        return methods_->explicitly.error(weights_.data());
    }
    findStiffDerivatives();
    if (!methods_->implicitly.attempt(evaluate, x_, h, y_.data(), dy_.data(), methods_->derivatives,
                                      weights_.data())) {
        return std::numeric_limits<double>::infinity();
    }
    return methods_->implicitly.error(weights_.data());
}

std::optional<Problem> Integration::integrateTo(double stop) {
    bool opens = false, closes = false;
    for (const RunningCylinder* cylinder : cylinders) {
        opens = opens || cylinder->portOpens();
        closes = closes || cylinder->portClosesAt(cylinder->angle + stop);
    }
    long steps = 0;
    while (x_ < stop) {
        chooseMethod(stop);
        const double remaining = stop - x_;
        double h = std::min(h_, 0.5 * remaining);
        if (h_ >= 0.9 * remaining) {
            h = remaining;
        }
        const double approach = stepTowardsTurn();
        const bool cutShort = h == remaining || approach < h;
        h = std::min(h, approach);
        const bool strict = (opens && x_ == 0.0) || (closes && h == remaining);
        const double error = tryStep(h) / (strict ? strictError : 1.0);
        if (!(error <= 1.0)) {
            shortenStep(h, error);
            if (h_ < 1e-13 * model_->period() || cylinderEvaluations_ > mostEvaluations) {
                return impossibleState().value_or(stalled());
            }
            continue;
        }
        const std::optional<Crossing> crossing = firstCrossing(h);
        if (crossing && crossing->share < 1.0) {
            if (crossing->share > 0.0 && !takePartOfStep(crossing->share * h)) {
                continue;
            }
        } else {
            adaptStep(h, error, cutShort);
            accept(h, h == remaining ? stop : x_ + h);
        }
        if (crossing) {
            change(*crossing);
        }
        if (auto problem = impossibleState()) {
            return problem;
        }
        if (++steps > stepLimit || cylinderEvaluations_ > mostEvaluations) {
            return stalled();
        }
    }
    return std::nullopt;
}

bool Integration::takePartOfStep(double h) {
    const double error = tryStep(h);
    // the implicit method's estimate need not fall with the step
    if (stiff_ ? !std::isfinite(error) : !(error <= strictError)) {
        shortenStep(h, error / strictError);
        return false;
    }
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        cylinders[k]->ahead = marginsOf(k, step().end() + k * cylinderVariables, x_ + h, !rough_);
    }
    accept(h, x_ + h);
    firstSteps_.skip();
    return true;
}

void Integration::shortenStep(double h, double error) {
    firstSteps_.fail();
    if (!std::isfinite(error)) {
        h_ = 0.25 * h;
        return;
    }
    const double power = !stiff_ ? -0.2 : -0.25;
    h_ = h * std::clamp(0.9 * std::pow(error, power), 0.1, 0.9);
}

/// Step size for the next step. [Hairer, Nørsett & Wanner, §II.4; PI control after Hairer & Wanner,
/// §IV.2, for the explicit method]
void Integration::adaptStep(double h, double error, bool cutShort) {
    const double bounded = std::max(error, 1e-8);
    const double logarithmOfError = logarithm(bounded);
    const double power =
        !stiff_ ? 0.04 * logarithmOfLastError_ - 0.17 * logarithmOfError : -0.25 * logarithmOfError;
    const double next = h * std::clamp(0.9 * exponential(power), 0.2, 5.0);
    firstSteps_.note(next, tolerance_, stiff_);
    h_ = cutShort ? std::max(h_, next) : next;
    logarithmOfLastError_ = std::max(logarithmOfError, leastLogarithmOfError);
}

void Integration::accept(double h, double end) {
    ++(stiff_ ? effort_.implicitSteps : effort_.explicitSteps);
    recordStep(h);
    std::copy_n(step().end(), y_.size(), y_.begin());
    std::copy_n(step().endRates(), y_.size(), dy_.begin());
    x_ = end;
    for (RunningCylinder* cylinder : cylinders) {
        cylinder->margins = cylinder->ahead;
    }
    settle();
}

void Integration::recordStep(double h) {
    static_assert(airMass == 0 && productsMass == 1 && temperature == 2);
    double r[StepRecord::terms * StepRecord::variables];
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        StepRecord& steps = cylinders[k]->written->steps;
        steps.begin.push_back(offsets_[k] + x_ - model_->start);
        steps.length.push_back(h);
        step().denseCoefficientsOfFour(static_cast<int>(k) * cylinderVariables, r);
        steps.coefficients.insert(steps.coefficients.end(), r, std::end(r));
    }
    if (hasPlenum_) {
        plenumRecord.begin.push_back(theta + x_);
        plenumRecord.length.push_back(h);
        for (const int variable : coupled_) {
            step().denseCoefficients(
                static_cast<int>(cylinders.size()) * cylinderVariables + variable, r);
            plenumRecord.coefficients.insert(plenumRecord.coefficients.end(), r,
                                             r + StepRecord::terms);
        }
    }
}

std::optional<Problem> Integration::impossibleState() {
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        const double* y = variables(k);
        const double mass = y[airMass] + y[productsMass];
        if (!(y[temperature] > coldestGas && y[temperature] < hottestGas && mass > 0.0)) {
            return Problem{"", Message(LW_TEXT("the gas left the range of the model at a shaft "
                                               "angle of %1: %2, %3 in the chamber"),
                                       withDecimals(offsets_[k] + x_, in::degrees, 1),
                                       amountIn(in::kelvin, y[temperature]), Amount(mass, in::mg))};
        }
    }
    return hasPlenum_ ? outside_.impossible(variables(cylinders.size())) : std::nullopt;
}

Problem Integration::stalled() const {
    return {"", Message(LW_TEXT("the gas equations could not be integrated beyond a shaft angle of "
                                "%1: the steps became too small"),
                        withDecimals(offsets_.empty() ? theta + x_ : offsets_[0] + x_, in::degrees,
                                     3))};
}

} // namespace lobewright::gas
