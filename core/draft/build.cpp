#include "core/draft/build.h"

#include "core/design/reference.h"
#include "core/draft/ports.h"
#include "core/gas/models/fuel.h"
#include "core/mechanism/bracketed_root.h"
#include "core/mechanism/opposed_pair.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using units::bar;
using units::degree;
using units::millimetre;
using units::pi;

Span spanOf(const gas::UsualRange& range) {
    return {range.usual, range.low, range.high};
}

/// The decimal that a drawing would carry: four digits.
double rounded(double value) {
    if (value == 0.0) {
        return 0.0;
    }
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) - 3.0);
    return std::round(value / step) * step;
}

class Builder {
  public:
    Builder(const Brief& brief, const Size& size, const Tuning& tuning, Notebook& notebook)
        : brief_(brief), size_(size), tuning_(tuning), notes_(notebook) {}

    design::Design run() {
        design_.title = brief_.title.empty() ? "Draft" : brief_.title;
        design_.mechanism.cylinders = size_.cylinders;
        if (size_.pistons == 1) {
            design_.mechanism.arrangement = mechanism::Arrangement::oneSided;
            design_.gas.scavenging.shortCircuitFraction = gas::oneSidedShortCircuit;
        }
        design_.mechanism.bore = size_.bore;
        design_.running.speed = size_.speed;
        makeTracks();
        makePistonsAndRollers();
        makePitchRadius();
        makeClearance();
        makeGas();
        makePorts(size_, tuning_, notes_, design_);
        makeAdjuster();
        chooseOil();
        return design_;
    }

  private:
    double mm(std::string_view rule, TextId label, Span metres, const Message& working,
              std::vector<std::string> inputs) {
        return notes_.take(rule, label, "mm",
                           {rounded(metres.value / millimetre), rounded(metres.low / millimetre),
                            rounded(metres.high / millimetre)},
                           working, std::move(inputs)) *
               millimetre;
    }

    void makeTracks() {
        const double period = 360.0 / size_.lobes;
        const auto share = [&](std::string_view rule, TextId label, Span percent,
                               const char* segment) {
            return rounded(notes_.assume(
                rule, label, "°",
                {rounded(percent.value * period), percent.low * period, percent.high * period},
                {fmt::format("/tracks/inlet/segments/{}/span_deg", segment)}));
        };
        const double inner =
            share("dwell-inner", LW_TEXT("Dwell at inner dead centre"), {0.04, 0.03, 0.06}, "1");
        const double outer =
            share("dwell-outer", LW_TEXT("Dwell at outer dead centre"), {0.09, 0.06, 0.12}, "3");
        const double travel = 0.5 * (period - inner - outer);
        motion::SegmentShape shape;
        shape.stroke = size_.stroke;
        shape.segments = {
            {motion::SegmentKind::rise, travel * degree, motion::Law::modifiedSine, {}},
            {motion::SegmentKind::dwell, inner * degree, motion::Law::harmonic, {}},
            {motion::SegmentKind::fall, travel * degree, motion::Law::modifiedSine, {}},
            {motion::SegmentKind::dwell,
             (period - 2.0 * travel - inner) * degree,
             motion::Law::harmonic,
             {}}};
        design_.tracks.inlet = {size_.lobes, shape};
        travel_ = travel * degree;
        if (size_.pistons == 1) {
            return; // no second piston that could lead
        }
        design_.mechanism.exhaustLead = notes_.assume("exhaust-lead", LW_TEXT("Exhaust lead"), "°",
                                                      {rounded(tuning_.exhaustLead / size_.lobes),
                                                       8.0 / size_.lobes, 20.0 / size_.lobes},
                                                      {"/mechanism/exhaust_lead_deg"}) *
                                        degree;
    }

    /// Noted only where another than the program's own is needed.
    void chooseOil() {
        if (tuning_.viscosity > 0.0 || notes_.isOwn("viscosity")) {
            design_.lubricant.viscosity = notes_.assume(
                "viscosity", LW_TEXT("Viscosity of the oil"), "Pa·s",
                {rounded(tuning_.viscosity), 0.006, 0.05}, {"/lubricant/viscosity_Pa_s"});
        }
    }

    void makePistonsAndRollers() {
        auto& m = design_.mechanism;
        const double isClosed = tuning_.isClosed ? 1.0 : 0.0;
        m.closedTrack = notes_.take("track-form", LW_TEXT("Closed track (1 yes, 0 no)"), "",
                                    {isClosed, isClosed, isClosed},
                                    tuning_.isClosed ? LW_TEXT("the rollers would leave an open "
                                                               "track at the rated point")
                                                     : LW_TEXT("the rollers stay on an open track"),
                                    {"/mechanism/closed_track"}) != 0.0;
        const double cube = std::pow(size_.bore / 0.1, 3.0); // dm³
        const double mass =
            notes_.take("piston-mass", LW_TEXT("Piston mass"), "kg",
                        {rounded(3.5 * cube), 2.5 * cube, 5.0 * cube},
                        fmt::format("3.5 kg/dm³·({:.4g} mm)³", size_.bore / millimetre),
                        {"/mechanism/piston_mass_kg/inlet", "/mechanism/piston_mass_kg/exhaust"});
        m.pistonMass = {mass, size_.pistons == 1 ? 0.0 : mass};
        const double b = size_.bore;
        m.roller.radius = mm("roller-radius", LW_TEXT("Roller radius"),
                             {tuning_.rollerRadius * b, 0.30 * b, 0.45 * b},
                             fmt::format("{:.3g}·{:.4g} mm", tuning_.rollerRadius, b / millimetre),
                             {"/mechanism/roller/radius_mm"});
        const double width = tuning_.rollerWidth > 0.0 ? tuning_.rollerWidth : 0.35 * b;
        m.roller.width = mm("roller-width", LW_TEXT("Roller width"),
                            {width, std::max(width * 0.73, 0.1 * b), width * 1.44}, "",
                            {"/mechanism/roller/width_mm"});
        m.roller.edgeRelief = rounded(0.02 * m.roller.width / millimetre) * millimetre;
        const double size = 2.0 * m.roller.radius * m.roller.width; // m²
        const auto kilonewton = [&](double perArea) { return rounded(perArea * size / 1e3); };
        const double rating =
            notes_.take("bearing-rating", LW_TEXT("Dynamic rating"), "kN",
                        {kilonewton(tuning_.bearing), kilonewton(15e6), kilonewton(28e6)},
                        fmt::format("{:.3g} N/mm²·2·{:.4g} mm·{:.4g} mm", tuning_.bearing / 1e6,
                                    m.roller.radius / millimetre, m.roller.width / millimetre),
                        {"/roller_bearing/dynamic_rating_kN"});
        design_.rollerBearing.dynamicRating = rating * 1e3;
        design_.rollerBearing.staticRating =
            notes_.take("static-rating", LW_TEXT("Static rating"), "kN",
                        {rounded(1.3 * rating), rating, rounded(1.7 * rating)},
                        fmt::format("1.3·{:.4g} kN", rating),
                        {"/roller_bearing/static_rating_kN"}) *
            1e3;
        mechanism::PistonGeometry piston;
        const double length = size_.stroke + 0.7 * b;
        piston.length =
            mm("piston-length", LW_TEXT("Piston length"), {length, length, length},
               fmt::format("{:.4g} mm + 0.7·{:.4g} mm", size_.stroke / millimetre, b / millimetre),
               {"/mechanism/piston/length_mm"});
        piston.ringDistances = {rounded(0.07 * b / millimetre) * millimetre,
                                rounded(0.13 * b / millimetre) * millimetre};
        m.piston = piston;
    }

    void makePitchRadius() {
        auto& m = design_.mechanism;
        const Span wall = wallAround(m.bore);
        if (brief_.diameter) {
            const auto at = [&](double w) { return 0.5 * (brief_.diameter->value - m.bore) - w; };
            m.pitchRadius = mm("pitch-radius-from-diameter", LW_TEXT("Pitch radius"),
                               {at(wall.value), at(wall.high), at(wall.low)},
                               fmt::format("{}/2 − {:.4g} mm/2 − {:.3g} mm", brief_.diameter->text,
                                           m.bore / millimetre, wall.value / millimetre),
                               {"/mechanism/pitch_radius_mm"});
            return;
        }
        const double bores = radiusForBores(m), rollers = radiusForRollers(m);
        const auto inlet = motion::LiftCurve::make(design_.tracks.inlet);
        double steepest = 0.0;
        for (int i = 0; inlet && i <= 400; ++i) {
            steepest = std::max(steepest, std::abs(inlet->at(travel_ * i / 400.0).y1));
        }
        const double slope = steepest / std::tan(30.0 * degree);
        const double radius = tuning_.pitchRadius * std::max({bores, rollers, slope});
        m.pitchRadius = mm("pitch-radius", LW_TEXT("Pitch radius"), {radius, radius, 1.25 * radius},
                           {LW_TEXT("bores %1, rollers %2, pressure angle %3"),
                            Amount(bores, in::mm), Amount(rollers, in::mm), Amount(slope, in::mm)},
                           {"/mechanism/pitch_radius_mm"});
    }

    const Figure* wantedRatio() const {
        return brief_.highCompression ? &*brief_.highCompression
               : brief_.compression   ? &*brief_.compression
                                      : nullptr;
    }

    void makeClearance() {
        auto& m = design_.mechanism;
        double ratio = 0.0;
        Span range;
        if (const Figure* given = wantedRatio()) {
            ratio = notes_.given(LW_TEXT("Compression ratio"), "", 1.0, *given, given->text);
            range = {ratio, ratio, ratio};
        } else {
            range = spanOf(gas::fuelData(size_.fuel).compressionRatio);
            range.value += tuning_.compression * (range.low - range.value);
            ratio = notes_.assume("compression-ratio", LW_TEXT("Compression ratio"), "", range);
        }
        const auto at = [&](double epsilon) {
            return clearanceFor(epsilon, m, design_.tracks.inlet, size_.stroke)
                .value_or(size_.pistons * size_.stroke / (epsilon - 1.0));
        };
        const Span gap{at(ratio), at(range.high), at(range.low)};
        // Not rounded: the ratio is what was given.
        m.clearance =
            notes_.take("clearance", LW_TEXT("Crown clearance"), "mm",
                        {gap.value / millimetre, gap.low / millimetre, gap.high / millimetre},
                        fmt::format("ε = {:.4g}", ratio), {"/mechanism/clearance_mm"}) *
            millimetre;
    }

    /// Two quoted ratios are the two ends of the adjuster: the design stands at the higher.
    void makeAdjuster() {
        if (!brief_.compression || !brief_.highCompression || size_.pistons == 1) {
            return;
        }
        auto& adjuster = design_.mechanism.adjuster;
        const double setting = notes_.assume(
            "adjuster-setting", LW_TEXT("Setting between the ratios"), "°", {10.0, 5.0, 20.0});
        const double low = brief_.compression->value;
        const auto ratioAt = [&](double pitch) {
            adjuster = {pitch, setting * degree, 0.0};
            const auto found = chamberVolumes(design_.mechanism, design_.tracks.inlet);
            return found ? found->largest / found->smallest : 0.0;
        };
        const double widest = 4.0 * size_.stroke * units::turn / (setting * degree);
        const double pitch =
            mechanism::bracketedRoot([&](double x) { return ratioAt(x) - low; }, 0.0, widest);
        adjuster = {0.0, 0.0, 0.0};
        adjuster.helixLead =
            mm("helix-pitch", LW_TEXT("Helix pitch"), {pitch, 0.5 * pitch, 2.0 * pitch},
               {LW_TEXT("ε = %1 at %2, %3 at 0°"), number(low), amountIn(in::degrees, setting, 3),
                number(brief_.highCompression->value)},
               {"/mechanism/adjuster/helix_lead_mm_per_turn"});
    }

    void makeGas() {
        auto& gas = design_.gas;
        gas.fuel = size_.fuel;
        chooseAirRatio();
        gas.burn.duration =
            notes_.assume("burn-duration", LW_TEXT("Combustion duration"), "° cycle",
                          {50.0, 35.0, 70.0}, {"/gas/burn/duration_deg"}) *
            degree;
        gas.burn.start = notes_.assume("burn-start", LW_TEXT("Start of combustion"), "° cycle",
                                       {tuning_.burnStart, -20.0, 2.0}, {"/gas/burn/start_deg"}) *
                         degree;
        gas.burn.bestTorque = false;
        gas.scavenging.model = gas::ScavengingModel::displacementThenMixing;
        gas.scavenging.displacedFraction =
            notes_.assume("displaced-fraction", LW_TEXT("Displaced fraction"), "", {0.5, 0.2, 0.8},
                          {"/gas/scavenging/displaced_fraction"});
        gas.exhaustPressure =
            notes_.assume("exhaust-pressure", LW_TEXT("Exhaust back pressure"), "bar",
                          {1.05, 1.0, 1.15}, {"/gas/exhaust_pressure_bar"}) *
            bar;
        gas.supply.temperature =
            notes_.assume("supply-temperature", LW_TEXT("Supply temperature"), "K",
                          {tuning_.supplyTemperature, 300.0, 380.0}, {"/gas/supply/temperature_K"});
        gas.supply.unpaid = brief_.supplyUnpaid.value_or(false);
        chooseSupply();
    }

    void chooseAirRatio() {
        if (brief_.airRatio) {
            design_.gas.lambda =
                notes_.given(LW_TEXT("Excess-air ratio"), "", 1.0, *brief_.airRatio,
                             brief_.airRatio->text, {"/gas/lambda"});
            return;
        }
        const Span usual = spanOf(gas::fuelData(size_.fuel).airRatio);
        design_.gas.lambda =
            notes_.assume("air-ratio", LW_TEXT("Excess-air ratio"), "", usual, {"/gas/lambda"});
    }

    void chooseSupply() {
        auto& supply = design_.gas.supply;
        if (brief_.supplyPressure) {
            supply.pressure =
                notes_.given(LW_TEXT("Supply pressure"), "bar", bar, *brief_.supplyPressure,
                             brief_.supplyPressure->text, {"/gas/supply/pressure_bar"});
            return;
        }
        const Span range = supplyRange(brief_.charging);
        supply.pressure = notes_.assume("supply-pressure", LW_TEXT("Supply pressure"), "bar",
                                        {range.value / bar, range.low / bar, range.high / bar},
                                        {"/gas/supply/pressure_bar"}) *
                          bar;
    }

    const Brief& brief_;
    const Size& size_;
    const Tuning& tuning_;
    Notebook& notes_;
    design::Design design_;
    double travel_ = 0.0; ///< of a rise [rad]
};

} // namespace

design::Design build(const Brief& brief, const Size& size, const Tuning& tuning,
                     Notebook& notebook) {
    return Builder(brief, size, tuning, notebook).run();
}

std::optional<ChamberVolumes> chamberVolumes(const mechanism::Mechanism& mechanism,
                                             const motion::Pattern& track) {
    const auto lift = motion::LiftCurve::make(track);
    const auto pair = lift ? mechanism::OpposedPair::make(mechanism, {*lift, *lift})
                           : Result<mechanism::OpposedPair>(lift.problems());
    if (!pair) {
        return std::nullopt;
    }
    const auto& centres = pair->deadCentres().front();
    return ChamberVolumes{pair->volume(centres.idc), pair->volume(centres.odc)};
}

std::optional<double> clearanceFor(double ratio, mechanism::Mechanism mechanism,
                                   const motion::Pattern& track, double stroke) {
    mechanism.clearance = 0.2 * stroke; // wide enough to meet nowhere
    const auto found = chamberVolumes(mechanism, track);
    if (!found) {
        return std::nullopt;
    }
    const double area = pi / 4.0 * mechanism.bore * mechanism.bore;
    return mechanism.clearance + (found->largest - ratio * found->smallest) / (ratio - 1.0) / area;
}

double radiusForBores(const mechanism::Mechanism& mechanism) {
    const double wall = wallAround(mechanism.bore).value;
    return mechanism.cylinders > 1
               ? 0.5 * (mechanism.bore + wall) / std::sin(pi / mechanism.cylinders)
               : 0.5 * mechanism.bore + wall;
}

double radiusForRollers(const mechanism::Mechanism& mechanism) {
    const double middle = mechanism.cylinders > 1
                              ? 1.05 * mechanism.roller.radius / std::sin(pi / mechanism.cylinders)
                              : 0.5 * mechanism.bore;
    return middle + 0.5 * mechanism.roller.width;
}

Span wallAround(double bore) {
    constexpr double least = 4.0 * millimetre;
    return {least + 0.10 * bore, least + 0.06 * bore, least + 0.16 * bore};
}

double outerDiameter(const design::Design& design) {
    const auto& m = design.mechanism;
    return 2.0 * (m.pitchRadius + std::max(0.5 * m.bore, 0.5 * m.roller.width) +
                  wallAround(m.bore).value);
}

double overallLength(const design::Design& design) {
    const auto& m = design.mechanism;
    const auto& shape = std::get<motion::SegmentShape>(design.tracks.inlet.shape);
    const double piston = m.piston ? m.piston->length : m.bore;
    // From one track to the other: both pistons at outer dead centre, their rollers, the lobes they
    // roll on and the backs of the tracks with a bearing behind each.
    const double ends = m.isOneSided() ? 1.0 : 2.0;
    const double head = m.isOneSided() ? 0.4 * m.bore : 0.0;
    return m.clearance + head +
           ends * (shape.stroke + piston + 2.0 * m.roller.radius + shape.stroke + m.roller.width +
                   0.3 * m.bore);
}

} // namespace lobewright::draft
