#include "ui/window/arrangement.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Arrangements)
};

std::vector<Arrangement> listed() {
    const auto key = [](const char* text) { return QString::fromLatin1(text); };
    return {
        {key("designer"),
         Words::tr("Design"),
         Words::tr("Lobes and their consequences"),
         Arrangement::Side::numbers,
         {{50, {{key("tracks"), 38}, {key("position"), 31}, {key("torque"), 31}}},
          {50, {{key("section"), 38}, {key("ports"), 31}, {key("stress"), 31}}}}},
        {key("student"),
         Words::tr("Learn"),
         Words::tr("How the engine works, large and moving"),
         Arrangement::Side::none,
         {{60, {{key("section"), 84}, {key("stages"), 16}}},
          {40, {{key("walk"), 58}, {key("lesson-plot"), 42}}}},
         2},
        {key("reviewer"),
         Words::tr("Port timing"),
         Words::tr("Timing, areas, limits and results"),
         Arrangement::Side::figures,
         {{56, {{key("ports"), 60}, {key("position"), 40}}},
          {44, {{key("timing"), 55}, {key("limits"), 45}}}}},
        {key("performance"),
         Words::tr("Performance"),
         Words::tr("Torque against speed and phase, supply and energy"),
         Arrangement::Side::none,
         {{50, {{key("torque-curve"), 50}, {key("phase-map"), 50}}},
          {50, {{key("supply"), 34}, {key("energy"), 66}}}}},
        {key("claims"),
         Words::tr("Claims"),
         Words::tr("Published figures and statements beside arithmetic and this design"),
         Arrangement::Side::none,
         {{100, {{key("claims"), 100}}}}},
        {key("durability"),
         Words::tr("Durability and balance"),
         Words::tr("Contact stress, lever arms, forces, bearings, shaking force"),
         Arrangement::Side::none,
         {{50, {{key("contact-map"), 50}, {key("lever"), 50}}},
          {50, {{key("free-body"), 38}, {key("bearings"), 30}, {key("balance"), 32}}}}},
        {key("lobes"),
         Words::tr("Lobe shaping"),
         Words::tr("Knots and laws, and whether the lobe can be cut and run"),
         Arrangement::Side::none,
         {{48, {{key("tracks"), 40}, {key("position"), 30}, {key("width-angle"), 30}}},
          {52, {{key("laws"), 48}, {key("width-radius"), 27}, {key("factors"), 25}}}}},
        {key("unknowns"),
         Words::tr("Unknowns"),
         Words::tr("What is not known, how far results may be off, and what decides them"),
         Arrangement::Side::none,
         {{30, {{key("ranges"), 100}}},
          {38, {{key("bands"), 100}}},
          {32, {{key("decides"), 100}}}}},
        {key("tasks"),
         Words::tr("Practise"),
         Words::tr("Predict, point and build, with hints and answers"),
         Arrangement::Side::numbers,
         {{56, {{key("section"), 62}, {key("torque"), 38}}}, {44, {{key("tasks"), 100}}}}},
        {key("cranks"),
         Words::tr("Beside cranks"),
         Words::tr("This engine beside the same pistons on cranks and a four-stroke"),
         Arrangement::Side::none,
         {{64, {{key("comparison"), 100}}}, {36, {{key("lever"), 50}, {key("torque-curve"), 50}}}}},
    };
}

} // namespace

const std::vector<Arrangement>& arrangements() {
    static const std::vector<Arrangement> all = listed();
    return all;
}

} // namespace lobewright::ui
