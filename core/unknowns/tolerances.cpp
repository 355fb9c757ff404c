#include "core/unknowns/tolerances.h"

#include "core/design/fields.h"
#include "core/design/file.h"

#include <fmt/format.h>

#include <algorithm>

namespace lobewright::unknowns {

namespace {

constexpr double coldTemperature = 293.15; // [K], ISO 1

/// Growth of half the shaft less that of one piston [m]: how far a crown moves outwards.
double crownGrowth(const Tolerances::Growth& growth) {
    return 0.5 * growth.length * growth.shaftExpansion *
               (growth.shaftTemperature - coldTemperature) -
           growth.pistonLength * growth.pistonExpansion *
               (growth.pistonTemperature - coldTemperature);
}

/// Ranges around values, each set to what it is in the warm engine.
class Scatter {
  public:
    Scatter(const design::Design& design, const Tolerances& tolerances)
        : design_(design), tolerances_(tolerances) {
        design_.knowledge.clear();
    }

    Result<design::Design> run() {
        const auto& mechanism = design_.mechanism;
        const double crown = 0.5 * mechanism.clearance;
        scatterLift("/tracks/inlet/stroke_mm");
        scatterLift("/tracks/exhaust/stroke_mm");
        scatterPorts("inlet", crown + strokeOf("/tracks/inlet/stroke_mm"));
        const double exhaust = strokeOf("/tracks/exhaust/stroke_mm");
        scatterPorts("exhaust",
                     crown + (exhaust > 0.0 ? exhaust : strokeOf("/tracks/inlet/stroke_mm")));
        scatter("/mechanism/clearance_mm", tolerances_.clearance,
                tolerances_.growth ? clearanceGrowth(*tolerances_.growth) : 0.0);
        auto changed = design::withFields(design_, values_);
        if (!changed) {
            return changed.problems();
        }
        design::Design next = std::move(changed).value();
        next.knowledge = ranges_;
        if (auto problems = design::validateEngine(next); !problems.empty()) {
            return problems;
        }
        return next;
    }

  private:
    static constexpr double perMetre = 1e3; ///< the lengths concerned are in mm in the file

    double strokeOf(const char* path) const {
        const auto field = design::findField(design_, path);
        const auto* value = field ? std::get_if<double>(&field->value) : nullptr;
        return value ? *value / perMetre : 0.0;
    }
    void scatterLift(const char* path) { scatter(path, tolerances_.lift, 0.0); }

    /// outermost: place of the crown at outer dead centre from the middle [m].
    void scatterPorts(const char* side, double outermost) {
        for (int row = 0;; ++row) {
            const std::string path = fmt::format("/ports/{}/{}/edge_mm", side, row);
            const auto field = design::findField(design_, path);
            if (!field) {
                return;
            }
            const double place = outermost - std::get<double>(field->value) / perMetre;
            scatter(path, tolerances_.portEdge,
                    tolerances_.growth ? edgeGrowth(*tolerances_.growth, place) : 0.0);
        }
    }

    void scatter(const std::string& path, double tolerance, double growth) {
        const auto field = design::findField(design_, path);
        if (!field || !std::holds_alternative<double>(field->value)) {
            return;
        }
        const double value = std::get<double>(field->value) + growth * perMetre;
        values_.emplace_back(path, value);
        if (!(tolerance > 0.0)) {
            return;
        }
        design::Known known;
        known.origin = design::Origin::chosen;
        known.low = std::max(value - tolerance * perMetre, field->range.min);
        known.high = std::min(value + tolerance * perMetre, field->range.max);
        ranges_[path] = known;
    }

    design::Design design_;
    const Tolerances& tolerances_;
    design::FieldValues values_;
    design::Knowledge ranges_;
};

} // namespace

double clearanceGrowth(const Tolerances::Growth& growth) {
    return 2.0 * crownGrowth(growth);
}

double edgeGrowth(const Tolerances::Growth& growth, double place) {
    return crownGrowth(growth) -
           place * growth.blockExpansion * (growth.blockTemperature - coldTemperature);
}

Result<design::Design> withRangesFor(const design::Design& design, Purpose purpose,
                                     const Tolerances& tolerances) {
    if (purpose == Purpose::scatter) {
        return Scatter(design, tolerances).run();
    }
    design::Design next = design;
    for (auto& [path, known] : next.knowledge) {
        const bool isChosen = known.origin == design::Origin::chosen;
        if (isChosen != (purpose == Purpose::free)) {
            known.low = known.high = std::nullopt; // what follows a rule still follows it
            known.options.clear();
        }
    }
    return next;
}

} // namespace lobewright::unknowns
