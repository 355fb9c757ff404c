#include "core/solution/quantity_id.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace lobewright::solution {

namespace {

/// Units whose symbol cannot stand in a name; of an hourly count the id tells the unit, and the
/// lever arm of a track is written as a length.
constexpr std::array writtenUnits = {std::pair(&in::um, "um"),
                                     std::pair(&in::mm2, "mm2"),
                                     std::pair(&in::cm3, "cm3"),
                                     std::pair(&in::perMm, "per_mm"),
                                     std::pair(&in::mmPerRad, "mm"),
                                     std::pair(&in::degrees, "deg"),
                                     std::pair(&in::shaftDegrees, "deg"),
                                     std::pair(&in::degreesOfCycle, "cycle_deg"),
                                     std::pair(&in::perSecond, "per_s"),
                                     std::pair(&in::litrePerSecond, "L_per_s"),
                                     std::pair(&in::perHour, ""),
                                     std::pair(&in::rpm, "rpm"),
                                     std::pair(&in::metrePerSecond, "m_per_s"),
                                     std::pair(&in::metrePerSecond2, "m_per_s2"),
                                     std::pair(&in::metrePerSecond3, "m_per_s3"),
                                     std::pair(&in::secondsPerMetre, "s_per_m"),
                                     std::pair(&in::Nm, "Nm"),
                                     std::pair(&in::WPerMm2, "W_per_mm2"),
                                     std::pair(&in::kgm2, "kg_m2"),
                                     std::pair(&in::gPerSecond, "g_per_s"),
                                     std::pair(&in::kgPerSecond, "kg_per_s"),
                                     std::pair(&in::kgPerHour, "kg_per_h"),
                                     std::pair(&in::gPerKWh, "g_per_kWh"),
                                     std::pair(&in::kJPerKg, "kJ_per_kg"),
                                     std::pair(&in::WPerM2K, "W_per_m2K")};

std::string_view writtenUnit(const Unit& unit) {
    const auto row =
        std::ranges::find(writtenUnits, &unit, [](const auto& each) { return each.first; });
    return row != writtenUnits.end() ? std::string_view(row->second) : unit.symbol;
}

} // namespace

std::string QuantityId::written() const {
    const std::string_view parts[] = {end ? std::string_view(lobewright::name(*end)) : "",
                                      writtenUnit(*unit)};
    std::string name;
    name.reserve(id.size() + parts[0].size() + parts[1].size() + 2);
    name += id;
    for (const std::string_view part : parts) {
        if (!part.empty()) {
            name += '_';
            name += part;
        }
    }
    return name;
}

} // namespace lobewright::solution
