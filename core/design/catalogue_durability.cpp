#include "core/contact/track_materials.h"
#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

void describeRing(Visitor& v, loads::PistonRing& ring) {
    v.number({.name = "height_mm",
              .label = LW_TEXT("Ring height"),
              .unit = in::mm,
              .range = between(0.1, 50.0),
              .help = LW_TEXT("h: axial height of the running face.")},
             ring.height);
    v.number({.name = "tension_pressure_MPa",
              .label = LW_TEXT("Tension pressure"),
              .unit = in::MPa,
              .range = between(0.0, 10.0),
              .help = LW_TEXT("q: pressure of the ring on the liner from its own tension.")},
             ring.tensionPressure);
    v.number({.name = "gas_factor",
              .label = LW_TEXT("Gas factor"),
              .unit = in::pure,
              .range = between(0.0, 1.0),
              .help = LW_TEXT("c: share of the gas pressure that stands behind the ring.")},
             ring.gasFactor);
}

void describeRingFriction(Visitor& v, loads::Friction& friction) {
    v.list(
        {.name = "rings",
         .label = LW_TEXT("Piston rings"),
         .range = between(0.0, 12.0),
         .help = LW_TEXT("The ring pack of one piston, from the crown on. Default: two compression "
                         "rings and an oil ring (form after Stanley et al., SAE 1999-01-0974).")},
        LW_TEXT("Ring"), friction.rings, [&](loads::PistonRing& ring) { describeRing(v, ring); });
    v.number({.name = "ring_boundary_coefficient",
              .label = LW_TEXT("Ring boundary friction"),
              .unit = in::pure,
              .range = between(0.0, 1.0),
              .help = LW_TEXT("f_b: friction coefficient where metals touch. Default 0.12.")},
             friction.ringBoundary);
    v.number(
        {.name = "ring_hydrodynamic_coefficient",
         .label = LW_TEXT("Ring film friction"),
         .unit = in::pure,
         .range = between(0.0, 1000.0),
         .help = LW_TEXT("f_h: factor of the square root of the duty number in the film regime. "
                         "Default 2.5.")},
        friction.ringHydrodynamic);
    v.number(
        {.name = "ring_critical_duty",
         .label = LW_TEXT("Critical duty number"),
         .unit = in::pure,
         .range = between(1e-6, 1.0),
         .help = LW_TEXT("D_c: duty number above which the film carries the ring. Default 1e-4.")},
        friction.ringCriticalDuty);
    v.number({.name = "liner_viscosity_Pa_s",
              .label = LW_TEXT("Oil viscosity at the liner"),
              .unit = in::pascalSecond,
              .range = between(1e-5, 10.0),
              .help = LW_TEXT("η at liner temperature. Default 0.008 Pa·s.")},
             friction.linerViscosity);
}

void describeGuideFriction(Visitor& v, loads::Friction& friction) {
    v.number({.name = "guide_coefficient",
              .label = LW_TEXT("Guide friction"),
              .unit = in::pure,
              .range = between(0.0, 1.0),
              .help = LW_TEXT("μ_guide between piston and bore under side force. Default 0.08.")},
             friction.guide);
    v.number({.name = "guide_overhang_mm",
              .label = LW_TEXT("Guide overhang"),
              .unit = in::mm,
              .range = between(0.0, 2000.0),
              .help = LW_TEXT(
                  "From the end of the guide to the roller axis; empty: the roller radius.")},
             friction.guideOverhang);
    v.number({.name = "guide_length_mm",
              .label = LW_TEXT("Guide length"),
              .unit = in::mm,
              .range = between(1.0, 2000.0),
              .help = LW_TEXT("Length over which the piston is guided; empty: the bore.")},
             friction.guideLength);
}

void describeRollerFriction(Visitor& v, loads::Friction& friction) {
    v.number({.name = "rolling_coefficient",
              .label = LW_TEXT("Rolling resistance"),
              .unit = in::pure,
              .range = between(0.0, 1.0),
              .help = LW_TEXT("c_r of the roller on the track. Default 0.001.")},
             friction.rolling);
    v.number(
        {.name = "roller_bearing_coefficient",
         .label = LW_TEXT("Roller bearing friction"),
         .unit = in::pure,
         .range = between(0.0, 1.0),
         .help = LW_TEXT("μ_b at the mean bearing diameter. Default 0.0025 (bearing catalogues).")},
        friction.rollerBearing);
    v.number(
        {.name = "slip_coefficient",
         .label = LW_TEXT("Slip friction"),
         .unit = in::pure,
         .range = between(0.0, 1.0),
         .help = LW_TEXT("μ_s: friction of the slip across the roller's width. Default 0.05.")},
        friction.slip);
    v.number(
        {.name = "shaft_bearing_coefficient",
         .label = LW_TEXT("Shaft bearing friction"),
         .unit = in::pure,
         .range = between(0.0, 1.0),
         .help = LW_TEXT("μ of the main bearings at the pitch radius taken as diameter. Default "
                         "0.0018.")},
        friction.shaftBearing);
    v.number({.name = "auxiliary_power_kW",
              .label = LW_TEXT("Auxiliary power"),
              .unit = in::kW,
              .range = between(0.0, 10000.0),
              .help = LW_TEXT("Pumps and whatever else the shaft drives. Default 0.")},
             friction.auxiliaryPower);
}

void describeBody(Visitor& v, contact::Elastic& elastic, double& roughness) {
    v.number({.name = "elastic_modulus_GPa",
              .label = LW_TEXT("Elastic modulus"),
              .unit = in::GPa,
              .range = between(0.1, 2000.0),
              .help = LW_TEXT("E. Default 206 GPa, steel.")},
             elastic.modulus);
    v.number({.name = "poisson_ratio",
              .label = LW_TEXT("Poisson's ratio"),
              .unit = in::pure,
              .range = between(0.0, 0.5),
              .help = LW_TEXT("ν. Default 0.30, steel.")},
             elastic.poissonRatio);
    v.number({.name = "roughness_um",
              .label = LW_TEXT("Surface roughness"),
              .unit = in::um,
              .range = between(0.001, 100.0),
              .help = LW_TEXT(
                  "Rq, root mean square. Default 0.2 µm for the track, 0.1 µm for the roller.")},
             roughness);
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
    v.number({.name = "allowable_stress_MPa",
              .label = LW_TEXT("Allowable contact stress"),
              .unit = in::MPa,
              .range = between(1.0, 10000.0),
              .help = LW_TEXT("σ_allow of the track; empty: from the table of track materials.")},
             materials.allowableStress);
    v.section({.name = "track", .label = LW_TEXT("Track surface")},
              [&] { describeBody(v, materials.trackElastic, materials.trackRoughness); });
    v.section({.name = "roller", .label = LW_TEXT("Roller surface")},
              [&] { describeBody(v, materials.rollerElastic, materials.rollerRoughness); });
}

void describeLimit(Visitor& v, const Key& key, Limit& limit) {
    v.section(key, [&] {
        Key warning = key;
        warning.name = "warning";
        warning.label = LW_TEXT("Warning");
        Key error = key;
        error.name = "error";
        error.label = LW_TEXT("Error");
        v.number(warning, limit.warning);
        v.number(error, limit.error);
    });
}

} // namespace

void describeFriction(Visitor& v, loads::Friction& friction) {
    describeRingFriction(v, friction);
    describeGuideFriction(v, friction);
    describeRollerFriction(v, friction);
}

void describeContact(Visitor& v, Design& design) {
    v.section({.name = "materials", .label = LW_TEXT("Materials"), .presence = Presence::optional},
              [&] { describeMaterials(v, design.materials); });
    v.section({.name = "lubricant", .label = LW_TEXT("Lubricant"), .presence = Presence::optional},
              [&] {
                  v.number({.name = "viscosity_Pa_s",
                            .label = LW_TEXT("Oil viscosity at the track"),
                            .unit = in::pascalSecond,
                            .range = between(1e-5, 10.0),
                            .help = LW_TEXT("η₀ at track temperature. Default 0.010 Pa·s.")},
                           design.lubricant.viscosity);
                  v.number({.name = "pressure_coefficient_per_GPa",
                            .label = LW_TEXT("Pressure-viscosity coefficient"),
                            .unit = in::perGPa,
                            .range = between(0.1, 100.0),
                            .help = LW_TEXT("α_p. Default 20 1/GPa, mineral oil.")},
                           design.lubricant.pressureCoefficient);
              });
    v.section(
        {.name = "roller_bearing",
         .label = LW_TEXT("Roller bearing"),
         .presence = Presence::optional},
        [&] {
            v.number({.name = "dynamic_rating_kN",
                      .label = LW_TEXT("Dynamic rating"),
                      .unit = in::kN,
                      .range = between(0.01, 100000.0),
                      .help = LW_TEXT("C as a track roller (outer ring loaded, ISO 281); empty: no "
                                      "life is computed.")},
                     design.rollerBearing.dynamicRating);
            v.number({.name = "static_rating_kN",
                      .label = LW_TEXT("Static rating"),
                      .unit = in::kN,
                      .range = between(0.01, 100000.0),
                      .help = LW_TEXT("C₀ as a track roller (ISO 76); empty: no static safety is "
                                      "computed.")},
                     design.rollerBearing.staticRating);
        });
    v.branch(oneSided, design.mechanism.isOneSided(), [&] {
        v.section({.name = "thrust_bearing",
                   .label = LW_TEXT("Thrust bearing"),
                   .presence = Presence::optional},
                  [&] {
                      v.number(
                          {.name = "dynamic_rating_kN",
                           .label = LW_TEXT("Dynamic rating"),
                           .unit = in::kN,
                           .range = between(0.01, 100000.0),
                           .help = LW_TEXT("C of the roller thrust bearing that carries the track "
                                           "(ISO 281); empty: no life is computed.")},
                          design.thrustBearing.dynamicRating);
                  });
    });
}

void describeLimits(Visitor& v, Limits& limits) {
    const auto limit = [&v](std::string_view name, TextId label, const Unit& unit, double largest,
                            TextId help, Limit& value) {
        describeLimit(v,
                      {.name = name,
                       .label = label,
                       .unit = unit,
                       .range = between(0.0, largest),
                       .help = help},
                      value);
    };
    limit("pressure_angle_deg", LW_TEXT("Pressure angle"), in::degrees, 90.0,
          LW_TEXT("Values above this are reported. Default 35° and 45° (own estimate)."),
          limits.pressureAngle);
    limit("mean_piston_speed_m_per_s", LW_TEXT("Mean piston speed"), in::metrePerSecond, 200.0,
          LW_TEXT("Values above this are reported. Default 16 and 22 m/s (own estimate)."),
          limits.meanPistonSpeed);
    limit("peak_pressure_bar", LW_TEXT("Peak pressure"), in::bar, 2000.0,
          LW_TEXT("Values above this are reported. Default 120 and 180 bar (own estimate)."),
          limits.peakPressure);
    limit("film_ratio", LW_TEXT("Specific film thickness Λ"), in::pure, 100.0,
          LW_TEXT("Values below this are reported. Default 1 and 0.5 (own estimate)."),
          limits.filmRatio);
    limit("contact_safety", LW_TEXT("Pitting safety factor (nominal)"), in::pure, 100.0,
          LW_TEXT("Allowable divided by nominal contact stress; values below this are reported. "
                  "Default 1.2 and 1.0 (own estimate)."),
          limits.contactSafety);
    limit("roller_life_h", LW_TEXT("Roller life"), in::hours, 1e9,
          LW_TEXT("Values below this are reported. Default 1000 and 100 hours (own estimate)."),
          limits.rollerLife);
    limit("guide_bracket", LW_TEXT("Margin against jamming"), in::pure, 1.0,
          LW_TEXT("cos α less the guide's friction share; values below this are reported. Default "
                  "0.3 and 0 (own estimate)."),
          limits.guideBracket);
    limit("knock_integral", LW_TEXT("Knock integral"), in::pure, 100.0,
          LW_TEXT("Values from this on are reported. Default 0.8 and 1 (Livengood and Wu 1955)."),
          limits.knockIntegral);
}

} // namespace lobewright::design
