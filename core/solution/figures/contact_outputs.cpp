#include "core/solution/checks/checks.h"
#include "core/solution/figures/channels.h"
#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

#include <fmt/format.h>

#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// 0 means "nothing presses here" for film and Λ: a gap on screens and in tables.
Samples gapWhereZero(const Samples& values) {
    return (values > 0.0).select(values, std::numeric_limits<double>::quiet_NaN());
}

std::optional<double> valueOf(const std::optional<contact::Place>& place, double unit = 1.0) {
    return place ? std::optional(place->value / unit) : std::nullopt;
}

constexpr TextId pressureAt[] = {LW_TEXT("Nominal contact stress at the inner edge"),
                                 LW_TEXT("Nominal contact stress at the middle"),
                                 LW_TEXT("Nominal contact stress at the outer edge")};
constexpr TextId halfWidthAt[] = {LW_TEXT("Half-width of the contact at the inner edge"),
                                  LW_TEXT("Half-width of the contact at the middle"),
                                  LW_TEXT("Half-width of the contact at the outer edge")};

TextId word(contact::Station station) {
    switch (station) {
    case contact::Station::inner:
        return LW_TEXT("inner edge");
    case contact::Station::middle:
        return LW_TEXT("middle");
    case contact::Station::outer:
        return LW_TEXT("outer edge");
    }
    return LW_TEXT("middle");
}

void addLife(FigureList& list, End end, const contact::RollerLife& life) {
    const std::string side = name(end);
    const TextId noC = LW_TEXT("no dynamic rating is given");
    const TextId noC0 = LW_TEXT("no static rating is given");
    list.add("roller_equivalent_load_" + side + "_N",
             ofSide(LW_TEXT("Equivalent load of the roller bearing"), end), "N",
             life.equivalentLoad);
    list.add("roller_speed_" + side + "_rpm", ofSide(LW_TEXT("Mean roller speed"), end), "1/min",
             life.meanSpeed / units::revPerMinute);
    list.add("roller_life_" + side + "_h",
             ofSide(LW_TEXT("Rating life of the roller bearing"), end), "h",
             life.life ? std::optional(*life.life / 3600.0) : std::nullopt, noC);
    list.add("roller_static_safety_" + side,
             ofSide(LW_TEXT("Static safety of the roller bearing"), end), "", life.staticSafety,
             noC0);
    list.add("roller_static_stress_" + side + "_MPa",
             ofSide(LW_TEXT("Static stress in the roller bearing"), end), "MPa",
             life.staticStress ? std::optional(*life.staticStress / units::megapascal)
                               : std::nullopt,
             noC0);
}

void addTrackContactFigures(FigureList& list, End end, const contact::TrackContact& track) {
    const std::string side = name(end);
    const TextId why = LW_TEXT("the roller never presses on its track");
    list.add("peak_contact_pressure_" + side + "_MPa",
             ofSide(LW_TEXT("Peak nominal contact stress"), end), "MPa",
             valueOf(track.highestPressure, units::megapascal), why);
    list.add("deepest_shear_" + side + "_MPa",
             ofSide(LW_TEXT("Maximum subsurface shear stress"), end), "MPa",
             track.highestShear / units::megapascal);
    list.add("shear_depth_" + side + "_mm",
             ofSide(LW_TEXT("Depth of the maximum shear stress"), end), "mm",
             track.highestShearDepth / units::millimetre);
    list.add("contact_safety_" + side, ofSide(LW_TEXT("Pitting safety factor (nominal)"), end), "",
             track.safety, why);
    list.add("lowest_film_" + side + "_um", ofSide(LW_TEXT("Smallest oil film thickness"), end),
             "µm", valueOf(track.lowestFilm, units::micrometre), why);
    list.add("lowest_film_ratio_" + side, ofSide(LW_TEXT("Lowest specific film thickness Λ"), end),
             "", valueOf(track.lowestFilmRatio), why);
    list.add("highest_slip_" + side + "_m_per_s",
             ofSide(LW_TEXT("Largest slip over the width"), end), "m/s", track.highestSlip.value);
    list.add("highest_pressure_slip_" + side + "_W_per_mm2",
             ofSide(LW_TEXT("Largest pressure × slip at one place"), end), "W/mm²",
             track.highestPressureSlip.value * units::squareMillimetre);
    list.add("truncation_" + side, ofSide(LW_TEXT("Contact ellipse over the loaded width"), end),
             "", track.truncation, LW_TEXT("the roller is not crowned"));
    list.add("roller_passes_per_hour_" + side,
             ofSide(LW_TEXT("Roller passes over each point of the track per revolution"), end),
             "1/h", track.passesPerHour);
    addLife(list, end, track.life);
}

void addTrackContactChecks(CheckList& list, End end, const contact::TrackContact& track,
                           const design::Limits& limits) {
    const std::string side = name(end);
    if (track.safety && track.highestPressure) {
        list.atLeast({"contact-stress",
                      Message(LW_TEXT("%1 (at the %2)"),
                              ofSide(LW_TEXT("Pitting safety factor (nominal)"), end),
                              word(track.highestPressure->station)),
                      &in::pure, "/mechanism/roller/width_mm",
                      LW_TEXT("use a wider or larger roller, a flatter crest or a harder track"),
                      track.highestPressure->theta, "contact_safety_" + side, end},
                     *track.safety, limits.contactSafety);
    }
    if (track.lowestFilmRatio) {
        list.atLeast({"film", ofSide(LW_TEXT("Specific film thickness Λ"), end), &in::pure,
                      "/lubricant/viscosity_Pa_s",
                      LW_TEXT("use a more viscous oil or smoother surfaces, or raise the speed"),
                      track.lowestFilmRatio->theta, "lowest_film_ratio_" + side, end},
                     track.lowestFilmRatio->value, limits.filmRatio);
    }
    if (track.life.life) {
        list.atLeast({"roller-life", ofSide(LW_TEXT("Rating life of the roller bearing"), end),
                      &in::hours, "/roller_bearing/dynamic_rating_kN",
                      LW_TEXT("use a larger bearing, or lower the load or the speed"), std::nullopt,
                      "roller_life_" + side + "_h", end},
                     *track.life.life / 3600.0,
                     {limits.rollerLife.warning / 3600.0, limits.rollerLife.error / 3600.0});
    }
    if (track.truncation && *track.truncation > 1.0) {
        list.add(
            {"crown-truncation",
             Severity::warning,
             Message(
                 LW_TEXT("%1 is %2 times as long as the loaded width, so the roller's edges carry "
                         "more than shown: use a smaller crown radius or a wider roller."),
                 ofSide(LW_TEXT("The contact ellipse"), end), number(*track.truncation, 3)),
             *track.truncation,
             1.0,
             &in::pure,
             "/mechanism/roller/crown_radius_mm",
             std::nullopt,
             {},
             end});
    }
}

} // namespace

void addContactChannels(ChannelList& list, const contact::Contact& contact,
                        const mechanism::OpposedPair& pair) {
    for (const End end : pair.pistons()) {
        list.add(std::string("contact_pressure_") + name(end) + "_MPa",
                 ofSide(LW_TEXT("Nominal contact stress"), end), "p₀", "MPa",
                 contact.track[end].peakPressure, units::megapascal);
    }
    for (const End end : pair.pistons()) {
        list.add(std::string("film_") + name(end) + "_um", ofSide(LW_TEXT("Oil film"), end), "h",
                 "µm", gapWhereZero(contact.track[end].film), units::micrometre);
    }
}

void addContactDetailChannels(ChannelList& list, const contact::Contact& contact,
                              const mechanism::OpposedPair& pair) {
    for (const End end : pair.pistons()) {
        const std::string side = name(end);
        const auto& track = contact.track[end];
        for (std::size_t i = 0; i < track.stations.size(); ++i) {
            const auto& station = track.stations[i];
            const std::string key = i == 0 ? "inner_edge" : i == 1 ? "middle" : "outer_edge";
            list.add("contact_pressure_" + key + "_" + side + "_MPa", ofSide(pressureAt[i], end),
                     "p₀", "MPa", station.pressure, units::megapascal);
            list.add("half_width_" + key + "_" + side + "_um", ofSide(halfWidthAt[i], end), "b",
                     "µm", station.halfWidth, units::micrometre);
        }
        list.add("deepest_shear_" + side + "_MPa",
                 ofSide(LW_TEXT("Maximum subsurface shear stress"), end), "τ", "MPa",
                 track.deepestShear, units::megapascal);
        list.add("film_ratio_" + side, ofSide(LW_TEXT("Specific film thickness"), end), "Λ", "",
                 gapWhereZero(track.filmRatio));
        list.add("slip_" + side + "_m_per_s", ofSide(LW_TEXT("Largest slip over the width"), end),
                 "v", "m/s", track.slip);
        list.add("pressure_slip_" + side + "_W_per_mm2", ofSide(LW_TEXT("Pressure × slip"), end),
                 "p·v", "W/mm²", track.pressureSlip, 1.0 / units::squareMillimetre);
    }
}

void addContactFigures(FigureList& list, const contact::Contact& contact,
                       const mechanism::OpposedPair& pair) {
    list.group("contact");
    for (const End end : pair.pistons()) {
        addTrackContactFigures(list, end, contact.track[end]);
    }
}

void addContactChecks(CheckList& list, const contact::Contact& contact,
                      const mechanism::OpposedPair& pair, const design::Limits& limits) {
    for (const End end : pair.pistons()) {
        addTrackContactChecks(list, end, contact.track[end], limits);
    }
}

} // namespace lobewright::solution
