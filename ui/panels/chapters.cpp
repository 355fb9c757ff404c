#include "ui/panels/chapters.h"

#include <QCoreApplication>

#include <algorithm>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Chapters)
};

/// What the chapters of an engine with one track are called differently.
void nameOneSided(std::vector<Chapter>& chapters) {
    const auto name = [&](const char* key, const QString& title, const QString& hint) {
        const auto chapter = std::ranges::find(chapters, QString::fromLatin1(key), &Chapter::key);
        chapter->oneSidedTitle = title;
        chapter->oneSidedHint = hint;
    };
    name("inlet-track", Words::tr("Track"), Words::tr("Moves the pistons"));
    name("inlet-ports", {}, Words::tr("Rows of inlet ports that the piston uncovers"));
    name("exhaust-ports", {}, Words::tr("Rows of exhaust ports that the piston uncovers"));
    name("cylinders", {}, Words::tr("Circle, bore, chamber"));
    name("adjuster", {}, Words::tr("Shifts the track"));
}

std::vector<Chapter> listed() {
    const auto make = [](const char* key, const QString& title, const QString& hint, bool open,
                         std::vector<std::string> groups) {
        return Chapter{QString::fromLatin1(key), title, hint, {}, {}, open, std::move(groups)};
    };
    std::vector<Chapter> all = {
        make("running", Words::tr("Operating point"), Words::tr("Speed, fired or motored"), true,
             {"/running"}),
        make("inlet-track", Words::tr("Inlet track"), Words::tr("Moves the inlet pistons"), true,
             {"/tracks/inlet"}),
        make("exhaust-track", Words::tr("Exhaust track"), Words::tr("Moves the exhaust pistons"),
             true, {"=/tracks", "/tracks/exhaust"}),
        make("inlet-ports", Words::tr("Inlet ports"),
             Words::tr("Rows that the inlet piston uncovers"), false, {"/ports/inlet"}),
        make("exhaust-ports", Words::tr("Exhaust ports"),
             Words::tr("Rows that the exhaust piston uncovers"), false, {"/ports/exhaust"}),
        make("cylinders", Words::tr("Cylinders"), Words::tr("Circle, bore, chamber, exhaust lead"),
             false, {"=/mechanism", "/mechanism/cylinder_angles_deg"}),
        make("adjuster", Words::tr("Adjuster"), Words::tr("Turns and shifts the exhaust track"),
             false, {"/mechanism/adjuster"}),
        make("pistons", Words::tr("Pistons and rollers"), Words::tr("Sizes and masses"), false,
             {"/mechanism/piston", "/mechanism/roller", "/mechanism/piston_mass_kg"}),
        make("fuel", Words::tr("Fuel and combustion"),
             Words::tr("Which fuel, when and how fast it burns"), false, {"=/gas", "/gas/burn"}),
        make("supply", Words::tr("Air supply"), Words::tr("Where fresh air comes from"), false,
             {"/gas/supply"}),
        make("exchange", Words::tr("Scavenging and walls"),
             Words::tr("How gases mix and lose heat"), false,
             {"/gas/scavenging", "/gas/wall_heat"}),
        make("friction", Words::tr("Friction"), Words::tr("Rings, guides, rollers, bearings"),
             false, {"/friction"}),
        make("materials", Words::tr("Materials, oil, bearing"),
             Words::tr("Properties on which contact results rest"), false,
             {"/materials", "/lubricant", "/roller_bearing", "/thrust_bearing"}),
        make("blank", Words::tr("Track blank"), Words::tr("The part that the track is cut in"),
             false, {"/track_blank"}),
        make("reference", Words::tr("Engines to compare with"),
             Words::tr("Cranks and a four-stroke of equal size"), false, {"/reference"}),
        make("limits", Words::tr("Limits"), Words::tr("Thresholds of warnings and errors"), false,
             {"/limits"}),
        make("schedules", Words::tr("Schedules over speed"),
             Words::tr("Inputs that follow the shaft speed"), false, {"/schedules"}),
        make("about", Words::tr("Title and notes"),
             Words::tr("What the design is and what it is for"), false, {}),
    };
    nameOneSided(all);
    return all;
}

bool claims(const Chapter& chapter, const std::string& group) {
    return std::ranges::any_of(chapter.groups, [&](const std::string& wanted) {
        if (wanted.starts_with('='))
            return group == wanted.substr(1);
        return group == wanted || group.starts_with(wanted + '/');
    });
}

} // namespace

const std::vector<Chapter>& chapters() {
    static const std::vector<Chapter> all = listed();
    return all;
}

size_t chapterOf(const design::Field& field) {
    const auto& all = chapters();
    const auto found =
        std::ranges::find_if(all, [&](const Chapter& c) { return claims(c, field.group); });
    return found == all.end() ? all.size() - 1 : static_cast<size_t>(found - all.begin());
}

} // namespace lobewright::ui
