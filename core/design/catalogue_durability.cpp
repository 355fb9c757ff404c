#include "core/contact/track_materials.h"
#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeRing(Visitor& v, loads::PistonRing& ring) {
    v.number("height_mm", LW_TEXT("Ring height"), in::mm, between(0.1, 50.0), ring.height,
             LW_TEXT("h: axial height of the running face."));
    v.number("tension_pressure_MPa", LW_TEXT("Tension pressure"), in::MPa, between(0.0, 10.0),
             ring.tensionPressure,
             LW_TEXT("q: pressure of the ring on the liner from its own tension."));
    v.number("gas_factor", LW_TEXT("Gas factor"), in::pure, between(0.0, 1.0), ring.gasFactor,
             LW_TEXT("c: share of the gas pressure that stands behind the ring."));
}

void describeRingFriction(Visitor& v, loads::Friction& friction) {
    v.list(
        {.name = "rings",
         .label = LW_TEXT("Piston rings"),
         .range = between(0.0, 12.0),
         .help = LW_TEXT("The ring pack of one piston, from the crown on. Default: two compression "
                         "rings and an oil ring (form after Stanley et al., SAE 1999-01-0974).")},
        LW_TEXT("Ring"), friction.rings, [&](loads::PistonRing& ring) { describeRing(v, ring); });
    v.number("ring_boundary_coefficient", LW_TEXT("Ring boundary friction"), in::pure,
             between(0.0, 1.0), friction.ringBoundary,
             LW_TEXT("f_b: friction coefficient where metals touch. Default 0.12."));
    v.number("ring_hydrodynamic_coefficient", LW_TEXT("Ring film friction"), in::pure,
             between(0.0, 1000.0), friction.ringHydrodynamic,
             LW_TEXT("f_h: factor of the square root of the duty number in the film regime. "
                     "Default 2.5."));
    v.number("ring_critical_duty", LW_TEXT("Critical duty number"), in::pure, between(1e-6, 1.0),
             friction.ringCriticalDuty,
             LW_TEXT("D_c: duty number above which the film carries the ring. Default 1e-4."));
    v.number("liner_viscosity_Pa_s", LW_TEXT("Oil viscosity at the liner"), in::pascalSecond,
             between(1e-5, 10.0), friction.linerViscosity,
             LW_TEXT("η at liner temperature. Default 0.008 Pa·s."));
}

void describeGuideFriction(Visitor& v, loads::Friction& friction) {
    v.number("guide_coefficient", LW_TEXT("Guide friction"), in::pure, between(0.0, 1.0),
             friction.guide,
             LW_TEXT("μ_guide between piston and bore under side force. Default 0.08."));
    v.number("guide_overhang_mm", LW_TEXT("Guide overhang"), in::mm, between(0.0, 2000.0),
             friction.guideOverhang,
             LW_TEXT("From the end of the guide to the roller axis; empty: the roller radius."));
    v.number("guide_length_mm", LW_TEXT("Guide length"), in::mm, between(1.0, 2000.0),
             friction.guideLength,
             LW_TEXT("Length over which the piston is guided; empty: the bore."));
}

void describeRollerFriction(Visitor& v, loads::Friction& friction) {
    v.number("rolling_coefficient", LW_TEXT("Rolling resistance"), in::pure, between(0.0, 1.0),
             friction.rolling, LW_TEXT("c_r of the roller on the track. Default 0.001."));
    v.number("roller_bearing_coefficient", LW_TEXT("Roller bearing friction"), in::pure,
             between(0.0, 1.0), friction.rollerBearing,
             LW_TEXT("μ_b at the mean bearing diameter. Default 0.0025 (bearing catalogues)."));
    v.number("slip_coefficient", LW_TEXT("Slip friction"), in::pure, between(0.0, 1.0),
             friction.slip,
             LW_TEXT("μ_s: friction of the slip across the roller's width. Default 0.05."));
    v.number("shaft_bearing_coefficient", LW_TEXT("Shaft bearing friction"), in::pure,
             between(0.0, 1.0), friction.shaftBearing,
             LW_TEXT("μ of the main bearings at the pitch radius taken as diameter. Default "
                     "0.0018."));
    v.number("auxiliary_power_kW", LW_TEXT("Auxiliary power"), in::kW, between(0.0, 10000.0),
             friction.auxiliaryPower,
             LW_TEXT("Pumps and whatever else the shaft drives. Default 0."));
}

void describeBody(Visitor& v, contact::Elastic& elastic, double& roughness) {
    v.number("elastic_modulus_GPa", LW_TEXT("Elastic modulus"), in::GPa, between(0.1, 2000.0),
             elastic.modulus, LW_TEXT("E. Default 206 GPa, steel."));
    v.number("poisson_ratio", LW_TEXT("Poisson's ratio"), in::pure, between(0.0, 0.5),
             elastic.poissonRatio, LW_TEXT("ν. Default 0.30, steel."));
    v.number("roughness_um", LW_TEXT("Surface roughness"), in::um, between(0.001, 100.0), roughness,
             LW_TEXT("Rq, root mean square. Default 0.2 µm for the track, 0.1 µm for the roller."));
}

void describeMaterials(Visitor& v, contact::Materials& materials) {
    std::vector<Word> words;
    for (const contact::TrackMaterial& material : contact::trackMaterials()) {
        words.push_back({material.key, material.label});
    }
    v.textChoice(
        {.name = "track_material",
         .label = LW_TEXT("Track material"),
         .help = LW_TEXT("Row of the table of track materials. Default: case-carburised steel of "
                         "quality MQ (ISO 6336-5).")},
        words, materials.track);
    v.number("allowable_stress_MPa", LW_TEXT("Allowable contact stress"), in::MPa,
             between(1.0, 10000.0), materials.allowableStress,
             LW_TEXT("σ_allow of the track; empty: from the table of track materials."));
    v.section("track", LW_TEXT("Track surface"),
              [&] { describeBody(v, materials.trackElastic, materials.trackRoughness); });
    v.section("roller", LW_TEXT("Roller surface"),
              [&] { describeBody(v, materials.rollerElastic, materials.rollerRoughness); });
}

constexpr LimitRow limits[] = {
    {"pressure_angle_deg", LW_TEXT("Pressure angle"), &in::degrees, 90.0, &Limits::pressureAngle,
     LW_TEXT("Values above this are reported. Default 35° and 45° (own estimate).")},
    {"mean_piston_speed_m_per_s", LW_TEXT("Mean piston speed"), &in::metrePerSecond, 200.0,
     &Limits::meanPistonSpeed,
     LW_TEXT("Values above this are reported. Default 16 and 22 m/s (own estimate).")},
    {"peak_pressure_bar", LW_TEXT("Peak pressure"), &in::bar, 2000.0, &Limits::peakPressure,
     LW_TEXT("Values above this are reported. Default 120 and 180 bar (own estimate).")},
    {"film_ratio", LW_TEXT("Specific film thickness Λ"), &in::pure, 100.0, &Limits::filmRatio,
     LW_TEXT("Values below this are reported. Default 1 and 0.5 (own estimate).")},
    {"contact_safety", LW_TEXT("Pitting safety factor (nominal)"), &in::pure, 100.0,
     &Limits::contactSafety,
     LW_TEXT("Allowable divided by nominal contact stress; values below this are reported. "
             "Default 1.2 and 1.0 (own estimate).")},
    {"roller_life_h", LW_TEXT("Roller life"), &in::hours, 1e9, &Limits::rollerLife,
     LW_TEXT("Values below this are reported. Default 1000 and 100 hours (own estimate).")},
    {"guide_bracket", LW_TEXT("Margin against jamming"), &in::pure, 1.0, &Limits::guideBracket,
     LW_TEXT("cos α less the guide's friction share; values below this are reported. Default "
             "0.3 and 0 (own estimate).")},
    {"knock_integral", LW_TEXT("Knock integral"), &in::pure, 100.0, &Limits::knockIntegral,
     LW_TEXT("Values from this on are reported. Default 0.8 and 1 (Livengood and Wu 1955).")}};

} // namespace

void describeFriction(Visitor& v, loads::Friction& friction) {
    describeRingFriction(v, friction);
    describeGuideFriction(v, friction);
    describeRollerFriction(v, friction);
}

void describeContact(Visitor& v, Design& design) {
    v.section({.name = "materials", .label = LW_TEXT("Materials"), .presence = Presence::optional},
              [&] { describeMaterials(v, design.materials); });
    v.section(
        {.name = "lubricant", .label = LW_TEXT("Lubricant"), .presence = Presence::optional}, [&] {
            v.number("viscosity_Pa_s", LW_TEXT("Oil viscosity at the track"), in::pascalSecond,
                     between(1e-5, 10.0), design.lubricant.viscosity,
                     LW_TEXT("η₀ at track temperature. Default 0.010 Pa·s."));
            v.number("pressure_coefficient_per_GPa", LW_TEXT("Pressure-viscosity coefficient"),
                     in::perGPa, between(0.1, 100.0), design.lubricant.pressureCoefficient,
                     LW_TEXT("α_p. Default 20 1/GPa, mineral oil."));
        });
    v.section({.name = "roller_bearing",
               .label = LW_TEXT("Roller bearing"),
               .presence = Presence::optional},
              [&] {
                  v.number("dynamic_rating_kN", LW_TEXT("Dynamic rating"), in::kN,
                           between(0.01, 100000.0), design.rollerBearing.dynamicRating,
                           LW_TEXT("C as a track roller (outer ring loaded, ISO 281); empty: no "
                                   "life is computed."));
                  v.number("static_rating_kN", LW_TEXT("Static rating"), in::kN,
                           between(0.01, 100000.0), design.rollerBearing.staticRating,
                           LW_TEXT("C₀ as a track roller (ISO 76); empty: no static safety is "
                                   "computed."));
              });
    v.branch(oneSided, design.mechanism.isOneSided(), [&] {
        v.section({.name = "thrust_bearing",
                   .label = LW_TEXT("Thrust bearing"),
                   .presence = Presence::optional},
                  [&] {
                      v.number("dynamic_rating_kN", LW_TEXT("Dynamic rating"), in::kN,
                               between(0.01, 100000.0), design.thrustBearing.dynamicRating,
                               LW_TEXT("C of the roller thrust bearing that carries the track "
                                       "(ISO 281); empty: no life is computed."));
                  });
    });
}

std::span<const LimitRow> limitRows() {
    return limits;
}

void describeLimits(Visitor& v, Limits& values) {
    for (const LimitRow& row : limits) {
        const Range range = between(0.0, row.largest);
        Limit& limit = values.*row.member;
        v.section({.name = row.key, .label = row.label, .unit = *row.unit, .help = row.help}, [&] {
            v.number("warning", LW_TEXT("Warning"), *row.unit, range, limit.warning, row.help);
            v.number("error", LW_TEXT("Error"), *row.unit, range, limit.error, row.help);
        });
    }
}

} // namespace lobewright::design
