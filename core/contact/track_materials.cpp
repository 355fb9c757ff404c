#include "core/contact/track_materials.h"

#include "core/files/classic_locale.h"
#include "core/units.h"
#include "track_materials_table.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace lobewright::contact {

namespace {

std::vector<TrackMaterial> readTable() {
    const files::ClassicLocale numbers; // the parser asks the C library
    const auto table = nlohmann::json::parse(trackMaterialsTable);
    std::vector<TrackMaterial> materials;
    for (const auto& row : table.at("materials")) {
        TrackMaterial material;
        material.key = row.at("key").get<std::string>();
        material.label = row.at("label").get<std::string>();
        material.allowableStress = row.at("allowable_MPa").get<double>() * units::megapascal;
        material.cycles = row.at("cycles").get<double>();
        material.hardness = row.at("hardness").get<std::string>();
        material.source = row.at("source").get<std::string>();
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
