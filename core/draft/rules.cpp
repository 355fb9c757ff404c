#include "core/draft/rules.h"

#include <algorithm>
#include <cassert>

LW_TEXTS_OF(Core)

namespace lobewright::draft {

namespace {

constexpr Rule list[] = {
    {"cylinders", LW_TEXT("Number of cylinders"), LW_TEXT("z = V/0.35 dm³, from 2 to 6"),
     LW_TEXT("own estimate"), LW_TEXT("2 … 6")},
    {"lobes", LW_TEXT("Lobes of the tracks"), LW_TEXT("one, two and three lobes are compared"),
     LW_TEXT("own estimate"), LW_TEXT("1 … 3")},
    {"power-from-torque", LW_TEXT("Power from torque"), LW_TEXT("P = 2π·n·T"),
     LW_TEXT("definition")},
    {"mean-pressure", LW_TEXT("Brake mean effective pressure"),
     LW_TEXT("middle of the ordinary range of this class, lower where the charge would knock"),
     LW_TEXT("band of the claims check"), LW_TEXT("the published band")},
    {"piston-speed", LW_TEXT("Mean piston speed"),
     LW_TEXT("middle of the ordinary range, lower where the rollers would not last"),
     LW_TEXT("band of the claims check"), LW_TEXT("the published band")},
    {"speed-from-torque", LW_TEXT("Speed from power and torque"),
     LW_TEXT("n = P/(2π·x·T), x: torque at peak power divided by peak torque"),
     LW_TEXT("common practice"), LW_TEXT("x = 0.85 … 1.0")},
    {"speed-from-piston-speed", LW_TEXT("Speed from piston speed"), LW_TEXT("n = c_m/(2·S·lobes)"),
     LW_TEXT("definition")},
    {"bore-from-power", LW_TEXT("Bore from power"),
     LW_TEXT("B = √(8·P/(k·π·z·p_me·c_m)), k: pistons per cylinder"),
     LW_TEXT("definition of mean effective pressure")},
    {"displacement-from-power", LW_TEXT("Displacement from power"), LW_TEXT("V = P/(p_me·n·lobes)"),
     LW_TEXT("definition of mean effective pressure")},
    {"displacement-from-bore", LW_TEXT("Displacement from bore and stroke"),
     LW_TEXT("V = z·(π/4)·B²·k·S, k: pistons per cylinder"), LW_TEXT("definition")},
    {"bore-from-displacement", LW_TEXT("Bore from displacement"),
     LW_TEXT("B = ∛(4·V/(k·π·z·x)), k: pistons per cylinder, x: stroke of one divided by bore"),
     LW_TEXT("own estimate on opposed-piston engines; common practice"),
     LW_TEXT("x = 0.45 … 1.1 opposed, 0.7 … 1.3 against a head")},
    {"bore-from-stroke", LW_TEXT("Bore from displacement and stroke"),
     LW_TEXT("B = √(4·V/(k·π·z·S))"), LW_TEXT("definition")},
    {"stroke-from-displacement", LW_TEXT("Stroke from displacement and bore"),
     LW_TEXT("S = 4·V/(k·π·z·B²)"), LW_TEXT("definition")},
    {"stroke-from-bore", LW_TEXT("Stroke from bore"), LW_TEXT("S = x·B"),
     LW_TEXT("own estimate on opposed-piston engines; common practice"),
     LW_TEXT("x = 0.45 … 1.1 opposed, 0.7 … 1.3 against a head")},
    {"compression-ratio", LW_TEXT("Compression ratio"),
     LW_TEXT("usual for the fuel, lower where the charge would knock"),
     LW_TEXT("common practice; compare Heywood 1988, ch. 1 and 9"), LW_TEXT("by fuel")},
    {"clearance", LW_TEXT("Crown clearance"),
     LW_TEXT("ε = V_max/V_min with both pistons in their phase"), LW_TEXT("definition")},
    {"adjuster-setting", LW_TEXT("Setting between the two compression ratios"), LW_TEXT("Δ"),
     LW_TEXT("own estimate"), LW_TEXT("5° … 20°")},
    {"helix-pitch", LW_TEXT("Helix pitch"), LW_TEXT("ε(Δ) = lower compression ratio"),
     LW_TEXT("definition")},
    {"track-form", LW_TEXT("Closed track (1 yes, 0 no)"),
     LW_TEXT("open, closed where the rollers would leave it at the rated point"),
     LW_TEXT("common practice for cam mechanisms"), LW_TEXT("0 or 1")},
    {"exhaust-lead", LW_TEXT("Exhaust lead"),
     LW_TEXT("δ = 14° cycle/lobes, up to 18° where the charge would knock"),
     LW_TEXT("common practice with opposed pistons"), LW_TEXT("8° … 20° cycle")},
    {"dwell-inner", LW_TEXT("Dwell at inner dead centre"), LW_TEXT("share of the pattern"),
     LW_TEXT("own estimate"), LW_TEXT("3 … 6 %")},
    {"dwell-outer", LW_TEXT("Dwell at outer dead centre"), LW_TEXT("share of the pattern"),
     LW_TEXT("own estimate"), LW_TEXT("6 … 12 %")},
    {"pitch-radius", LW_TEXT("Pitch radius"),
     LW_TEXT("the largest of: bores and a wall, (B + w)/(2·sin(π/z)); rollers clear at their inner "
             "edge, "
             "r·1.05/sin(π/z) + b/2; pressure angle 30° at the steepest place, y′/tan 30°"),
     LW_TEXT("common practice for cam mechanisms"),
     LW_TEXT("up to 25 % more, where a broad roller needs it")},
    {"pitch-radius-from-diameter", LW_TEXT("Pitch radius from outer diameter"),
     LW_TEXT("R = D/2 − B/2 − w"), LW_TEXT("own estimate"),
     LW_TEXT("wall w = 4 mm + 0.06 … 0.16 B")},
    {"piston-mass", LW_TEXT("Piston mass with roller"), LW_TEXT("m = 3.5 kg/dm³·B³"),
     LW_TEXT("own estimate on pistons of engines; common practice"), LW_TEXT("2.5 … 5 kg/dm³")},
    {"piston-length", LW_TEXT("Piston length"),
     LW_TEXT("L = S + 0.7·B: the skirt covers the ports at inner dead centre"),
     LW_TEXT("own estimate")},
    {"roller-radius", LW_TEXT("Roller radius"),
     LW_TEXT("r = 0.37·B, larger where the widest roller is not enough"), LW_TEXT("own estimate"),
     LW_TEXT("0.30 … 0.45 B")},
    {"roller-width", LW_TEXT("Roller width"),
     LW_TEXT("b such that the nominal contact stress is at most 1,200 MPa at the rated point, "
             "wider where pitting safety or bearing life require it: b ∝ σ²"),
     LW_TEXT("line contact [Johnson 1985]; allowable stress common practice"),
     LW_TEXT("1,000 … 1,400 MPa")},
    {"bearing-rating", LW_TEXT("Dynamic rating of the roller bearing"),
     LW_TEXT("C = c·2r·b, c = 24 N/mm²; more where the life requires it"),
     LW_TEXT("typical full-complement track rollers, general values"),
     LW_TEXT("c = 15 … 28 N/mm²")},
    {"static-rating", LW_TEXT("Static rating of the roller bearing"), LW_TEXT("C₀ = 1.3·C"),
     LW_TEXT("typical full-complement track rollers, general values"), LW_TEXT("1.0 … 1.7 C")},
    {"port-widths-inlet", LW_TEXT("Width of the inlet ports"),
     LW_TEXT("share of the circumference"), LW_TEXT("common practice"),
     LW_TEXT("0.6 … 0.75 opposed, 0.35 … 0.48 against a head")},
    {"port-widths-exhaust", LW_TEXT("Width of the exhaust ports"),
     LW_TEXT("share of the circumference"), LW_TEXT("common practice"),
     LW_TEXT("0.5 … 0.65 opposed, 0.25 … 0.35 against a head")},
    {"inlet-port-height", LW_TEXT("Height of the inlet ports"),
     LW_TEXT(
         "time-area per swept volume of 0.009 s/m at 8 bar, in proportion to the mean effective "
         "pressure; at least 0.17 of the stroke, up to 0.26 where the charge would knock"),
     LW_TEXT("Blair 1996, ch. 6; 0.17: common practice (secondary value, not checked against the "
             "printed source)"),
     LW_TEXT("± 25 %")},
    {"exhaust-port-height", LW_TEXT("Height of the exhaust ports"),
     LW_TEXT("blowdown time-area per swept volume (p_me − 1.81 bar)/8187 bar·m/s, at least 0.0002 "
             "s/m; at least 22 % of the stroke"),
     LW_TEXT("Blair 1996, ch. 6 (secondary value, not checked against the printed source)"),
     LW_TEXT("± 25 %")},
    {"discharge", LW_TEXT("Discharge coefficient of the ports"), LW_TEXT("C_d"),
     LW_TEXT("common practice; compare Heywood 1988, §6.6"), LW_TEXT("0.6 … 0.8")},
    {"fuel", LW_TEXT("Fuel"), LW_TEXT("the fuel of such engines"), LW_TEXT("own estimate"),
     LW_TEXT("other liquid fuels and methane")},
    {"air-ratio", LW_TEXT("Excess-air ratio"), LW_TEXT("usual for the fuel"),
     LW_TEXT("common practice; compare Heywood 1988"), LW_TEXT("by fuel")},
    {"burn-start", LW_TEXT("Start of combustion"),
     LW_TEXT("8° before inner dead centre, later where the charge would knock or the peak pressure "
             "would be too high"),
     LW_TEXT("common practice"), LW_TEXT("−20° … +2° cycle")},
    {"burn-duration", LW_TEXT("Combustion duration"), LW_TEXT("0 … 100 % of the Wiebe function"),
     LW_TEXT("common practice; compare Heywood 1988, §9.2"), LW_TEXT("35° … 70° cycle")},
    {"supply-pressure", LW_TEXT("Supply pressure"),
     LW_TEXT(
         "such that the engine delivers its power at its speed; otherwise usual for its supply"),
     LW_TEXT("own estimate"), LW_TEXT("by supply")},
    {"supply-temperature", LW_TEXT("Supply temperature"),
     LW_TEXT("after compression and some cooling, more of it where the charge would knock"),
     LW_TEXT("own estimate"), LW_TEXT("300 … 380 K")},
    {"exhaust-pressure", LW_TEXT("Exhaust back pressure"), LW_TEXT("ambient and the silencer"),
     LW_TEXT("common practice"), LW_TEXT("1.0 … 1.15 bar")},
    {"scavenging", LW_TEXT("Scavenging model"), LW_TEXT("displacement, then mixing (uniflow)"),
     LW_TEXT("Benson and Brandham 1969"), LW_TEXT("perfect mixing … displacement")},
    {"displaced-fraction", LW_TEXT("Displaced fraction"), LW_TEXT("half the charge"),
     LW_TEXT("own estimate"), LW_TEXT("0.2 … 0.8")},
    {"viscosity", LW_TEXT("Viscosity of the oil"),
     LW_TEXT("more viscous where the film would be thinner than the roughness"),
     LW_TEXT("own estimate"), LW_TEXT("0.006 … 0.05 Pa·s")},
    {"default", LW_TEXT("Default of the program"), LW_TEXT("see the help of the input"),
     LW_TEXT("help of the input")},
};

} // namespace

std::span<const Rule> rules() {
    return list;
}

const Rule* findRule(std::string_view id) {
    const auto* found = std::ranges::find(list, id, &Rule::id);
    return found == std::end(list) ? nullptr : found;
}

double Notebook::given(TextId label, std::string_view unit, double value, double precision,
                       Message source, std::vector<std::string> inputs) {
    const double half = std::abs(value) * precision;
    steps_.push_back({nullptr,
                      label,
                      std::string(unit),
                      {value, value - half, value + half},
                      std::move(source),
                      design::Origin::given,
                      std::move(inputs)});
    return value;
}

double Notebook::take(std::string_view rule, TextId label, std::string_view unit, Span span,
                      Message working, std::vector<std::string> inputs, design::Origin origin) {
    const Rule* found = findRule(rule);
    assert(found);
    Step step{found, label, std::string(unit), span, std::move(working), origin, std::move(inputs)};
    if (const auto own = own_.find(rule); own != own_.end()) {
        step.span = {own->second, own->second, own->second};
        step.origin = design::Origin::chosen;
        step.working = LW_TEXT("own value");
    }
    steps_.push_back(std::move(step));
    return steps_.back().span.value;
}

void Notebook::result(std::string_view rule, TextId label, std::string_view unit, Span span,
                      Message working, std::vector<std::string> inputs) {
    const Rule* found = findRule(rule);
    assert(found);
    steps_.push_back({found, label, std::string(unit), span, std::move(working),
                      design::Origin::derived, std::move(inputs), true});
}

double Notebook::assume(std::string_view rule, TextId label, std::string_view unit, Span span,
                        std::vector<std::string> inputs) {
    return take(rule, label, unit, span, {}, std::move(inputs), design::Origin::assumed);
}

void Notebook::revise(std::string_view rule, double value, Message working) {
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
