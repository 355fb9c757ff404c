#include "core/design/ranged_inputs.h"

#include "core/design/schedules.h"

namespace lobewright::design {

std::vector<RangedInput> rangedInputs(const Design& design) {
    std::vector<RangedInput> inputs;
    for (Field& field : fields(design)) {
        const auto entry = design.knowledge.find(field.path);
        if (entry == design.knowledge.end() || scheduleOf(design, field.path) != nullptr) {
            continue;
        }
        const Known& known = entry->second;
        const bool holdsNumber =
            std::holds_alternative<double>(field.value) || std::holds_alternative<int>(field.value);
        if ((known.low && known.high && holdsNumber) || known.options.size() > 1) {
            inputs.push_back({std::move(field), known});
        }
    }
    return inputs;
}

OriginCounts originCounts(const Design& design) {
    OriginCounts counts;
    for (const Field& field : fields(design)) {
        if (field.kind == FieldKind::text) {
            continue;
        }
        switch (knownOf(design, field.path).origin) {
        case Origin::given:
            ++counts.given;
            break;
        case Origin::measured:
            ++counts.measured;
            break;
        case Origin::derived:
            ++counts.derived;
            break;
        case Origin::assumed:
            ++counts.assumed;
            break;
        case Origin::chosen:
            ++counts.chosen;
            break;
        }
    }
    return counts;
}

} // namespace lobewright::design
