#include "core/claims/bands.h"

#include "core/enum_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

constexpr double bar = 1e5;
constexpr double atmosphere = 101325.0;
constexpr double kilowattPerLitre = 1e6;
constexpr double kilowattPerKilogram = 1e3;

constexpr TextId commonPractice = LW_TEXT("common practice");
constexpr TextId typicalEngines =
    LW_TEXT("Heywood 1988, Internal Combustion Engine Fundamentals, table 2.1");
constexpr TextId portedEngines = LW_TEXT("Blair 1996, Design and Simulation of Two-Stroke "
                                         "Engines, SAE R-161, ch. 6");
constexpr TextId ownEstimate = LW_TEXT("own estimate");
constexpr TextId volumetric =
    LW_TEXT("Heywood 1988, Internal Combustion Engine Fundamentals, §2.10");
constexpr TextId crankcase = LW_TEXT("Heywood 1988, Internal Combustion Engine Fundamentals, §6.6");

constexpr auto two = StrokeCycle::twoStroke;
constexpr auto four = StrokeCycle::fourStroke;
constexpr auto spark = Ignition::spark;
constexpr auto compression = Ignition::compression;
constexpr auto natural = Charging::naturallyAspirated;
constexpr auto boosted = Charging::boosted;
constexpr auto ordinary = BandLevel::ordinary;
constexpr auto bold = BandLevel::bold;
constexpr auto any = std::nullopt;

void addPressureBands(std::vector<Band>& list) {
    constexpr auto q = BandQuantity::meanEffectivePressure;
    const auto add = [&](auto cycle, auto ignition, auto charging, BandLevel level, double low,
                         double high, TextId what, TextId source, bool fromMemory) {
        list.push_back({q, cycle, ignition, charging, level, low, high, what, source, fromMemory});
    };
    constexpr double atm = atmosphere;
    add(four, spark, natural, ordinary, 8.5 * bar, 10.5 * bar,
        LW_TEXT("spark-ignition four-strokes"), commonPractice, false);
    add(four, spark, natural, ordinary, 7 * atm, 10 * atm,
        LW_TEXT("small and car spark-ignition four-strokes"), typicalEngines, true);
    add(four, spark, natural, bold, 10.5 * bar, 15 * bar, LW_TEXT("racing four-strokes"),
        ownEstimate, true);
    add(four, spark, boosted, ordinary, 12.5 * bar, 17 * bar, LW_TEXT("turbocharged cars"),
        commonPractice, false);
    add(four, any, boosted, bold, 17 * bar, 28 * bar, LW_TEXT("highly boosted four-strokes"),
        commonPractice, false);
    add(four, compression, natural, ordinary, 7 * bar, 9 * bar, LW_TEXT("four-stroke diesels"),
        commonPractice, false);
    add(four, compression, natural, ordinary, 5 * atm, 7.5 * atm, LW_TEXT("car diesels"),
        typicalEngines, true);
    add(four, compression, natural, bold, 6 * atm, 9 * atm, LW_TEXT("truck diesels"),
        typicalEngines, true);
    add(four, compression, boosted, ordinary, 14 * bar, 19 * bar,
        LW_TEXT("turbocharged car diesels"), commonPractice, false);
    add(four, compression, boosted, ordinary, 12 * atm, 18 * atm,
        LW_TEXT("turbocharged truck diesels"), typicalEngines, true);
    add(four, compression, boosted, bold, 5 * atm, 23 * atm, LW_TEXT("large four-stroke diesels"),
        typicalEngines, true);
    add(two, spark, natural, ordinary, 4 * atm, 5.5 * atm, LW_TEXT("small two-strokes"),
        typicalEngines, true);
    add(two, spark, natural, bold, 5.5 * atm, 11 * bar,
        LW_TEXT("racing two-strokes with tuned exhaust"), portedEngines, true);
    add(two, compression, boosted, ordinary, 9 * atm, 17 * atm,
        LW_TEXT("the largest two-stroke diesels"), typicalEngines, true);
    add(two, compression, boosted, bold, 17 * atm, 19 * bar, LW_TEXT("large two-stroke diesels"),
        commonPractice, false);
}

void addSpeedBands(std::vector<Band>& list) {
    constexpr auto q = BandQuantity::meanPistonSpeed;
    list.push_back(
        {q, any, any, any, ordinary, 8.0, 15.0, LW_TEXT("engines in general"), commonPractice});
    list.push_back(
        {q, any, spark, any, ordinary, 8.0, 16.0, LW_TEXT("petrol engines"), commonPractice});
    list.push_back(
        {q, any, spark, any, bold, 20.0, 25.0, LW_TEXT("sports engines"), commonPractice});
    list.push_back(
        {q, any, spark, any, bold, 25.0, 30.0, LW_TEXT("racing engines"), commonPractice});
    list.push_back({q, any, compression, any, ordinary, 8.5, 14.0,
                    LW_TEXT("low- to high-speed diesels"), commonPractice});
}

void addPowerBands(std::vector<Band>& list) {
    constexpr auto v = BandQuantity::specificPower;
    constexpr auto m = BandQuantity::powerPerMass;
    const auto volume = [&](auto cycle, auto ignition, auto charging, BandLevel level, double low,
                            double high, TextId what, TextId source) {
        list.push_back({v, cycle, ignition, charging, level, low * kilowattPerLitre,
                        high * kilowattPerLitre, what, source, true});
    };
    volume(any, spark, natural, ordinary, 20, 60, LW_TEXT("small and car engines"), typicalEngines);
    volume(any, spark, natural, bold, 60, 150, LW_TEXT("sports and racing engines"), ownEstimate);
    volume(any, spark, boosted, ordinary, 60, 110, LW_TEXT("turbocharged cars"), ownEstimate);
    volume(any, spark, boosted, bold, 110, 200, LW_TEXT("boosted racing engines"), ownEstimate);
    // 5.5 atm at 100 cycles/s is 56 kW/L, 11 bar at 200 cycles/s is 220 kW/L.
    volume(two, spark, natural, ordinary, 20, 60, LW_TEXT("small two-strokes"), typicalEngines);
    volume(two, spark, natural, bold, 60, 220, LW_TEXT("racing two-strokes with tuned exhaust"),
           ownEstimate);
    volume(any, compression, natural, ordinary, 15, 22, LW_TEXT("car and truck diesels"),
           typicalEngines);
    volume(any, compression, boosted, ordinary, 18, 26, LW_TEXT("turbocharged truck diesels"),
           typicalEngines);
    volume(any, compression, boosted, bold, 26, 75, LW_TEXT("turbocharged car diesels"),
           ownEstimate);
    // Published as mass per power; the ends change places.
    const auto mass = [&](auto cycle, auto ignition, BandLevel level, double heavy, double light,
                          TextId what, TextId source) {
        list.push_back({m, cycle, ignition, any, level, kilowattPerKilogram / heavy,
                        kilowattPerKilogram / light, what, source, true});
    };
    mass(any, spark, ordinary, 5.5, 2.0, LW_TEXT("small and car engines"), typicalEngines);
    mass(any, spark, bold, 2.0, 0.8, LW_TEXT("light aircraft engines"), ownEstimate);
    mass(two, spark, ordinary, 5.5, 2.0, LW_TEXT("small two-strokes"), typicalEngines);
    mass(two, spark, bold, 2.0, 0.4, LW_TEXT("racing and light aircraft two-strokes"), ownEstimate);
    mass(any, compression, ordinary, 7.0, 2.5, LW_TEXT("car and truck diesels"), typicalEngines);
    mass(any, compression, bold, 2.5, 1.4, LW_TEXT("light diesels"), ownEstimate);
}

void addAirAndFuelBands(std::vector<Band>& list) {
    constexpr auto e = BandQuantity::efficiency;
    constexpr auto c = BandQuantity::chargingRatio;
    // 350 and 270 g/kWh at 44 MJ/kg; 250, 200 and 180 g/kWh at 42.5 MJ/kg.
    constexpr double perGram = 3.6e6 / 1e-3;
    list.push_back({e, any, spark, any, ordinary, perGram / (350 * 44.0e6),
                    perGram / (270 * 44.0e6), LW_TEXT("small and car engines at their best"),
                    typicalEngines, true});
    list.push_back({e, any, spark, any, bold, 0.31, 0.41, LW_TEXT("the best petrol engines"),
                    ownEstimate, true});
    list.push_back({e, any, compression, any, ordinary, perGram / (250 * 42.5e6),
                    perGram / (200 * 42.5e6), LW_TEXT("car and truck diesels at their best"),
                    typicalEngines, true});
    list.push_back({e, any, compression, any, bold, perGram / (200 * 42.5e6),
                    perGram / (180 * 42.5e6), LW_TEXT("large diesels"), typicalEngines, true});
    list.push_back({e, two, compression, any, bold, perGram / (180 * 42.5e6), 0.55,
                    LW_TEXT("the largest two-stroke diesels"), ownEstimate, true});
    list.push_back({c, four, any, natural, ordinary, 0.75, 0.90,
                    LW_TEXT("four-strokes, volumetric efficiency"), volumetric, true});
    list.push_back({c, four, any, natural, bold, 0.90, 1.10,
                    LW_TEXT("four-strokes with tuned intakes"), ownEstimate, true});
    list.push_back({c, four, any, boosted, ordinary, 0.90, 2.0, LW_TEXT("boosted four-strokes"),
                    ownEstimate, true});
    list.push_back({c, four, any, boosted, bold, 2.0, 3.5, LW_TEXT("highly boosted four-strokes"),
                    ownEstimate, true});
    list.push_back({c, two, any, natural, ordinary, 0.50, 0.70,
                    LW_TEXT("crankcase-scavenged two-strokes, charging efficiency"), crankcase,
                    true});
    list.push_back({c, two, any, natural, bold, 0.70, 1.0,
                    LW_TEXT("two-strokes with tuned exhaust"), ownEstimate, true});
    list.push_back({c, two, any, boosted, ordinary, 0.70, 1.7, LW_TEXT("blown two-strokes"),
                    ownEstimate, true});
    list.push_back({c, two, any, boosted, bold, 1.7, 3.0, LW_TEXT("turbocharged two-strokes"),
                    ownEstimate, true});
}

template <class T>
bool agrees(const std::optional<T>& band, const std::optional<T>& engine) {
    return !band || !engine || *band == *engine;
}

bool covers(const Band& band, const EngineClass& engine, Charging charging) {
    return agrees(band.cycle, engine.cycle) && agrees(band.ignition, engine.ignition) &&
           agrees(band.charging, std::optional(charging));
}

/// The band of the level that says most about the value: the lowest upper edge that is not below
/// it, or the highest upper edge there is.
const Band* nearestBand(BandQuantity quantity, double value, const EngineClass& engine,
                        Charging charging, BandLevel level) {
    const Band* best = nullptr;
    for (const Band& band : bands()) {
        if (band.quantity != quantity || band.level != level || !covers(band, engine, charging)) {
            continue;
        }
        const bool holds = value <= band.high;
        const bool bestHolds = best != nullptr && value <= best->high;
        if (best == nullptr || (holds && !bestHolds) || (holds && band.high < best->high) ||
            (!holds && !bestHolds && band.high > best->high)) {
            best = &band;
        }
    }
    return best;
}

bool reaches(const Band* band, double value) {
    // A figure that was converted to and from a band's edge is still on the edge.
    return band != nullptr && value <= band->high * (1.0 + 1e-9);
}

bool hasBand(BandQuantity quantity, const EngineClass& engine, Charging charging) {
    return std::ranges::any_of(bands(), [&](const Band& band) {
        return band.quantity == quantity && covers(band, engine, charging);
    });
}

/// The class itself, or with any ignition where none of its own has a band.
EngineClass coveredClass(BandQuantity quantity, const EngineClass& engine, Charging charging) {
    EngineClass covered = engine;
    if (!hasBand(quantity, engine, charging)) {
        covered.ignition.reset();
    }
    return covered;
}

Message otherIgnition(const Band* band, const EngineClass& engine) {
    if (band == nullptr || agrees(band->ignition, engine.ignition)) {
        return {};
    }
    return Message(LW_TEXT("no published band for this type with %1 ignition: compared with %2"),
                   *engine.ignition == spark ? LW_TEXT("spark") : LW_TEXT("compression"),
                   band->what);
}

Judgement judgeByLevel(BandQuantity quantity, double value, const EngineClass& engine) {
    const auto find = [&](Charging charging, BandLevel level) {
        return nearestBand(quantity, value, coveredClass(quantity, engine, charging), charging,
                           level);
    };
    const Charging own = engine.charging.value_or(natural);
    const Band* usual = find(own, ordinary);
    const Band* boldest = find(own, bold);
    if (own == boosted && !reaches(usual, value)) {
        // A boosted engine may also do what one without boost does.
        const Band* plain = find(natural, ordinary);
        usual = reaches(plain, value) ? plain : usual;
    }
    if (reaches(usual, value)) {
        return {Verdict::ordinary, usual,
                value < usual->low ? LW_TEXT("below the band: modest") : TextId{}};
    }
    if (reaches(boldest, value)) {
        return {Verdict::ambitious, boldest, {}};
    }
    const Band* highest = boldest != nullptr ? boldest : usual;
    if (own == natural) {
        for (const BandLevel level : {ordinary, bold}) {
            const Band* withBoost = find(boosted, level);
            if (reaches(withBoost, value)) {
                return {Verdict::onlyWithBoost, withBoost, {}};
            }
            highest =
                withBoost != nullptr && (highest == nullptr || withBoost->high > highest->high)
                    ? withBoost
                    : highest;
        }
    }
    return {highest == nullptr               ? Verdict::computed
            : highest->source == ownEstimate ? Verdict::outsideEstimate
                                             : Verdict::outsideBand,
            highest,
            {}};
}

Message assumed(const EngineClass& engine) {
    if (engine.cycle && engine.ignition) {
        return {};
    }
    const Message missing = engine.cycle      ? Message(LW_TEXT("ignition"))
                            : engine.ignition ? Message(LW_TEXT("cycle"))
                                              : Message(LW_TEXT("cycle, ignition"));
    return {LW_TEXT("%1 not given: compared with every type"), missing};
}

} // namespace

std::span<const Band> bands() {
    static const std::vector<Band> list = [] {
        std::vector<Band> all;
        addPressureBands(all);
        addSpeedBands(all);
        addPowerBands(all);
        addAirAndFuelBands(all);
        return all;
    }();
    return list;
}

TextId name(Verdict verdict) {
    return entryOf<Verdict::contradictory>({LW_TEXT("computed"), LW_TEXT("ordinary"),
                                            LW_TEXT("ambitious"), LW_TEXT("only with boost"),
                                            LW_TEXT("outside the band of the named source"),
                                            LW_TEXT("above the program's own estimate"),
                                            LW_TEXT("implausible"), LW_TEXT("contradictory")},
                                           verdict);
}

Judgement judge(BandQuantity quantity, double value, const EngineClass& engine) {
    Judgement result = judgeByLevel(quantity, value, engine);
    result.note = joined(joined(assumed(engine), otherIgnition(result.band, engine)), result.note);
    return result;
}

BandUnit bandUnit(BandQuantity quantity) {
    return entryOf<BandQuantity::chargingRatio, BandUnit>({{"bar", bar},
                                                           {"m/s", 1.0},
                                                           {"kW/L", kilowattPerLitre},
                                                           {"kW/kg", kilowattPerKilogram},
                                                           {"%", 1e-2},
                                                           {"", 1.0}},
                                                          quantity);
}

std::string text(const Band& band) {
    const BandUnit unit = bandUnit(band.quantity);
    return fmt::format("{:.4g} … {:.4g}{}{}", band.low / unit.factor, band.high / unit.factor,
                       unit.symbol.empty() ? "" : " ", unit.symbol);
}

Message describeSource(const Band& band) {
    const bool isRecalled =
        band.fromMemory && band.source != ownEstimate && band.source != commonPractice;
    return isRecalled
               ? Message(LW_TEXT("%1 (secondary value, not checked against the printed source)"),
                         band.source)
               : Message(band.source);
}

} // namespace lobewright::study
