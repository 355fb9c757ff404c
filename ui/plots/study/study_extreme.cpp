#include "ui/plots/study/study_extreme.h"

namespace lobewright::ui {

std::optional<StudyExtreme> studyExtreme(const std::map<double, study::Point>& points,
                                         std::size_t index, std::string_view name) {
    std::optional<StudyExtreme> extreme;
    const bool least = name.starts_with("lowest_");
    for (const auto& [parameter, point] : points) {
        const std::optional<double>& value = point.values[index];
        if (value && (!extreme || (least ? *value < extreme->value : *value > extreme->value)))
            extreme = StudyExtreme{parameter, *value, least};
    }
    return extreme;
}

} // namespace lobewright::ui
