#pragma once

#include "core/editing/change.h"
#include "core/units.h"
#include "tests/design/sample.h"

#include <numeric>

namespace lobewright::editing::testing {

using design::testing::sample;

inline design::Design applied(const design::Design& design, const Change& change) {
    design::Design next = change.replacement.value_or(design);
    for (const FieldChange& field : change.fields) {
        next = *design::withField(next, field.path, field.value);
    }
    return next;
}

inline const std::vector<motion::Segment>& segments(const design::Design& design) {
    return std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments;
}

inline double degreesTogether(const design::Design& design) {
    double sum = 0.0;
    for (const motion::Segment& segment : segments(design)) {
        sum += segment.span / units::degree;
    }
    return sum;
}

} // namespace lobewright::editing::testing
