#include "core/draft/rules.h"

#include <algorithm>
#include <cassert>

namespace lobewright::draft {

namespace {

constexpr Rule list[] = {
    {"cylinders", "Number of cylinders", "z = V/0.35 dm³, from 2 to 6", "2 … 6", "own estimate"},
    {"lobes", "Lobes of the tracks", "one, two and three lobes are compared", "1 … 3",
     "own estimate"},
    {"power-from-torque", "Power from torque", "P = 2π·n·T", "", "definition"},
    {"mean-pressure", "Brake mean effective pressure",
     "middle of what engines of this class ordinarily reach", "the published band",
     "band of the claims check"},
    {"piston-speed", "Mean piston speed", "middle of what engines ordinarily run at",
     "the published band", "band of the claims check"},
    {"speed-from-torque", "Speed from power and torque",
     "n = P/(2π·x·T), x: torque at highest power by highest torque", "x = 0.85 … 1.0",
     "common practice"},
    {"speed-from-piston-speed", "Speed from piston speed", "n = c_m/(2·S·lobes)", "", "definition"},
    {"bore-from-power", "Bore from power", "B = √(4·P/(π·z·p_me·c_m))", "",
     "definition of mean effective pressure"},
    {"displacement-from-power", "Displacement from power", "V = P/(p_me·n·lobes)", "",
     "definition of mean effective pressure"},
    {"displacement-from-bore", "Displacement from bore and stroke", "V = z·(π/4)·B²·2·S", "",
     "definition"},
    {"bore-from-displacement", "Bore from displacement",
     "B = ∛(2·V/(π·z·x)), x: stroke of one piston by bore", "x = 0.45 … 1.1",
     "own estimate on opposed-piston engines"},
    {"bore-from-stroke", "Bore from displacement and stroke", "B = √(2·V/(π·z·S))", "",
     "definition"},
    {"stroke-from-displacement", "Stroke from displacement and bore", "S = 2·V/(π·z·B²)", "",
     "definition"},
    {"stroke-from-bore", "Stroke from bore", "S = x·B", "x = 0.45 … 1.1",
     "own estimate on opposed-piston engines"},
    {"compression-ratio", "Compression ratio", "usual for the fuel", "by fuel",
     "common practice; compare Heywood 1988, ch. 1 and 9"},
    {"clearance", "Crown clearance", "ε = V_max/V_min with both pistons in their phase", "",
     "definition"},
    {"adjuster-setting", "Setting between the two compression ratios", "Δ", "5° … 20°",
     "own estimate"},
    {"helix-pitch", "Helix pitch", "ε(Δ) = lower compression ratio", "", "definition"},
    {"exhaust-lead", "Exhaust lead", "δ = 14° cycle/lobes", "8° … 20° cycle",
     "common practice with opposed pistons"},
    {"dwell-inner", "Dwell at inner dead centre", "share of the pattern", "3 … 6 %",
     "own estimate"},
    {"dwell-outer", "Dwell at outer dead centre", "share of the pattern", "6 … 12 %",
     "own estimate"},
    {"pitch-radius", "Pitch radius",
     "the largest of: bores and a wall, (B + w)/(2·sin(π/z)); rollers clear at their inner edge, "
     "r·1.05/sin(π/z) + b/2; pressure angle 30° at the steepest place, y′/tan 30°",
     "up to 15 % more", "common practice for cam mechanisms"},
    {"pitch-radius-from-diameter", "Pitch radius from outer diameter", "R = D/2 − B/2 − w",
     "wall w = 4 mm + 0.06 … 0.16 B", "own estimate"},
    {"piston-mass", "Piston mass with roller", "m = 3.5 kg/dm³·B³", "2.5 … 5 kg/dm³",
     "own estimate on pistons of engines; common practice"},
    {"roller-radius", "Roller radius", "r = 0.37·B", "0.30 … 0.45 B", "own estimate"},
    {"roller-width", "Roller width",
     "b such that the nominal contact stress is 1,200 MPa at the rated point: b ∝ σ²",
     "1,000 … 1,400 MPa", "line contact [Johnson 1985]; allowable stress common practice"},
    {"bearing-rating", "Dynamic rating of the roller bearing", "C = 24 N/mm²·2r·b", "15 … 28 N/mm²",
     "typical full-complement track rollers, general values"},
    {"static-rating", "Static rating of the roller bearing", "C₀ = 1.3·C", "1.0 … 1.7 C",
     "typical full-complement track rollers, general values"},
    {"port-widths-inlet", "Width of the inlet ports", "share of the circumference", "0.6 … 0.75",
     "common practice"},
    {"port-widths-exhaust", "Width of the exhaust ports", "share of the circumference",
     "0.5 … 0.65", "common practice"},
    {"inlet-port-height", "Height of the inlet ports",
     "time-area a swept volume of 0.009 s/m at 8 bar, in proportion to the mean effective pressure",
     "± 25 %", "Blair 1996, ch. 6 (secondary value, not checked against the printed source)"},
    {"exhaust-port-height", "Height of the exhaust ports",
     "blowdown time-area a swept volume (p_me − 1.81 bar)/8187 bar·m/s, at least 0.0002 s/m",
     "± 25 %", "Blair 1996, ch. 6 (secondary value, not checked against the printed source)"},
    {"discharge", "Discharge coefficient of the ports", "C_d", "0.6 … 0.8",
     "common practice; compare Heywood 1988, §6.6"},
    {"fuel", "Fuel", "the fuel of such engines", "other liquid fuels and methane", "own estimate"},
    {"air-ratio", "Excess-air ratio", "usual for the fuel", "by fuel",
     "common practice; compare Heywood 1988"},
    {"burn-start", "Start of combustion", "some 30 % of the duration before inner dead centre",
     "−25° … −4° cycle", "common practice"},
    {"burn-duration", "Combustion duration", "0 … 100 % of the Wiebe function", "35° … 70° cycle",
     "common practice; compare Heywood 1988, §9.2"},
    {"supply-pressure", "Supply pressure",
     "such that the engine gives its power at its speed; otherwise usual for its charging",
     "by charging", "own estimate"},
    {"supply-temperature", "Supply temperature", "after compression and some cooling",
     "300 … 380 K", "own estimate"},
    {"exhaust-pressure", "Exhaust back pressure", "ambient and the silencer", "1.0 … 1.15 bar",
     "common practice"},
    {"scavenging", "Scavenging model", "displacement, then mixing (uniflow)",
     "perfect mixing … displacement", "Benson and Brandham 1969"},
    {"displaced-fraction", "Displaced fraction", "half the charge", "0.2 … 0.8", "own estimate"},
    {"default", "Default of the program", "see the help of the input", "", "help of the input"},
};

} // namespace

std::span<const Rule> rules() {
    return list;
}

const Rule* findRule(std::string_view id) {
    const auto* found = std::ranges::find(list, id, &Rule::id);
    return found == std::end(list) ? nullptr : found;
}

double Notebook::given(std::string_view label, std::string_view unit, double value,
                       double precision, std::string source, std::vector<std::string> inputs) {
    const double half = std::abs(value) * precision;
    steps_.push_back({nullptr,
                      std::string(label),
                      std::string(unit),
                      {value, value - half, value + half},
                      std::move(source),
                      design::Origin::given,
                      std::move(inputs)});
    return value;
}

double Notebook::take(std::string_view rule, std::string_view label, std::string_view unit,
                      Span span, std::string working, std::vector<std::string> inputs,
                      design::Origin origin) {
    const Rule* found = findRule(rule);
    assert(found);
    Step step{found,  std::string(label), std::string(unit), span, std::move(working),
              origin, std::move(inputs)};
    if (const auto own = own_.find(rule); own != own_.end()) {
        step.span = {own->second, own->second, own->second};
        step.origin = design::Origin::chosen;
        step.working = "own number";
    }
    steps_.push_back(std::move(step));
    return steps_.back().span.value;
}

double Notebook::assume(std::string_view rule, std::string_view label, std::string_view unit,
                        Span span, std::vector<std::string> inputs) {
    return take(rule, label, unit, span, {}, std::move(inputs), design::Origin::assumed);
}

void Notebook::revise(std::string_view rule, double value, std::string working) {
    for (auto step = steps_.rbegin(); step != steps_.rend(); ++step) {
        if (step->rule && step->rule->id == rule && step->origin != design::Origin::chosen) {
            step->span = {value, std::min(step->span.low, value), std::max(step->span.high, value)};
            step->origin = design::Origin::derived;
            step->working = std::move(working);
            return;
        }
    }
}

} // namespace lobewright::draft
