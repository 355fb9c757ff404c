#include "core/solution/checks/checks.h"
#include "core/solution/figures/channels.h"
#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/solution/sides.h"
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

std::optional<double> valueOf(const std::optional<contact::Place>& place) {
    return place ? std::optional(place->value) : std::nullopt;
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
    const TextId noC = LW_TEXT("no dynamic rating is given");
    const TextId noC0 = LW_TEXT("no static rating is given");
    list.add({"roller_equivalent_load", &in::N, end},
             LW_TEXT("Equivalent load of the roller bearing"), life.equivalentLoad);
    list.add({"roller_speed", &in::rpm, end}, LW_TEXT("Mean roller speed"), life.meanSpeed);
    list.add({"roller_life", &in::hours, end}, LW_TEXT("Rating life of the roller bearing"),
             life.life, noC);
    list.add({"roller_static_safety", &in::pure, end},
             LW_TEXT("Static safety of the roller bearing"), life.staticSafety, noC0);
    list.add({"roller_static_stress", &in::MPa, end},
             LW_TEXT("Static stress in the roller bearing"), life.staticStress, noC0);
}

void addTrackContactFigures(FigureList& list, End end, const contact::TrackContact& track) {
    const TextId why = LW_TEXT("the roller never presses on its track");
    list.add({"peak_contact_pressure", &in::MPa, end}, LW_TEXT("Peak nominal contact stress"),
             valueOf(track.highestPressure), why);
    list.add({"deepest_shear", &in::MPa, end}, LW_TEXT("Maximum subsurface shear stress"),
             track.highestShear);
    list.add({"shear_depth", &in::mm, end}, LW_TEXT("Depth of the maximum shear stress"),
             track.highestShearDepth);
    list.add({"contact_safety", &in::pure, end}, LW_TEXT("Pitting safety factor (nominal)"),
             track.safety, why);
    list.add({"lowest_film", &in::um, end}, LW_TEXT("Smallest oil film thickness"),
             valueOf(track.lowestFilm), why);
    list.add({"lowest_film_ratio", &in::pure, end}, LW_TEXT("Lowest specific film thickness Λ"),
             valueOf(track.lowestFilmRatio), why);
    list.add({"highest_slip", &in::metrePerSecond, end}, LW_TEXT("Largest slip over the width"),
             track.highestSlip.value);
    list.add({"highest_pressure_slip", &in::WPerMm2, end},
             LW_TEXT("Largest pressure × slip at one place"), track.highestPressureSlip.value);
    list.add({"truncation", &in::pure, end}, LW_TEXT("Contact ellipse over the loaded width"),
             track.truncation, LW_TEXT("the roller is not crowned"));
    list.add({"roller_passes_per_hour", &in::perHour, end},
             LW_TEXT("Roller passes over each point of the track"),
             toSi(in::perHour, track.passesPerHour));
    addLife(list, end, track.life);
}

void addTrackContactChecks(CheckList& list, const mechanism::OpposedPair& pair, End end,
                           const contact::TrackContact& track, const design::Limits& limits) {
    if (track.safety && track.highestPressure) {
        list.atLeast({"contact-stress",
                      Message(LW_TEXT("%1 (at the %2)"),
                              ofTrack(pair, LW_TEXT("Pitting safety factor (nominal)"), end),
                              word(track.highestPressure->station)),
                      &in::pure, "/mechanism/roller/width_mm",
                      LW_TEXT("use a wider or larger roller, a flatter crest or a harder track"),
                      track.highestPressure->theta, QuantityId{"contact_safety", &in::pure, end},
                      end},
                     *track.safety, limits.contactSafety);
    }
    if (track.lowestFilmRatio) {
        list.atLeast({"film", ofTrack(pair, LW_TEXT("Specific film thickness Λ"), end), &in::pure,
                      "/lubricant/viscosity_Pa_s",
                      LW_TEXT("use a more viscous oil or smoother surfaces, or raise the speed"),
                      track.lowestFilmRatio->theta, QuantityId{"lowest_film_ratio", &in::pure, end},
                      end},
                     track.lowestFilmRatio->value, limits.filmRatio);
    }
    if (track.life.life) {
        list.atLeast({"roller-life",
                      ofTrack(pair, LW_TEXT("Rating life of the roller bearing"), end), &in::hours,
                      "/roller_bearing/dynamic_rating_kN",
                      LW_TEXT("use a larger bearing, or lower the load or the speed"), std::nullopt,
                      QuantityId{"roller_life", &in::hours, end}, end},
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
                 ofTrack(pair, LW_TEXT("The contact ellipse"), end), number(*track.truncation, 3)),
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
        list.add({"contact_pressure", &in::MPa, end}, LW_TEXT("Nominal contact stress"), "p₀",
                 contact.track[end].peakPressure);
    }
    for (const End end : pair.pistons()) {
        list.add({"film", &in::um, end}, LW_TEXT("Oil film"), "h",
                 gapWhereZero(contact.track[end].film));
    }
}

void addContactDetailChannels(ChannelList& list, const contact::Contact& contact,
                              const mechanism::OpposedPair& pair) {
    for (const End end : pair.pistons()) {
        const auto& track = contact.track[end];
        for (std::size_t i = 0; i < track.stations.size(); ++i) {
            const auto& station = track.stations[i];
            const std::string key = i == 0 ? "inner_edge" : i == 1 ? "middle" : "outer_edge";
            list.add({"contact_pressure_" + key, &in::MPa, end}, pressureAt[i], "p₀",
                     station.pressure);
            list.add({"half_width_" + key, &in::um, end}, halfWidthAt[i], "b", station.halfWidth);
        }
        list.add({"deepest_shear", &in::MPa, end}, LW_TEXT("Maximum subsurface shear stress"), "τ",
                 track.deepestShear);
        list.add({"film_ratio", &in::pure, end}, LW_TEXT("Specific film thickness"), "Λ",
                 gapWhereZero(track.filmRatio));
        list.add({"slip", &in::metrePerSecond, end}, LW_TEXT("Largest slip over the width"), "v",
                 track.slip);
        list.add({"pressure_slip", &in::WPerMm2, end}, LW_TEXT("Pressure × slip"), "p·v",
                 track.pressureSlip);
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
        addTrackContactChecks(list, pair, end, contact.track[end], limits);
    }
}

} // namespace lobewright::solution
