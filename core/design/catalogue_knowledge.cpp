#include "core/design/catalogue.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

constexpr Choice<Origin> origins[] = {
    {Origin::given, {"given", LW_TEXT("Given")}},
    {Origin::measured, {"measured", LW_TEXT("Measured")}},
    {Origin::derived, {"derived", LW_TEXT("Derived")}},
    {Origin::assumed, {"assumed", LW_TEXT("Assumed")}},
    {Origin::chosen, {"chosen", LW_TEXT("Chosen")}},
};

constexpr Choice<Spread> spreads[] = {
    {Spread::uniform, {"uniform", LW_TEXT("Uniform")}},
    {Spread::triangular, {"triangular", LW_TEXT("Triangular")}},
    {Spread::normal, {"normal", LW_TEXT("Normal")}},
};

constexpr Range anyNumber = {-1e12, 1e12, false, false};
constexpr Range anyText = {0.0, 2000.0, false, false};

void describeKnown(Visitor& v, Known& known) {
    v.choice<Origin>(
        {.name = "origin",
         .label = LW_TEXT("Origin"),
         .presence = Presence::required,
         .help = LW_TEXT("Given: published. Measured: off a picture or a part. Derived: "
                         "follows from other inputs by a rule. Assumed: guessed. Chosen: a "
                         "decision of one's own.")},
        origins, known.origin);
    v.number({.name = "low",
              .label = LW_TEXT("Lower limit"),
              .unit = in::pure,
              .range = anyNumber,
              .presence = Presence::optional,
              .help = LW_TEXT("Smallest value that is plausible, in the unit of the input."),
              .writtenWhenNull = false},
             known.low);
    v.number({.name = "high",
              .label = LW_TEXT("Upper limit"),
              .unit = in::pure,
              .range = anyNumber,
              .presence = Presence::optional,
              .help = LW_TEXT("Largest value that is plausible, in the unit of the input."),
              .writtenWhenNull = false},
             known.high);
    v.branch({"low", {}}, known.low.has_value(), [&] {
        v.choice<Spread>(
            {.name = "shape",
             .label = LW_TEXT("Distribution"),
             .presence = Presence::optional,
             .help = LW_TEXT("Uniform between the limits, triangular with its mode at the "
                             "value, or normal with the limits as 5th and 95th percentile.")},
            spreads, known.spread);
    });
    v.texts({.name = "options",
             .label = LW_TEXT("Options"),
             .range = between(0.0, 50.0),
             .presence = Presence::optional,
             .help = LW_TEXT("Of a choice: the words that are plausible."),
             .writtenWhenNull = false},
            {.name = {}, .label = LW_TEXT("Option"), .range = between(0.0, 200.0)}, known.options);
    v.text({.name = "group",
            .label = LW_TEXT("Group"),
            .range = anyText,
            .presence = Presence::optional,
            .help = LW_TEXT("Inputs of one group move together within their ranges."),
            .writtenWhenNull = false},
           known.group);
    v.text({.name = "rule",
            .label = LW_TEXT("Rule"),
            .range = anyText,
            .presence = Presence::optional,
            .help = LW_TEXT("Name of the rule that a derived or assumed value follows."),
            .writtenWhenNull = false},
           known.rule);
    v.text({.name = "source",
            .label = LW_TEXT("Source"),
            .range = anyText,
            .presence = Presence::optional,
            .help = LW_TEXT("Where the value is published, measured or worked out."),
            .writtenWhenNull = false},
           known.source);
}

} // namespace

void describeKnowledge(Visitor& v, Knowledge& knowledge) {
    v.entries({.name = "knowledge",
               .label = LW_TEXT("Knowledge"),
               .presence = Presence::optional,
               .help = LW_TEXT(
                   "Origin and range of inputs, by JSON pointer; an input without an entry is "
                   "chosen. Does not change what is computed."),
               .writtenWhenNull = false},
              LW_TEXT("Input"), knowledge, [&](Known& known) { describeKnown(v, known); });
}

} // namespace lobewright::design
