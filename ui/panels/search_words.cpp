#include "ui/panels/search_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <vector>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SearchWords)
};

struct Meaning {
    QStringList words;              ///< what a person types
    std::vector<std::string> parts; ///< of the paths that it is about
};

std::vector<Meaning> listed() {
    const auto make = [](const QString& words, std::vector<std::string> parts) {
        return Meaning{words.split(QLatin1Char(' '), Qt::SkipEmptyParts), std::move(parts)};
    };
    return {
        make(Words::tr("compression ratio"),
             {"/mechanism/clearance_mm", "/mechanism/recess_cm3", "/mechanism/exhaust_lead_deg",
              "/mechanism/adjuster/", "/stroke_mm"}),
        make(Words::tr("displacement swept volume capacity"),
             {"/mechanism/bore_mm", "/mechanism/cylinders", "/stroke_mm", "/lobes"}),
        make(Words::tr("stroke travel amplitude"),
             {"/stroke_mm", "/lift_mm", "/cos_mm", "/sin_mm"}),
        make(Words::tr("speed rpm revs"), {"/running/speed_rpm"}),
        make(Words::tr("torque power output"),
             {"/running/speed_rpm", "/gas/lambda", "/gas/fuel", "/gas/supply/pressure_bar",
              "/gas/supply/drive_ratio", "/gas/burn/start_deg", "/stroke_mm",
              "/mechanism/bore_mm"}),
        make(Words::tr("overlap blowdown scavenge timing after-charge"),
             {"/mechanism/exhaust_lead_deg", "/edge_mm", "/ports/inlet/0/height_mm",
              "/ports/exhaust/0/height_mm", "/mechanism/adjuster/setting_deg"}),
        make(Words::tr("boost turbo supercharger charge"), {"/gas/supply/"}),
        make(Words::tr("mass weight"), {"/mechanism/piston_mass_kg/", "/running/inertia_kg_m2"}),
        make(Words::tr("flywheel"), {"/running/inertia_kg_m2"}),
        make(Words::tr("ignition spark advance"), {"/gas/burn/start_deg"}),
        make(Words::tr("mixture equivalence lambda"), {"/gas/lambda"}),
        make(Words::tr("undercut pressure angle stress hertz"),
             {"/mechanism/roller/", "/mechanism/pitch_radius_mm", "/law", "/span_deg",
              "/stroke_mm"}),
    };
}

} // namespace

bool isMeantBy(const std::string& path, const QString& typed) {
    constexpr int telling = 3; // letters; fewer begin too many words
    static const std::vector<Meaning> all = listed();
    const QString word = typed.trimmed();
    if (word.size() < telling || path.starts_with("/limits/") || path.starts_with("/reference/"))
        return false;
    return std::ranges::any_of(all, [&](const Meaning& meaning) {
        const bool isAsked = std::ranges::any_of(meaning.words, [&](const QString& known) {
            return known.startsWith(word, Qt::CaseInsensitive);
        });
        const bool isTwo = meaning.words.join(QLatin1Char(' ')).contains(word, Qt::CaseInsensitive);
        return (isAsked || (word.contains(QLatin1Char(' ')) && isTwo)) &&
               std::ranges::any_of(meaning.parts, [&](const std::string& part) {
                   return path.find(part) != std::string::npos;
               });
    });
}

} // namespace lobewright::ui
