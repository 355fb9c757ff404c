#include "core/solution/channels.h"
#include "core/solution/checks.h"
#include "core/solution/figures.h"
#include "core/solution/stage_results.h"
#include "core/units.h"

#include <fmt/format.h>

#include <limits>

namespace lobewright::solution {

namespace {

/// 0 means "nothing presses here" for film and Λ: a gap on screens and in tables.
Samples gapWhereZero(const Samples& values) {
    return (values > 0.0).select(values, std::numeric_limits<double>::quiet_NaN());
}

std::optional<double> valueOf(const std::optional<contact::Place>& place, double unit = 1.0) {
    return place ? std::optional(place->value / unit) : std::nullopt;
}

const char* word(contact::Station station) {
    switch (station) {
    case contact::Station::inner:
        return "inner edge";
    case contact::Station::middle:
        return "middle";
    case contact::Station::outer:
        return "outer edge";
    }
    return "middle";
}

void addLife(FigureList& list, const std::string& side, const contact::RollerLife& life) {
    const std::string noC = "no dynamic rating is given";
    const std::string noC0 = "no static rating is given";
    list.add("roller_equivalent_load_" + side + "_N",
             "Equivalent load of the roller bearing, " + side + " side", "N", life.equivalentLoad);
    list.add("roller_speed_" + side + "_rpm", "Mean speed of the roller, " + side + " side",
             "1/min", life.meanSpeed / units::revPerMinute);
    list.add("roller_life_" + side + "_h", "Rating life of the roller bearing, " + side + " side",
             "h", life.life ? std::optional(*life.life / 3600.0) : std::nullopt, noC);
    list.add("roller_static_safety_" + side,
             "Static safety of the roller bearing, " + side + " side", "", life.staticSafety, noC0);
    list.add("roller_static_stress_" + side + "_MPa",
             "Static stress in the roller bearing, " + side + " side", "MPa",
             life.staticStress ? std::optional(*life.staticStress / units::megapascal)
                               : std::nullopt,
             noC0);
}

void addTrackContactFigures(FigureList& list, End end, const contact::TrackContact& track) {
    const std::string side = name(end);
    const std::string ofSide = ", " + side + " side";
    const std::string why = "the roller never presses on its track";
    list.add("peak_contact_pressure_" + side + "_MPa", "Nominal peak contact pressure" + ofSide,
             "MPa", valueOf(track.highestPressure, units::megapascal), why);
    list.add("deepest_shear_" + side + "_MPa", "Maximum subsurface shear stress" + ofSide, "MPa",
             track.deepestShear.maxCoeff() / units::megapascal);
    Eigen::Index deepest = 0;
    track.deepestShear.maxCoeff(&deepest);
    list.add("shear_depth_" + side + "_mm", "Depth of the maximum shear stress" + ofSide, "mm",
             track.shearDepth[deepest] / units::millimetre);
    list.add("contact_safety_" + side, "Nominal contact safety" + ofSide, "", track.safety, why);
    list.add("lowest_film_" + side + "_um", "Thinnest oil film" + ofSide, "µm",
             valueOf(track.lowestFilm, units::micrometre), why);
    list.add("lowest_film_ratio_" + side, "Lowest specific film thickness Λ" + ofSide, "",
             valueOf(track.lowestFilmRatio), why);
    list.add("highest_slip_" + side + "_m_per_s", "Largest slip over the width" + ofSide, "m/s",
             track.highestSlip.value);
    list.add("highest_pressure_slip_" + side + "_W_per_mm2",
             "Largest pressure × slip at one place" + ofSide, "W/mm²",
             track.highestPressureSlip.value * units::squareMillimetre);
    list.add("truncation_" + side, "Contact ellipse over the loaded width" + ofSide, "",
             track.truncation, "the roller is not crowned");
    list.add("roller_passes_per_hour_" + side, "Rollers over each point of the track" + ofSide,
             "1/h", track.passesPerHour);
    addLife(list, side, track.life);
}

void addTrackContactChecks(CheckList& list, End end, const contact::TrackContact& track,
                           const design::Limits& limits) {
    const std::string ofSide = fmt::format(", {} side", name(end));
    if (track.safety && track.highestPressure) {
        list.atLeast(
            {"contact-stress",
             fmt::format("Nominal contact safety{} (at the {})", ofSide,
                         word(track.highestPressure->station)),
             "", "/mechanism/roller/width_mm",
             "a wider or larger roller, a gentler crest or a harder track lowers the stress",
             track.highestPressure->theta},
            *track.safety, limits.contactSafety);
    }
    if (track.lowestFilmRatio) {
        list.atLeast({"film", "Specific film thickness Λ" + ofSide, "", "/lubricant/viscosity_Pa_s",
                      "thicker oil, smoother surfaces or more speed thickens the film",
                      track.lowestFilmRatio->theta},
                     track.lowestFilmRatio->value, limits.filmRatio);
    }
    if (track.life.life) {
        list.atLeast({"roller-life", "Rating life of the roller bearing" + ofSide, "h",
                      "/roller_bearing/dynamic_rating_kN",
                      "a larger bearing or less load and speed lives longer", std::nullopt},
                     *track.life.life / 3600.0,
                     {limits.rollerLife.warning / 3600.0, limits.rollerLife.error / 3600.0});
    }
    if (track.truncation && *track.truncation > 1.0) {
        list.add(
            {"crown-truncation", Severity::warning,
             fmt::format(
                 "The contact ellipse{} is {:.3g} times as long as the loaded width, so the "
                 "roller's "
                 "edges carry more than shown: a smaller crown radius or a wider roller cures it.",
                 ofSide, *track.truncation),
             *track.truncation, 1.0, "", "/mechanism/roller/crown_radius_mm", std::nullopt});
    }
}

} // namespace

void addContactChannels(ChannelList& list, const contact::Contact& contact) {
    for (const End end : bothEnds) {
        list.add(std::string("contact_pressure_") + name(end) + "_MPa",
                 std::string("Nominal contact pressure, ") + name(end) + " side", "p₀", "MPa",
                 contact.track[end].peakPressure, units::megapascal);
    }
    for (const End end : bothEnds) {
        list.add(std::string("film_") + name(end) + "_um",
                 std::string("Oil film, ") + name(end) + " side", "h", "µm",
                 gapWhereZero(contact.track[end].film), units::micrometre);
    }
}

void addContactDetailChannels(ChannelList& list, const contact::Contact& contact) {
    for (const End end : bothEnds) {
        const std::string side = name(end);
        const auto& track = contact.track[end];
        for (std::size_t i = 0; i < track.stations.size(); ++i) {
            const auto& station = track.stations[i];
            const std::string place = word(contact::allStations[i]);
            const std::string key = i == 0 ? "inner_edge" : i == 1 ? "middle" : "outer_edge";
            list.add("contact_pressure_" + key + "_" + side + "_MPa",
                     fmt::format("Nominal contact pressure at the {}, {} side", place, side), "p₀",
                     "MPa", station.pressure, units::megapascal);
            list.add("half_width_" + key + "_" + side + "_um",
                     fmt::format("Half-width of the contact at the {}, {} side", place, side), "b",
                     "µm", station.halfWidth, units::micrometre);
        }
        list.add("deepest_shear_" + side + "_MPa",
                 "Maximum subsurface shear stress, " + side + " side", "τ", "MPa",
                 track.deepestShear, units::megapascal);
        list.add("film_ratio_" + side, "Specific film thickness, " + side + " side", "Λ", "",
                 gapWhereZero(track.filmRatio));
        list.add("slip_" + side + "_m_per_s", "Largest slip over the width, " + side + " side", "v",
                 "m/s", track.slip);
        list.add("pressure_slip_" + side + "_W_per_mm2", "Pressure × slip, " + side + " side",
                 "p·v", "W/mm²", track.pressureSlip, 1.0 / units::squareMillimetre);
    }
}

void addContactFigures(FigureList& list, const contact::Contact& contact) {
    list.group("contact");
    for (const End end : bothEnds) {
        addTrackContactFigures(list, end, contact.track[end]);
    }
}

void addContactChecks(CheckList& list, const contact::Contact& contact,
                      const design::Limits& limits) {
    for (const End end : bothEnds) {
        addTrackContactChecks(list, end, contact.track[end], limits);
    }
}

} // namespace lobewright::solution
