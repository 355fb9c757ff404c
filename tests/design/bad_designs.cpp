#include "tests/design/bad_designs.h"

#include "tests/design/sample.h"

#include <stdexcept>

namespace lobewright::design::testing {

namespace {

using nlohmann::json;

/// A change of the tree, as operations of JSON Patch (RFC 6902).
struct Change {
    const char* name;
    const char* patch;
    const char* path;
};

/// Broken by a single value or key: the schema refuses them as well.
constexpr Change singleValues[] = {
    {"bore is a text", R"({"op":"replace","path":"/mechanism/bore_mm","value":"58"})",
     "/mechanism/bore_mm"},
    {"bore is a list", R"({"op":"replace","path":"/mechanism/bore_mm","value":[58]})",
     "/mechanism/bore_mm"},
    {"bore is null", R"({"op":"replace","path":"/mechanism/bore_mm","value":null})",
     "/mechanism/bore_mm"},
    {"bore is zero", R"({"op":"replace","path":"/mechanism/bore_mm","value":0})",
     "/mechanism/bore_mm"},
    {"bore is negative", R"({"op":"replace","path":"/mechanism/bore_mm","value":-58})",
     "/mechanism/bore_mm"},
    {"bore is huge", R"({"op":"replace","path":"/mechanism/bore_mm","value":1e300})",
     "/mechanism/bore_mm"},
    {"bore is missing", R"({"op":"remove","path":"/mechanism/bore_mm"})", "/mechanism/bore_mm"},
    {"bore is misspelt", R"({"op":"move","from":"/mechanism/bore_mm","path":"/mechanism/boer_mm"})",
     "/mechanism/boer_mm"},
    {"bore stands in the wrong section",
     R"({"op":"move","from":"/mechanism/bore_mm","path":"/mechanism/roller/bore_mm"})",
     "/mechanism/roller/bore_mm"},
    {"mechanism is missing", R"({"op":"remove","path":"/mechanism"})", "/mechanism"},
    {"tracks are missing", R"({"op":"remove","path":"/tracks"})", "/tracks"},
    {"ports are missing", R"({"op":"remove","path":"/ports"})", "/ports"},
    {"mechanism is a number", R"({"op":"replace","path":"/mechanism","value":7})", "/mechanism"},
    {"ports are a list", R"({"op":"replace","path":"/ports","value":[]})", "/ports"},
    {"format is missing", R"({"op":"remove","path":"/format"})", "/format"},
    {"format is another", R"({"op":"replace","path":"/format","value":"drawing"})", "/format"},
    {"format version is newer", R"({"op":"replace","path":"/format_version","value":2})",
     "/format_version"},
    {"format version is zero", R"({"op":"replace","path":"/format_version","value":0})",
     "/format_version"},
    {"format version is a text", R"({"op":"replace","path":"/format_version","value":"1"})",
     "/format_version"},
    {"cylinders are zero", R"({"op":"replace","path":"/mechanism/cylinders","value":0})",
     "/mechanism/cylinders"},
    {"cylinders are a thousand million",
     R"({"op":"replace","path":"/mechanism/cylinders","value":1000000000})",
     "/mechanism/cylinders"},
    {"cylinders are beyond any integer",
     R"({"op":"replace","path":"/mechanism/cylinders","value":1e25})", "/mechanism/cylinders"},
    {"cylinders have a fraction", R"({"op":"replace","path":"/mechanism/cylinders","value":2.5})",
     "/mechanism/cylinders"},
    {"clearance is negative", R"({"op":"replace","path":"/mechanism/clearance_mm","value":-1})",
     "/mechanism/clearance_mm"},
    {"piston mass is zero",
     R"({"op":"replace","path":"/mechanism/piston_mass_kg/inlet","value":0})",
     "/mechanism/piston_mass_kg/inlet"},
    {"closed track is a number", R"({"op":"replace","path":"/mechanism/closed_track","value":1})",
     "/mechanism/closed_track"},
    {"a ring distance is a text",
     R"({"op":"replace","path":"/mechanism/piston/ring_distances_mm/1","value":"9"})",
     "/mechanism/piston/ring_distances_mm/1"},
    {"lobes are missing", R"({"op":"remove","path":"/tracks/inlet/lobes"})", "/tracks/inlet/lobes"},
    {"lobes are many", R"({"op":"replace","path":"/tracks/inlet/lobes","value":25})",
     "/tracks/inlet/lobes"},
    {"exhaust track is an unknown word",
     R"({"op":"replace","path":"/tracks/exhaust","value":"twin"})", "/tracks/exhaust"},
    {"exhaust track is null", R"({"op":"replace","path":"/tracks/exhaust","value":null})",
     "/tracks/exhaust"},
    {"exhaust track is missing", R"({"op":"remove","path":"/tracks/exhaust"})", "/tracks/exhaust"},
    {"segments and knots are both given", R"({"op":"add","path":"/tracks/inlet/knots","value":[]})",
     "/tracks/inlet"},
    {"no shape is given", R"({"op":"remove","path":"/tracks/inlet/segments"})", "/tracks/inlet"},
    {"segments are empty", R"({"op":"replace","path":"/tracks/inlet/segments","value":[]})",
     "/tracks/inlet/segments"},
    {"a segment is a number", R"({"op":"replace","path":"/tracks/inlet/segments/1","value":4})",
     "/tracks/inlet/segments/1"},
    {"law is unknown",
     R"({"op":"replace","path":"/tracks/inlet/segments/0/law","value":"modified-cosine"})",
     "/tracks/inlet/segments/0/law"},
    {"law is missing", R"({"op":"remove","path":"/tracks/inlet/segments/0/law"})",
     "/tracks/inlet/segments/0/law"},
    {"a dwell has a law",
     R"({"op":"add","path":"/tracks/inlet/segments/1/law","value":"harmonic"})",
     "/tracks/inlet/segments/1/law"},
    {"segment kind is unknown",
     R"({"op":"replace","path":"/tracks/inlet/segments/2/kind","value":"fall"})",
     "/tracks/inlet/segments/2/kind"},
    {"a span is zero", R"({"op":"replace","path":"/tracks/inlet/segments/1/span_deg","value":0})",
     "/tracks/inlet/segments/1/span_deg"},
    {"stroke is missing", R"({"op":"remove","path":"/tracks/inlet/stroke_mm"})",
     "/tracks/inlet/stroke_mm"},
    {"inlet has no ports", R"({"op":"replace","path":"/ports/inlet","value":[]})", "/ports/inlet"},
    {"port edge is zero", R"({"op":"replace","path":"/ports/inlet/0/edge_mm","value":0})",
     "/ports/inlet/0/edge_mm"},
    {"port count is huge", R"({"op":"replace","path":"/ports/inlet/0/count","value":100000})",
     "/ports/inlet/0/count"},
    {"discharge coefficient is above one",
     R"({"op":"replace","path":"/ports/exhaust/0/discharge_coefficient","value":1.4})",
     "/ports/exhaust/0/discharge_coefficient"},
    {"fuel is unknown", R"({"op":"replace","path":"/gas/fuel","value":"coal"})", "/gas/fuel"},
    {"air ratio is negative", R"({"op":"replace","path":"/gas/lambda","value":-1.1})",
     "/gas/lambda"},
    {"burn start is another word",
     R"({"op":"replace","path":"/gas/burn/start_deg","value":"best"})", "/gas/burn/start_deg"},
    {"burn duration is zero", R"({"op":"replace","path":"/gas/burn/duration_deg","value":0})",
     "/gas/burn/duration_deg"},
    {"a reservoir has a plenum", R"({"op":"add","path":"/gas/supply/plenum_cm3","value":900})",
     "/gas/supply/plenum_cm3"},
    {"displaced fraction without that model",
     R"({"op":"add","path":"/gas/scavenging","value":{"displaced_fraction":0.3}})",
     "/gas/scavenging/displaced_fraction"},
    {"supply temperature is in degrees Celsius",
     R"({"op":"replace","path":"/gas/supply/temperature_K","value":45})",
     "/gas/supply/temperature_K"},
    {"speed is zero", R"({"op":"replace","path":"/running/speed_rpm","value":0})",
     "/running/speed_rpm"},
    {"speed is true", R"({"op":"replace","path":"/running/speed_rpm","value":true})",
     "/running/speed_rpm"},
    {"an unknown section", R"({"op":"add","path":"/turbocharger","value":{}})", "/turbocharger"},
    {"an unknown key with a slash", R"({"op":"add","path":"/running/a~1b","value":1})",
     "/running/a~1b"},
    {"a friction ring lacks its height",
     R"({"op":"add","path":"/friction","value":{"rings":[{"tension_pressure_MPa":0.1,"gas_factor":0}]}})",
     "/friction/rings/0/height_mm"},
    {"track material is not in the table",
     R"({"op":"add","path":"/materials","value":{"track_material":"chocolate"}})",
     "/materials/track_material"},
    {"title is a list", R"({"op":"replace","path":"/title","value":["a"]})", "/title"},
};

/// Good values that cannot be together.
constexpr Change combinations[] = {
    {"spans add up to too little",
     R"({"op":"replace","path":"/tracks/inlet/segments/1/span_deg","value":2})",
     "/tracks/inlet/segments"},
    {"spans of another number of lobes",
     R"({"op":"replace","path":"/tracks/inlet/lobes","value":3})", "/tracks/inlet/segments"},
    {"a rise ends lower than it starts",
     R"({"op":"add","path":"/tracks/inlet/segments/0/lift_mm","value":0})",
     "/tracks/inlet/segments/0/lift_mm"},
    {"a rise ends above the stroke",
     R"({"op":"add","path":"/tracks/inlet/segments/0/lift_mm","value":40})",
     "/tracks/inlet/segments/0/lift_mm"},
    {"a return ends above zero",
     R"({"op":"add","path":"/tracks/inlet/segments/2/lift_mm","value":3})",
     "/tracks/inlet/segments"},
    {"two knots stand at one angle",
     R"({"op":"replace","path":"/tracks/inlet","value":{"lobes":2,"knots":[
        {"angle_deg":0,"lift_mm":0},{"angle_deg":60,"lift_mm":34},{"angle_deg":60,"lift_mm":30}]}})",
     "/tracks/inlet/knots/2/angle_deg"},
    {"a knot stands beyond the pattern",
     R"({"op":"replace","path":"/tracks/inlet","value":{"lobes":2,"knots":[
        {"angle_deg":0,"lift_mm":0},{"angle_deg":60,"lift_mm":34},{"angle_deg":190,"lift_mm":3}]}})",
     "/tracks/inlet/knots/2/angle_deg"},
    {"all knots stand at one lift",
     R"({"op":"replace","path":"/tracks/inlet","value":{"lobes":2,"knots":[
        {"angle_deg":0,"lift_mm":4},{"angle_deg":60,"lift_mm":4},{"angle_deg":90,"lift_mm":4}]}})",
     "/tracks/inlet/knots"},
    {"harmonics have no amplitude",
     R"({"op":"replace","path":"/tracks/inlet","value":{"lobes":2,"harmonics":[
        {"order":1,"cos_mm":0,"sin_mm":0}]}})",
     "/tracks/inlet/harmonics"},
    {"exhaust track has another period",
     R"({"op":"replace","path":"/tracks/exhaust","value":{"lobes":1,"harmonics":[
        {"order":1,"cos_mm":-17,"sin_mm":0}]}})",
     "/tracks/exhaust/lobes"},
    {"exhaust track has another number of rises",
     R"({"op":"replace","path":"/tracks/exhaust","value":{"lobes":2,"harmonics":[
        {"order":2,"cos_mm":-17,"sin_mm":0}]}})",
     "/tracks/exhaust"},
    {"the crowns collide through the axial shift",
     R"({"op":"add","path":"/mechanism/adjuster/axial_mm","value":-7.5})",
     "/mechanism/clearance_mm"},
    {"the crowns collide through the adjuster setting",
     R"({"op":"replace","path":"/mechanism/adjuster",
        "value":{"helix_lead_mm_per_turn":-720,"setting_deg":4}})",
     "/mechanism/clearance_mm"},
    {"the ports never close", R"({"op":"replace","path":"/ports/inlet/0/edge_mm","value":34})",
     "/ports/inlet/0/edge_mm"},
    {"the ports never open through the axial shift",
     R"({"op":"replace","path":"/mechanism/clearance_mm","value":20},
        {"op":"add","path":"/mechanism/adjuster/axial_mm","value":-9.6})",
     "/ports/exhaust/0/edge_mm"},
    {"the ports stay open through the axial shift",
     R"({"op":"add","path":"/mechanism/adjuster/axial_mm","value":25})",
     "/ports/exhaust/0/edge_mm"},
    {"corners are larger than the port",
     R"({"op":"replace","path":"/ports/inlet/0/corner_radius_mm","value":3.6})",
     "/ports/inlet/0/corner_radius_mm"},
    {"a port is wider than the bore",
     R"({"op":"replace","path":"/ports/inlet/0/width_mm","value":58})", "/ports/inlet/0/width_mm"},
    {"ports do not fit around the bore",
     R"({"op":"replace","path":"/ports/exhaust/0/count","value":22})", "/ports/exhaust/0/count"},
    {"two angles for three cylinders",
     R"({"op":"replace","path":"/mechanism/cylinder_angles_deg","value":[0,120]})",
     "/mechanism/cylinder_angles_deg"},
    {"two cylinders in one place",
     R"({"op":"replace","path":"/mechanism/cylinder_angles_deg","value":[0,120,480]})",
     "/mechanism/cylinder_angles_deg"},
    {"cylinders overlap on the circle",
     R"({"op":"replace","path":"/mechanism/cylinders","value":12})", "/mechanism/cylinders"},
    {"cylinders enclose the shaft",
     R"({"op":"replace","path":"/mechanism/pitch_radius_mm","value":29})",
     "/mechanism/pitch_radius_mm"},
    {"a ring stands below the piston",
     R"({"op":"replace","path":"/mechanism/piston/ring_distances_mm/2","value":80})",
     "/mechanism/piston/ring_distances_mm/2"},
    {"rings stand in the wrong order",
     R"({"op":"replace","path":"/mechanism/piston/ring_distances_mm/1","value":4})",
     "/mechanism/piston/ring_distances_mm/1"},
    {"roller is wider than the track circle",
     R"({"op":"replace","path":"/mechanism/roller/width_mm","value":208})",
     "/mechanism/roller/width_mm"},
    {"edge reliefs leave no roller",
     R"({"op":"replace","path":"/mechanism/roller/edge_relief_mm","value":10})",
     "/mechanism/roller/edge_relief_mm"},
    {"a warning stands beyond its error",
     R"({"op":"add","path":"/limits","value":{"pressure_angle_deg":{"warning":50,"error":40}}})",
     "/limits/pressure_angle_deg/warning"},
};

std::string changed(const std::string& operations) {
    return sampleTree().patch(json::parse("[" + operations + "]")).dump(2);
}

/// The sample's text with one piece replaced.
std::string replaced(const std::string& piece, const std::string& by) {
    std::string text = sampleText();
    const std::size_t at = text.find(piece);
    if (at == std::string::npos) {
        throw std::logic_error("the sample no longer holds " + piece);
    }
    return text.replace(at, piece.size(), by);
}

void addTexts(std::vector<BadDesign>& designs) {
    const std::string bore = "\"bore_mm\": 58.0";
    const auto add = [&](const char* name, std::string text, const char* path) {
        designs.push_back({name, std::move(text), path, false});
    };
    add("empty file", "", "");
    add("only spaces", " \n\t\n", "");
    add("not a number", replaced(bore, "\"bore_mm\": NaN"), "/mechanism/bore_mm");
    add("infinity", replaced(bore, "\"bore_mm\": Infinity"), "/mechanism/bore_mm");
    add("minus infinity", replaced(bore, "\"bore_mm\": -Infinity"), "/mechanism/bore_mm");
    add("too large for a number", replaced(bore, "\"bore_mm\": 1e999"), "/mechanism/bore_mm");
    add("not a number in a list", replaced("[5.0, 9.0, 60.0]", "[5.0, nan, 60.0]"),
        "/mechanism/piston/ring_distances_mm/1");
    add("a key twice", replaced(bore, bore + ", " + bore), "/mechanism/bore_mm");
    add("cut off in the middle", sampleText().substr(0, sampleText().find("\"lobes\"")),
        "/tracks/inlet");
    add("a comma too many", replaced(bore, bore + ","), "/mechanism");
    add("text after the end", sampleText() + "]", "");
    add("a list", "[1, 2, 3]", "");
    add("a word", "\"lobewright-design\"", "");
    add("null", "null", "");
    add("an empty object", "{}", "/mechanism");
    add("binary",
        std::string("\x7f"
                    "ELF\x02\x01\x01\0\0\xff\xfe\x80",
                    12),
        "");
    add("not UTF-8", replaced("\"title\": \"Biogas", "\"title\": \"Biogas\xff\xfe"), "/title");
    // NOLINTBEGIN(bugprone-string-constructor): as large as they look
    add("deep brackets", std::string(10'000'000, '['), "/0/0/0");
    add(
        "deep groups",
        [] {
            std::string text;
            for (int i = 0; i < 1'000'000; ++i) {
                text += "{\"a\":";
            }
            return text;
        }(),
        "/a/a/a");
    add("50 MB of brackets", std::string(50'000'000, '['), "");
    add("17 MiB of spaces", std::string(17U << 20U, ' '), "");
    // NOLINTEND(bugprone-string-constructor)
    std::string keys = "{\"format\": \"lobewright-design\", \"format_version\": 1";
    for (int i = 0; i < 100'000; ++i) {
        keys += ", \"key" + std::to_string(i) + "\": 0";
    }
    add("a hundred thousand unknown keys", keys + "}", "/mechanism");
}

} // namespace

std::vector<BadDesign> badDesigns() {
    std::vector<BadDesign> designs;
    for (const Change& change : singleValues) {
        designs.push_back({change.name, changed(change.patch), change.path, true});
    }
    for (const Change& change : combinations) {
        designs.push_back({change.name, changed(change.patch), change.path, false});
    }
    addTexts(designs);
    return designs;
}

} // namespace lobewright::design::testing
