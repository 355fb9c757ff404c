#include "tests/solution/random_designs.h"

#include "core/design/fields.h"
#include "core/design/file.h"

#include <algorithm>
#include <cmath>

namespace lobewright::test {

double RandomDesigns::within(double from, double to) {
    return from + (to - from) * std::generate_canonical<double, 53>(random_);
}

std::size_t RandomDesigns::pick(std::size_t count) {
    return std::min(count - 1, static_cast<std::size_t>(within(0.0, static_cast<double>(count))));
}

double RandomDesigns::nearOrAnywhere(double now, double min, double max) {
    if (chance(0.1)) {
        return chance(0.5) ? min : max;
    }
    if (chance(0.2)) {
        return within(min, max);
    }
    const double moved = now == 0.0 ? within(-1.0, 1.0) : now * std::exp(within(-1.0, 1.0));
    return std::clamp(moved, min, max);
}

design::Design RandomDesigns::withOneValueMoved(const design::Design& design) {
    const auto fields = design::fields(design);
    const auto& field = fields[pick(fields.size())];
    design::FieldValue value = field.value;
    switch (field.kind) {
    case design::FieldKind::number: {
        const double* now = std::get_if<double>(&field.value);
        value = nearOrAnywhere(now ? *now : 0.0, field.range.min, field.range.max);
        break;
    }
    case design::FieldKind::integer: {
        const int* now = std::get_if<int>(&field.value);
        const double moved = now ? *now + within(-2.0, 3.0) : 1.0;
        value = static_cast<int>(std::clamp(moved, field.range.min, field.range.max));
        break;
    }
    case design::FieldKind::boolean:
        value = chance(0.5);
        break;
    case design::FieldKind::choice:
    case design::FieldKind::text:
        break;
    }
    if (!field.choices.empty() && (field.kind == design::FieldKind::choice || chance(0.3))) {
        value = field.choices[pick(field.choices.size())];
    } else if (field.nullable && chance(0.2)) {
        value = std::monostate{};
    }
    const auto changed = design::withField(design, field.path, value);
    return changed ? *changed : design;
}

/// Other laws, other spans and sometimes other lobes for a pattern of segments.
void RandomDesigns::reshape(motion::Pattern& pattern) {
    auto* shape = std::get_if<motion::SegmentShape>(&pattern.shape);
    if (!shape) {
        return;
    }
    double sum = 0.0;
    for (motion::Segment& segment : shape->segments) {
        segment.law = motion::allLaws[pick(std::size(motion::allLaws))];
        segment.span *= std::exp(within(-0.7, 0.7));
        sum += segment.span;
    }
    if (chance(0.3)) {
        pattern.lobes = 1 + static_cast<int>(pick(6));
    }
    const double period = units::turn / pattern.lobes;
    for (motion::Segment& segment : shape->segments) {
        segment.span *= period / sum;
    }
}

design::Design RandomDesigns::next() {
    constexpr int moves = 25;
    design::Design design = samples_[pick(samples_.size())];
    for (int i = 0; i < moves; ++i) {
        design::Design changed = design;
        if (chance(0.1)) {
            reshape(changed.tracks.inlet);
            if (changed.tracks.exhaust) {
                reshape(*changed.tracks.exhaust);
                changed.tracks.exhaust->lobes = changed.tracks.inlet.lobes;
            }
        } else {
            changed = withOneValueMoved(design);
        }
        if (design::validate(changed).empty()) {
            design = changed;
        }
    }
    return design;
}

} // namespace lobewright::test
