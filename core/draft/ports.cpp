#include "core/draft/ports.h"

#include "core/mechanism/bracketed_root.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

using units::bar;
using units::millimetre;
using units::pi;

constexpr int samples = 720;

/// ∫ uncovered height dt over one cycle of a port that is fully open at outer dead centre [m·s].
/// `until`: only while the piston uncovers less than this height of its own, for blowdown.
double heightTime(const motion::LiftCurve& curve, double height, double speed) {
    double sum = 0.0;
    for (int i = 0; i < samples; ++i) {
        sum += std::max(0.0, height - curve.at(curve.period() * (i + 0.5) / samples).y);
    }
    return sum * curve.period() / samples / speed;
}

/// The same of the exhaust port, from its opening to that of the inlet, whose piston runs behind by
/// the lead.
double blowdownHeightTime(const motion::LiftCurve& curve, double height, double inletHeight,
                          double lead, double speed) {
    double sum = 0.0;
    const double period = curve.period();
    for (int i = 0; i < samples; ++i) {
        const double angle = period * (i + 0.5) / samples;
        const auto exhaust = curve.at(angle + lead);
        const bool isOpening = exhaust.y1 < 0.0;
        const bool isInletClosed = curve.at(angle).y > inletHeight;
        if (isOpening && isInletClosed) {
            sum += std::max(0.0, height - exhaust.y);
        }
    }
    return sum * period / samples / speed;
}

double toHundredths(double metres) {
    return std::round(metres / (0.01 * millimetre)) * 0.01 * millimetre;
}

/// The height at which f reaches the target, inside low … high.
template <class F>
double heightFor(F&& f, double target, double low, double high) {
    if (f(low) >= target) {
        return low;
    }
    if (f(high) <= target) {
        return high;
    }
    return mechanism::bracketedRoot([&](double h) { return f(h) - target; }, low, high);
}

class PortRules {
  public:
    PortRules(const Size& size, const Tuning& tuning, Notebook& notebook, design::Design& design,
              const motion::LiftCurve& curve)
        : size_(size), tuning_(tuning), notes_(notebook), design_(design), curve_(curve) {}

    void run() {
        const double around = pi * size_.bore;
        // One piston uncovers both rows, which share its circumference.
        const bool isOneSided = size_.pistons == 1;
        const Span inletShares = isOneSided ? Span{0.42, 0.35, 0.48} : Span{0.70, 0.60, 0.75};
        const Span exhaustShares = isOneSided ? Span{0.30, 0.25, 0.35} : Span{0.60, 0.50, 0.65};
        const double inletShare =
            notes_.assume("port-widths-inlet", LW_TEXT("Inlet ports, share of the circumference"),
                          "", inletShares);
        const double exhaustShare =
            notes_.assume("port-widths-exhaust",
                          LW_TEXT("Exhaust ports, share of the circumference"), "", exhaustShares);
        const double discharge = notes_.assume(
            "discharge", LW_TEXT("Discharge coefficient"), "", {0.7, 0.6, 0.8},
            {"/ports/inlet/0/discharge_coefficient", "/ports/exhaust/0/discharge_coefficient"});
        const double inlet = inletHeight(inletShare * around);
        const double exhaust = exhaustHeight(exhaustShare * around, inlet);
        const int inlets = isOneSided ? 6 : 10, exhausts = isOneSided ? 4 : 8;
        design_.ports[End::inlet] = {row(inlet, inletShare, inlets, discharge)};
        design_.ports[End::exhaust] = {row(exhaust, exhaustShare, exhausts, discharge)};
        noteWidth("port-widths-inlet", LW_TEXT("Width of one inlet port"), inletShare, inletShares,
                  inlets, "inlet");
        noteWidth("port-widths-exhaust", LW_TEXT("Width of one exhaust port"), exhaustShare,
                  exhaustShares, exhausts, "exhaust");
    }

  private:
    /// Slow engines have time enough with lower ports, but then need two to three bar of supply
    /// where published opposed-piston engines have 1.1 to 1.3 [common practice].
    double lowest(End end) const {
        return (end == End::inlet ? tuning_.portHeight : std::max(tuning_.portHeight, 0.22)) *
               size_.stroke;
    }
    double highest() const { return 0.38 * size_.stroke; }
    /// Of one cylinder.
    double swept() const { return size_.displacement / size_.cylinders; }

    double inletHeight(double width) {
        const double target = 0.009 * size_.meanPressure / (8.0 * bar); // s/m
        const auto at = [&](double share) {
            return heightFor(
                [&](double h) { return width * heightTime(curve_, h, size_.speed) / swept(); },
                share * target, lowest(End::inlet), 0.9 * highest());
        };
        return noteHeight("inlet-port-height", LW_TEXT("Inlet port height"), spread(at),
                          {LW_TEXT("time-area %1"), Amount(target, in::secondsPerMetre, 3)},
                          "inlet");
    }

    double exhaustHeight(double width, double inlet) {
        const double target = std::max((size_.meanPressure / bar - 1.81) / 8187.0, 2e-4); // s/m
        const auto at = [&](double share) {
            return heightFor(
                [&](double h) {
                    return width *
                           blowdownHeightTime(curve_, h, inlet, design_.mechanism.exhaustLead,
                                              size_.speed) /
                           swept();
                },
                share * target, std::max(inlet, lowest(End::exhaust)), highest());
        };
        return noteHeight(
            "exhaust-port-height", LW_TEXT("Exhaust port height"), spread(at),
            {LW_TEXT("blowdown time-area %1"), Amount(target, in::secondsPerMetre, 3)}, "exhaust");
    }

    /// Height by share of the time-area wanted; where the lowest one is taken, as much to either
    /// side of it.
    template <class Height>
    static Span spread(Height&& at) {
        const double height = at(1.0);
        return {height, std::min(at(0.75), 0.75 * height), std::max(at(1.25), 1.25 * height)};
    }

    double noteHeight(std::string_view rule, TextId label, Span metres, const Message& working,
                      const char* end) {
        const double most = 0.5 * size_.stroke;
        const auto shown = [&](double h) { return toHundredths(std::min(h, most)) / millimetre; };
        return notes_.take(rule, label, "mm",
                           {shown(metres.value), shown(metres.low), shown(metres.high)}, working,
                           {fmt::format("/ports/{}/0/height_mm", end),
                            fmt::format("/ports/{}/0/edge_mm", end)}) *
               millimetre;
    }

    double width(double share, int count) const {
        return toHundredths(size_.bore * std::sin(share * pi / count));
    }

    void noteWidth(std::string_view rule, TextId label, double share, const Span& shares, int count,
                   const char* end) {
        const auto shown = [&](double of) { return width(of, count) / millimetre; };
        const Span span = notes_.isOwn(rule)
                              ? Span{shown(share), shown(share), shown(share)}
                              : Span{shown(share), shown(shares.low), shown(shares.high)};
        notes_.result(
            rule, label, "mm", span,
            fmt::format("{:.4g} mm·sin({:.3g}·π/{})", size_.bore / millimetre, share, count),
            {fmt::format("/ports/{}/0/width_mm", end)});
    }

    ports::Row row(double height, double share, int count, double discharge) const {
        ports::Row row;
        row.edge = row.height = height;
        row.width = width(share, count);
        row.count = count;
        row.cornerRadius = toHundredths(0.15 * std::min(row.height, row.width));
        row.dischargeCoefficient = discharge;
        return row;
    }

    const Size& size_;
    const Tuning& tuning_;
    Notebook& notes_;
    design::Design& design_;
    const motion::LiftCurve& curve_;
};

} // namespace

void makePorts(const Size& size, const Tuning& tuning, Notebook& notebook, design::Design& design) {
    if (const auto curve = motion::LiftCurve::make(design.tracks.inlet)) {
        PortRules(size, tuning, notebook, design, *curve).run();
    }
}

Span supplyRange(std::optional<study::Charging> charging) {
    if (charging == study::Charging::naturallyAspirated) {
        return {1.15 * bar, 1.07 * bar, 1.3 * bar}; // pumped by the under-piston space
    }
    if (charging == study::Charging::boosted) {
        return {1.6 * bar, 1.15 * bar, 3.5 * bar};
    }
    return {1.3 * bar, 1.07 * bar, 2.5 * bar};
}

} // namespace lobewright::draft
