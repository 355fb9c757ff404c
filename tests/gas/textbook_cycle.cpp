#include "tests/gas/textbook_cycle.h"

#include "tests/gas/cvode.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>

namespace lobewright::testing {
namespace {

using gas::CycleAngles;
using std::numbers::pi;

// Thermodynamics of five species: N₂, O₂, Ar, CO₂, H₂O (NASA fits of GRI-Mech 3.0).
using Composition = std::array<double, 5>; // moles per kilogram
constexpr std::array<double, 5> molarMasses{28.0134e-3, 31.9988e-3, 39.948e-3, 44.0095e-3,
                                            18.01528e-3};
constexpr double universal = 8.314462618;
constexpr double nasa[5][2][6] = {
    {{3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12, -1020.8999},
     {2.92664, 1.4879768e-3, -5.68476e-7, 1.0097038e-10, -6.753351e-15, -922.7977}},
    {{3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1063.94356},
     {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1088.45772}},
    {{2.5, 0, 0, 0, 0, -745.375}, {2.5, 0, 0, 0, 0, -745.375}},
    {{2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -48371.9697},
     {3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -48759.166}},
    {{4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -30293.7267},
     {3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -30004.2971}}};

double cpOf(const Composition& n, double t) {
    double sum = 0.0;
    for (std::size_t s = 0; s < 5; ++s) {
        const double* a = nasa[s][t < 1000.0 ? 0 : 1];
        sum += n[s] * universal *
               (a[0] + a[1] * t + a[2] * std::pow(t, 2) + a[3] * std::pow(t, 3) +
                a[4] * std::pow(t, 4));
    }
    return sum;
}

double rawEnthalpy(std::size_t s, double t) {
    const double* a = nasa[s][t < 1000.0 ? 0 : 1];
    return universal * (a[0] * t + a[1] * t * t / 2 + a[2] * std::pow(t, 3) / 3 +
                        a[3] * std::pow(t, 4) / 4 + a[4] * std::pow(t, 5) / 5 + a[5]);
}

double hOf(const Composition& n, double t) {
    double sum = 0.0;
    for (std::size_t s = 0; s < 5; ++s) {
        sum += n[s] * (rawEnthalpy(s, t) - rawEnthalpy(s, 298.15));
    }
    return sum;
}

double rOf(const Composition& n) {
    double moles = 0.0;
    for (const double amount : n) {
        moles += amount;
    }
    return moles * universal;
}

Composition perKilogram(Composition moles) {
    double mass = 0.0;
    for (std::size_t s = 0; s < 5; ++s) {
        mass += moles[s] * molarMasses[s];
    }
    for (double& amount : moles) {
        amount /= mass;
    }
    return moles;
}

Composition mixed(const Composition& air, const Composition& products, double share) {
    Composition mixture;
    for (std::size_t s = 0; s < 5; ++s) {
        mixture[s] = (1.0 - share) * air[s] + share * products[s];
    }
    return mixture;
}

/// What the design's fuel is, written down again: c, h, o and lower heating value.
std::array<double, 4> fuelOf(gas::Fuel fuel) {
    static const std::map<gas::Fuel, std::array<double, 4>> fuels = {
        {gas::Fuel::petrol, {8, 14.96, 0, 44.0e6}},
        {gas::Fuel::methane, {1, 4, 0, 50.0e6}},
        {gas::Fuel::hydrogen, {0, 2, 0, 120.0e6}},
        {gas::Fuel::diesel, {12, 21.6, 0, 42.5e6}},
        {gas::Fuel::ethanol, {2, 6, 1, 26.9e6}}};
    return fuels.at(fuel);
}

/// ṁ through an orifice from an upstream state [kg/s] [Heywood, appendix C].
/// `straight`: below this relative drop proportional to it, where two chambers follow each other
/// so closely that the infinite slope of the root would stop any integrator.
double orifice(double area, double p0, double t0, double r, double gamma, double pDown,
               double straight = 0.0) {
    const double drop = 1.0 - pDown / p0;
    if (drop < straight) {
        return std::max(drop / straight, 0.0) *
               orifice(area, p0, t0, r, gamma, p0 * (1.0 - straight));
    }
    const double critical = std::pow(2.0 / (gamma + 1.0), gamma / (gamma - 1.0));
    const double pr = std::max(std::min(pDown / p0, 1.0), critical);
    const double bracket = 1.0 - std::pow(pr, (gamma - 1.0) / gamma);
    return area * p0 / std::sqrt(r * t0) * std::pow(pr, 1.0 / gamma) *
           std::sqrt(2.0 * gamma / (gamma - 1.0) * std::max(bracket, 0.0));
}

enum Index {
    ma,
    mp,
    temp,
    fresh,
    slugM,
    slugP,
    slugH,
    work,
    wall,
    delivered,
    outM,
    outP,
    outT,
    pumpA, // the space under the piston
    pumpP,
    pumpT,
    pumpWork,
    plenumM, // between compressor and inlet ports
    plenumT,
    manifoldA, // between exhaust ports and turbine
    manifoldP,
    manifoldT,
    compressorWork,
    turbineWork,
    count
};

class Textbook {
  public:
    Textbook(const gas::Chamber& chamber, const gas::Settings& settings, double omega, bool motored,
             double wheelSpeed)
        : chamber_(chamber), s_(settings), omega_(omega), motored_(motored),
          wheelSpeed_(wheelSpeed), cycle_(chamber.cycles()[0]) {
        const auto [c, h, o, lhv] = fuelOf(settings.fuel);
        const double nAir = (c + h / 4 - o / 2) / 0.2095;
        air_ = perKilogram({0.7809, 0.2095, 0.0093, 0.0003, 0.0});
        products_ = perKilogram({0.7809 * nAir, 0.0, 0.0093 * nAir, c + 0.0003 * nAir, h / 2});
        const double molarAir = 0.7809 * molarMasses[0] + 0.2095 * molarMasses[1] +
                                0.0093 * molarMasses[2] + 0.0003 * molarMasses[3];
        afr_ = nAir * molarAir / (1e-3 * (12.011 * c + 1.008 * h + 15.999 * o));
        lhv_ = lhv;
    }

    TextbookCycle solve();

  private:
    void rates(double theta, const double* y, double* dy) const;
    /// What stands before the inlet ports.
    struct Outside {
        double pressure, temperature, share;
    };
    bool pumps() const { return s_.supply.kind == gas::SupplyKind::underPiston; }
    double pumpVolume(double theta) const {
        return s_.supply.pump.deadVolume +
               s_.supply.pump.areaFactor * chamber_.behind(theta, s_.supply.pump.sides).volume;
    }
    bool turbocharged() const { return s_.supply.kind == gas::SupplyKind::compressor; }
    Outside behind(const double* y) const {
        if (!turbocharged()) {
            return {s_.exhaustPressure, backT_, backShare_};
        }
        return {(y[manifoldA] * rOf(air_) + y[manifoldP] * rOf(products_)) * y[manifoldT] /
                    s_.supply.compressor.turbine.exhaustVolume,
                y[manifoldT], y[manifoldP] / (y[manifoldA] + y[manifoldP])};
    }
    void compressor(const double* y, double drawn, double* dy) const;
    void turbine(const double* y, double in, double inProducts, double inEnthalpy,
                 double* dy) const;
    Outside outside(double theta, const double* y) const {
        if (turbocharged()) {
            return {y[plenumM] * rOf(air_) * y[plenumT] / s_.supply.plenumVolume, y[plenumT], 0.0};
        }
        if (!pumps()) {
            return {s_.supply.pressure, s_.supply.temperature, 0.0};
        }
        return {(y[pumpA] * rOf(air_) + y[pumpP] * rOf(products_)) * y[pumpT] / pumpVolume(theta),
                y[pumpT], y[pumpP] / (y[pumpA] + y[pumpP])};
    }
    double intake(double theta, const Outside& state) const;
    void pump(double theta, const double* y, const Outside& state, double in, double inAir,
              double enthalpy, double* dy) const;
    void ports(double theta, const gas::ChamberGeometry& g, const double* y, double p, double* dy,
               double& dMa, double& dMp, double& energy) const;
    double wallCoefficient(double p, double t, double v) const;
    double pressureOf(double theta, const double* y) const {
        return (y[ma] * rOf(air_) + y[mp] * rOf(products_)) * y[temp] / chamber_.at(theta).volume;
    }
    std::vector<double> stops() const;
    void enterStop(double theta, std::vector<double>& y);
    void startCycle(double theta, const std::vector<double>& y);
    void integratePeriod(Cvode& cvode, std::vector<double>& y);

    const gas::Chamber& chamber_;
    gas::Settings s_;
    double omega_;
    bool motored_;
    double wheelSpeed_;
    CycleAngles cycle_;
    Composition air_, products_;
    double afr_ = 0.0, lhv_ = 0.0;
    // what holds just now
    bool inletOpen_ = false, exhaustOpen_ = false;
    bool slugReturns_ = false, burning_ = false, combustion_ = false;
    double slugShare_ = 0.0, slugT_ = 300.0, backShare_ = 0.0, backT_ = 300.0;
    double fuel_ = 0.0, pr_ = 1.0, tr_ = 1.0, vr_ = 1.0, ps_ = 1.0, vs_ = 1.0, n_ = 1.35;
    double peak_ = 0.0;
};

/// Through the reed, or through plain windows that the skirt uncovers, into the pump [kg/rad].
double Textbook::intake(double theta, const Outside& state) const {
    const gas::Supply& supply = s_.supply;
    const double t0 = supply.ambientTemperature, ambient = supply.ambientPressure;
    const double cp = cpOf(air_, t0), gamma = cp / (cp - rOf(air_));
    if (const auto& row = supply.pump.skirtRow) {
        const double travel = chamber_.behind(theta, supply.pump.sides).volume /
                              (0.25 * pi * std::pow(chamber_.bore(), 2));
        const double open = std::clamp(travel - row->edge, 0.0, row->height);
        const double area = row->dischargeCoefficient * row->count * row->width * open;
        if (state.pressure <= ambient) {
            return orifice(area, ambient, t0, rOf(air_), gamma, state.pressure, 1e-5) / omega_;
        }
        const Composition gas = mixed(air_, products_, state.share);
        const double heat = cpOf(gas, state.temperature);
        return -orifice(area, state.pressure, state.temperature, rOf(gas), heat / (heat - rOf(gas)),
                        ambient, 1e-5) /
               omega_;
    }
    const gas::Reed& reed = supply.pump.reed;
    const double drop = ambient - state.pressure - reed.cracking;
    const double area =
        reed.dischargeCoefficient * reed.area * std::clamp(drop / reed.fullOpen, 0.0, 1.0);
    return orifice(area, ambient, t0, rOf(air_), gamma, state.pressure) / omega_;
}

/// First law of the space under the piston: intake in, ports out, adiabatic.
void Textbook::pump(double theta, const double* y, const Outside& state, double in, double inAir,
                    double enthalpy, double* dy) const {
    const gas::Supply& supply = s_.supply;
    const double drawn = intake(theta, state);
    // what goes back through the windows is what stands in the pump
    const double share = drawn < 0.0 ? state.share : 0.0;
    const double brought = drawn < 0.0 ? hOf(mixed(air_, products_, share), state.temperature)
                                       : hOf(air_, supply.ambientTemperature);
    const double t = y[pumpT];
    const double dAir = drawn * (1.0 - share) - inAir, dProducts = drawn * share + inAir - in;
    const double moved =
        state.pressure * supply.pump.areaFactor * chamber_.behind(theta, supply.pump.sides).rate;
    const double uAir = hOf(air_, t) - rOf(air_) * t;
    const double uProducts = hOf(products_, t) - rOf(products_) * t;
    dy[pumpA] = dAir;
    dy[pumpP] = dProducts;
    dy[pumpT] =
        (drawn * brought - enthalpy - moved - uAir * dAir - uProducts * dProducts) /
        (y[pumpA] * (cpOf(air_, t) - rOf(air_)) + y[pumpP] * (cpOf(products_, t) - rOf(products_)));
    dy[pumpWork] = moved;
}

/// Radial wheel on the falling side of its curve, filling an adiabatic vessel.
void Textbook::compressor(const double* y, double drawn, double* dy) const {
    const gas::Supply& supply = s_.supply;
    const gas::Wheel& wheel = supply.compressor.wheel;
    const double t0 = supply.ambientTemperature, cp = cpOf(air_, t0), r = rOf(air_);
    const double k = r / cp;
    const double u = 0.5 * wheel.diameter * wheelSpeed_;
    const double pressure = y[plenumM] * r * y[plenumT] / supply.plenumVolume;
    const double head = cp * t0 * (std::pow(pressure / supply.ambientPressure, k) - 1.0);
    const double fall = std::max(1.0 - head / (u * u * wheel.headCoefficient), 0.0);
    const double phi = wheel.peakFlow + (wheel.chokeFlow - wheel.peakFlow) * std::sqrt(fall);
    const double flow =
        phi * supply.ambientPressure / (r * t0) * u * wheel.diameter * wheel.diameter / omega_;
    const double s = phi / wheel.bestFlow;
    const double t2 = t0 + head / (cp * wheel.bestEfficiency * (2.0 * s - s * s));
    const double in = supply.afterCoolerTemperature.value_or(t2);
    const double t = y[plenumT];
    dy[plenumM] = flow - drawn;
    dy[plenumT] =
        (flow * hOf(air_, in) - drawn * hOf(air_, t) - (hOf(air_, t) - r * t) * (flow - drawn)) /
        (y[plenumM] * (cpOf(air_, t) - r));
    dy[compressorWork] = flow * (hOf(air_, t2) - hOf(air_, t0));
}

/// Adiabatic vessel with a nozzle and a wheel behind it.
void Textbook::turbine(const double* y, double in, double inProducts, double inEnthalpy,
                       double* dy) const {
    const gas::Turbine& turbine = s_.supply.compressor.turbine;
    const Outside now = behind(y);
    const Composition gas = mixed(air_, products_, now.share);
    const double t = now.temperature, cp = cpOf(gas, t), r = rOf(gas);
    const double out = now.pressure > s_.exhaustPressure
                           ? orifice(turbine.nozzleArea, now.pressure, t, r, cp / (cp - r),
                                     s_.exhaustPressure, 1e-5) /
                                 omega_
                           : 0.0;
    const double dProducts = inProducts - out * now.share;
    const double dAir = in - out - dProducts;
    const double uAir = hOf(air_, t) - rOf(air_) * t;
    const double uProducts = hOf(products_, t) - rOf(products_) * t;
    dy[manifoldA] = dAir;
    dy[manifoldP] = dProducts;
    dy[manifoldT] = (inEnthalpy - out * hOf(gas, t) - uAir * dAir - uProducts * dProducts) /
                    (y[manifoldA] * (cpOf(air_, t) - rOf(air_)) +
                     y[manifoldP] * (cpOf(products_, t) - rOf(products_)));
    const double spouting = std::sqrt(
        2.0 * cp * t * std::max(1.0 - std::pow(s_.exhaustPressure / now.pressure, r / cp), 0.0));
    if (spouting > 0.0) {
        const double nu = 0.5 * turbine.diameter * wheelSpeed_ / spouting / turbine.bestSpeedRatio;
        dy[turbineWork] =
            out * 0.5 * spouting * spouting * turbine.bestEfficiency * (2.0 * nu - nu * nu);
    }
}

void Textbook::ports(double theta, const gas::ChamberGeometry& g, const double* y, double p,
                     double* dy, double& dMa, double& dMp, double& energy) const {
    const Outside before = outside(theta, y);
    const Outside back = behind(y);
    double drawn = 0.0;
    std::array<double, 3> through{}; // mass, products, enthalpy out by the exhaust
    double taken = 0.0, takenAir = 0.0, takenEnthalpy = 0.0;
    const double m = y[ma] + y[mp];
    const double share = y[mp] / m;
    const Composition inside = mixed(air_, products_, share);
    const double r = rOf(inside);
    const double gamma = cpOf(inside, y[temp]) / (cpOf(inside, y[temp]) - r);
    const double h = hOf(inside, y[temp]);
    if (inletOpen_ && p <= before.pressure) {
        const double part = slugReturns_ ? slugShare_ : before.share;
        const double t = slugReturns_ ? slugT_ : before.temperature;
        const Composition stream = mixed(air_, products_, part);
        const double cp = cpOf(stream, t);
        const double in = orifice(g.inletArea, before.pressure, t, rOf(stream),
                                  cp / (cp - rOf(stream)), p, pumps() ? 1e-5 : 0.0) /
                          omega_;
        taken = in;
        takenAir = in * (1 - part);
        takenEnthalpy = in * hOf(stream, t);
        dMa += in * (1 - part);
        dMp += in * part;
        energy += in * hOf(stream, t);
        if (slugReturns_) {
            dy[slugM] -= in;
            dy[slugP] -= in * part;
            dy[slugH] -= in * hOf(stream, t);
        } else {
            dy[fresh] += in * (1 - part);
            dy[delivered] += in;
            drawn = in;
        }
    } else if (inletOpen_) {
        const double out =
            orifice(g.inletArea, p, y[temp], r, gamma, before.pressure, pumps() ? 1e-5 : 0.0) /
            omega_;
        taken = -out;
        takenAir = -out * (1 - share);
        takenEnthalpy = -out * h;
        dMa -= out * (1 - share);
        dMp -= out * share;
        energy -= out * h;
        if (pumps()) { // mixes in there at once
            dy[delivered] -= out;
        } else {
            dy[slugM] += out;
            dy[slugP] += out * share;
            dy[slugH] += out * h;
        }
        dy[fresh] -= out * y[fresh] / m;
    }
    if (pumps()) {
        pump(theta, y, before, taken, takenAir, takenEnthalpy, dy);
    }
    if (exhaustOpen_ && p >= back.pressure) {
        const double out = orifice(g.exhaustArea, p, y[temp], r, gamma, back.pressure,
                                   turbocharged() ? 1e-5 : 0.0) /
                           omega_;
        dMa -= out * (1 - share);
        dMp -= out * share;
        energy -= out * h;
        dy[fresh] -= out * y[fresh] / m;
        dy[outM] += out;
        dy[outP] += out * share;
        dy[outT] += out * y[temp];
        through = {out, out * share, out * h};
    } else if (exhaustOpen_) {
        const Composition stream = mixed(air_, products_, back.share);
        const double t = back.temperature;
        const double cp = cpOf(stream, t);
        const double in = orifice(g.exhaustArea, back.pressure, t, rOf(stream),
                                  cp / (cp - rOf(stream)), p, turbocharged() ? 1e-5 : 0.0) /
                          omega_;
        dMa += in * (1 - back.share);
        dMp += in * back.share;
        energy += in * hOf(stream, t);
        through = {-in, -in * back.share, -in * hOf(stream, t)};
    }
    if (turbocharged()) {
        compressor(y, drawn, dy);
        turbine(y, through[0], through[1], through[2], dy);
    }
}

double Textbook::wallCoefficient(double p, double t, double v) const {
    const double speed = chamber_.meanStrokeSum() * chamber_.cyclesPerTurn() * omega_ / (2 * pi);
    if (s_.wallHeat.model == gas::WallHeatModel::hohenberg) {
        return 130.0 * std::pow(v, -0.06) * std::pow(p / 1e5, 0.8) * std::pow(t, -0.4) *
               std::pow(speed + 1.4, 0.8);
    }
    double w = (inletOpen_ || exhaustOpen_ ? 6.18 : 2.28) * speed;
    if (combustion_) {
        const double motored = ps_ * std::pow(vs_ / v, n_);
        w += 3.24e-3 * chamber_.sweptVolume() * tr_ / (pr_ * vr_) * std::max(p - motored, 0.0);
    }
    return 3.26 * std::pow(chamber_.bore(), -0.2) * std::pow(p / 1e3, 0.8) * std::pow(t, -0.55) *
           std::pow(w, 0.8);
}

void Textbook::rates(double theta, const double* y, double* dy) const {
    std::fill(dy, dy + count, 0.0);
    const gas::ChamberGeometry g = chamber_.at(theta);
    const double t = y[temp];
    const double p = (y[ma] * rOf(air_) + y[mp] * rOf(products_)) * t / g.volume;
    double dMa = 0.0, dMp = 0.0, energy = 0.0;
    ports(theta, g, y, p, dy, dMa, dMp, energy);
    if (burning_) {
        const double c = chamber_.cyclesPerTurn();
        const double xi = (c * (theta - cycle_.idc) - s_.burn.start) / s_.burn.duration;
        const double a = s_.burn.wiebeA, m = s_.burn.wiebeM;
        if (xi > 0.0 && xi < 1.0) {
            const double dx = a * (m + 1) * std::pow(xi, m) * std::exp(-a * std::pow(xi, m + 1)) *
                              c / s_.burn.duration;
            const double dF = fuel_ * dx;
            dMa -= afr_ * dF;
            dMp += (1 + afr_) * dF;
            energy += s_.combustionEfficiency * lhv_ * dF;
        }
    }
    if (s_.wallHeat.model != gas::WallHeatModel::none) {
        const double crown = pi / 4 * chamber_.bore() * chamber_.bore();
        const double other =
            s_.wallHeat.exhaustCrownTemperature.value_or(s_.wallHeat.crownTemperature);
        const double heat =
            s_.wallHeat.multiplier * wallCoefficient(p, t, g.volume) *
            (crown * (t - s_.wallHeat.crownTemperature) + crown * (t - other) +
             pi * chamber_.bore() * g.linerLength * (t - s_.wallHeat.linerTemperature)) /
            omega_;
        dy[wall] = heat;
        energy -= heat;
    }
    dy[work] = p * g.volumeRate;
    const double uAir = hOf(air_, t) - rOf(air_) * t;
    const double uProducts = hOf(products_, t) - rOf(products_) * t;
    const double capacity =
        y[ma] * (cpOf(air_, t) - rOf(air_)) + y[mp] * (cpOf(products_, t) - rOf(products_));
    dy[ma] = dMa;
    dy[mp] = dMp;
    dy[temp] = (energy - dy[work] - uAir * dMa - uProducts * dMp) / capacity;
}

std::vector<double> Textbook::stops() const {
    const double begin = cycle_.lastClosing - chamber_.period();
    std::vector<double> angles{cycle_.firstOpening, cycle_.inletOpens,    cycle_.exhaustOpens,
                               cycle_.inletCloses,  cycle_.exhaustCloses, cycle_.lastClosing};
    if (!motored_) {
        const double from = cycle_.idc + s_.burn.start / chamber_.cyclesPerTurn();
        angles.push_back(from);
        angles.push_back(from + s_.burn.duration / chamber_.cyclesPerTurn());
    }
    for (const double kink : chamber_.kinks()) {
        double angle = kink;
        while (angle <= begin) {
            angle += chamber_.period();
        }
        while (angle > cycle_.lastClosing) {
            angle -= chamber_.period();
        }
        angles.push_back(angle);
    }
    std::sort(angles.begin(), angles.end());
    angles.erase(
        std::unique(angles.begin(), angles.end(), [](double a, double b) { return b - a < 1e-11; }),
        angles.end());
    return angles;
}

void Textbook::startCycle(double theta, const std::vector<double>& y) {
    inletOpen_ = exhaustOpen_ = burning_ = combustion_ = false;
    vr_ = chamber_.at(theta).volume;
    tr_ = y[temp];
    pr_ = pressureOf(theta, y.data());
    fuel_ = motored_ ? 0.0 : std::min(y[ma] / (s_.lambda * afr_), y[ma] / afr_);
}

void Textbook::enterStop(double theta, std::vector<double>& y) {
    const auto here = [theta](double angle) { return std::fabs(theta - angle) < 1e-11; };
    const double p = pressureOf(theta, y.data());
    if (here(cycle_.inletCloses)) {
        inletOpen_ = false;
    }
    if (here(cycle_.exhaustCloses)) {
        exhaustOpen_ = false;
    }
    if (here(cycle_.firstOpening)) {
        y[fresh] = 0.0;
        combustion_ = false;
    }
    if (here(cycle_.exhaustOpens)) {
        exhaustOpen_ = true;
    }
    if (here(cycle_.inletOpens)) {
        inletOpen_ = true;
        slugReturns_ = false;
    }
    const double from = cycle_.idc + s_.burn.start / chamber_.cyclesPerTurn();
    if (!motored_ && here(from)) {
        burning_ = combustion_ = true;
        ps_ = p;
        vs_ = chamber_.at(theta).volume;
        n_ = vr_ / vs_ < 1.2 ? 1.35
                             : std::clamp(std::log(ps_ / pr_) / std::log(vr_ / vs_), 1.25, 1.42);
    }
    if (!motored_ && here(from + s_.burn.duration / chamber_.cyclesPerTurn())) {
        burning_ = false;
    }
}

void Textbook::integratePeriod(Cvode& cvode, std::vector<double>& y) {
    double theta = cycle_.lastClosing - chamber_.period();
    startCycle(theta, y);
    for (const Index i :
         {work, wall, delivered, outM, outP, outT, pumpWork, compressorWork, turbineWork}) {
        y[static_cast<std::size_t>(i)] = 0.0;
    }
    peak_ = 0.0;
    const auto onStep = [this](double x, const double* at) {
        peak_ = std::max(peak_, pressureOf(x, at));
    };
    for (const double stop : stops()) {
        while (theta < stop) {
            // with a slug lying there, inflow will begin with it
            if (inletOpen_ && !slugReturns_ && y[slugM] > 1e-12) {
                slugShare_ = y[slugP] / y[slugM];
                const Composition slug = mixed(air_, products_, slugShare_);
                double low = 100.0, high = 5000.0;
                while (high - low > 1e-11 * high) {
                    const double middle = 0.5 * (low + high);
                    (hOf(slug, middle) < y[slugH] / y[slugM] ? low : high) = middle;
                }
                slugT_ = low;
                slugReturns_ = true;
            }
            theta = cvode.integrate(theta, stop, y, onStep);
            if (theta < stop) {
                const std::vector<int>& roots = cvode.rootsFound();
                if (roots[0] != 0) { // the slug may have grown: look at it again
                    slugReturns_ = false;
                }
                if (roots[2] != 0) {
                    slugReturns_ = false;
                    y[slugM] = y[slugP] = y[slugH] = 0.0;
                }
            }
        }
        enterStop(stop, y);
    }
}

TextbookCycle Textbook::solve() {
    const double begin = cycle_.lastClosing - chamber_.period();
    const double v = chamber_.at(begin).volume;
    const double mass = s_.supply.pressure * v / (287.0 * s_.supply.temperature);
    std::vector<double> y(count, 0.0);
    y[ma] = mass;
    y[temp] = s_.supply.temperature;
    backT_ = s_.supply.temperature;
    y[pumpT] = s_.supply.ambientTemperature;
    y[pumpA] =
        pumps() ? s_.supply.ambientPressure * pumpVolume(begin) / (rOf(air_) * y[pumpT]) : 1.0;
    y[plenumT] = 1.1 * s_.supply.ambientTemperature;
    y[manifoldT] = motored_ ? 320.0 : 800.0;
    y[plenumM] = y[manifoldA] = 1.0; // where there are none
    if (turbocharged()) {
        const double ambient = s_.supply.ambientPressure;
        y[plenumM] = 1.5 * ambient * s_.supply.plenumVolume / (rOf(air_) * y[plenumT]);
        y[manifoldA] =
            1.2 * ambient * s_.supply.compressor.turbine.exhaustVolume / (rOf(air_) * y[manifoldT]);
    }
    const double energy = 1e3 * 300.0 * mass;
    std::vector<double> absolute(count, 1e-11 * mass);
    absolute[temp] = absolute[pumpT] = absolute[plenumT] = absolute[manifoldT] = 1e-8;
    absolute[outT] = 1e-8 * mass;
    for (const Index i : {slugH, work, wall, pumpWork, compressorWork, turbineWork}) {
        absolute[static_cast<std::size_t>(i)] = 1e-11 * energy;
    }
    // a chamber that another follows closely asks many steps: exact enough all the same
    const bool loose = pumps() || turbocharged();
    if (loose) {
        for (double& tolerated : absolute) {
            tolerated *= 100.0;
        }
    }
    Cvode cvode([this](double x, const double* at, double* dy) { rates(x, at, dy); },
                loose ? 1e-8 : 1e-10, absolute);
    cvode.watch(3, [this](double x, const double* at, double* g) {
        const double p = pressureOf(x, at);
        g[0] = inletOpen_ && !pumps() ? (outside(x, at).pressure - p) / 1e5 : 1.0;
        g[1] = exhaustOpen_ ? (p - behind(at).pressure) / 1e5 : 1.0;
        g[2] = slugReturns_ ? at[slugM] * 1e6 : 1.0;
    });
    TextbookCycle result;
    const double steady = loose ? 1e-6 : 1e-8;
    for (double change = 1.0; change > steady && result.periods < 200; ++result.periods) {
        const std::vector<double> before = y;
        integratePeriod(cvode, y);
        change = std::max(
            {std::fabs(y[ma] - before[ma]) / mass, std::fabs(y[mp] - before[mp]) / mass,
             std::fabs(y[temp] - before[temp]) / 300.0, std::fabs(y[slugM] - before[slugM]) / mass,
             std::fabs(y[pumpA] - before[pumpA]) / mass, std::fabs(y[pumpP] - before[pumpP]) / mass,
             std::fabs(y[pumpT] - before[pumpT]) / 300.0,
             std::fabs(y[plenumM] - before[plenumM]) / mass,
             std::fabs(y[plenumT] - before[plenumT]) / 300.0,
             std::fabs(y[manifoldA] - before[manifoldA]) / mass,
             std::fabs(y[manifoldP] - before[manifoldP]) / mass,
             std::fabs(y[manifoldT] - before[manifoldT]) / 300.0});
        if (y[outM] > 0.0) {
            change = std::max(change, std::fabs(y[outT] / y[outM] - backT_) / 1000.0);
            backShare_ = y[outP] / y[outM];
            backT_ = y[outT] / y[outM];
        }
    }
    result.work = y[work];
    result.peakPressure = peak_;
    result.trappedMass = y[ma] + y[mp];
    result.trappedAir = y[ma];
    result.deliveredMass = y[delivered];
    result.retainedFresh = y[fresh];
    result.wallHeat = y[wall];
    result.pumpWork = y[pumpWork];
    result.compressorWork = y[compressorWork];
    result.turbineWork = y[turbineWork];
    return result;
}

} // namespace

TextbookCycle solveTextbookCycle(const gas::Chamber& chamber, const gas::Settings& settings,
                                 double omega, bool motored, double wheelSpeed) {
    return Textbook(chamber, settings, omega, motored, wheelSpeed).solve();
}

} // namespace lobewright::testing
