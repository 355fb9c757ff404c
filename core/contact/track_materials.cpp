#include "core/contact/track_materials.h"

#include "core/files/classic_locale.h"
#include "core/units.h"
#include "track_materials_table.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cassert>

LW_TEXTS_OF(Core)

namespace lobewright::contact {

namespace {

/// What people read of the table, for translators.
constexpr TextId texts[] = {
    LW_TEXT("Case-carburised steel, quality ML"),
    LW_TEXT("Case-carburised steel, quality MQ"),
    LW_TEXT("Case-carburised steel, quality ME"),
    LW_TEXT("Flame- or induction-hardened steel, quality ML"),
    LW_TEXT("Flame- or induction-hardened steel, quality MQ"),
    LW_TEXT("Flame- or induction-hardened steel, quality ME"),
    LW_TEXT("Gas-nitrided nitriding steel, quality MQ"),
    LW_TEXT("Gas-nitrided through-hardening steel, quality MQ"),
    LW_TEXT("Nitrocarburised steel, quality MQ"),
    LW_TEXT("Through-hardened alloy steel, quality MQ"),
    LW_TEXT("ISO 6336-5:2003, table 1 (secondary value, not checked against the printed source)"),
    LW_TEXT("ISO 6336-5:2003, table 1, 0.740·HV + 602 (secondary value, not checked against the "
            "printed source)"),
    LW_TEXT("ISO 6336-5:2003, table 1, 0.541·HV + 882 (secondary value, not checked against the "
            "printed source)"),
    LW_TEXT("ISO 6336-5:2003, table 1, 0.505·HV + 1013 (secondary value, not checked against the "
            "printed source)"),
    LW_TEXT("ISO 6336-5:2003, table 1, 1.313·HV + 373 (secondary value, not checked against the "
            "printed source)")};

/// A text of the table; it must stand in the list above.
TextId known(const std::string& text) {
    const auto found = std::ranges::find(texts, TextId{text.c_str()});
    assert(found != std::end(texts));
    return found == std::end(texts) ? TextId{} : *found;
}

std::vector<TrackMaterial> readTable() {
    const files::ClassicLocale numbers; // the parser asks the C library
    const auto table = nlohmann::json::parse(trackMaterialsTable);
    std::vector<TrackMaterial> materials;
    for (const auto& row : table.at("materials")) {
        TrackMaterial material;
        material.key = row.at("key").get<std::string>();
        material.label = known(row.at("label"));
        material.allowableStress = row.at("allowable_MPa").get<double>() * units::megapascal;
        material.cycles = row.at("cycles").get<double>();
        material.hardness = row.at("hardness").get<std::string>();
        material.source = known(row.at("source"));
        material.confidence = row.at("confidence").get<std::string>();
        materials.push_back(std::move(material));
    }
    return materials;
}

} // namespace

const std::vector<TrackMaterial>& trackMaterials() {
    static const std::vector<TrackMaterial> table = readTable();
    return table;
}

const TrackMaterial* findTrackMaterial(std::string_view key) {
    const auto& table = trackMaterials();
    const auto found = std::find_if(table.begin(), table.end(),
                                    [key](const TrackMaterial& m) { return m.key == key; });
    return found == table.end() ? nullptr : &*found;
}

} // namespace lobewright::contact
