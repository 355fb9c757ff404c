#pragma once

#include "core/study/operating_points.h"

#include <map>
#include <optional>

namespace lobewright::ui {

/// The worst or best point of a study: least of a figure of which less is worse, largest otherwise.
struct StudyExtreme {
    double parameter = 0.0, value = 0.0;
    bool isLeast = false;
};

/// `index` of the figure `name` in the values of the points. Absent where no point has a value.
std::optional<StudyExtreme> studyExtreme(const std::map<double, study::Point>& points,
                                         std::size_t index, std::string_view name);

} // namespace lobewright::ui
