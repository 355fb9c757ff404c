#include "core/design/catalogue.h"

namespace lobewright::design {

namespace {

constexpr Choice<Origin> origins[] = {
    {Origin::given, {"given", "Given"}},       {Origin::measured, {"measured", "Measured"}},
    {Origin::derived, {"derived", "Derived"}}, {Origin::assumed, {"assumed", "Assumed"}},
    {Origin::chosen, {"chosen", "Chosen"}},
};

constexpr Choice<Spread> spreads[] = {
    {Spread::uniform, {"uniform", "Uniform"}},
    {Spread::triangular, {"triangular", "Triangular"}},
    {Spread::normal, {"normal", "Normal"}},
};

constexpr Range anyNumber = {-1e12, 1e12, false, false};
constexpr Range anyText = {0.0, 2000.0, false, false};

void describeKnown(Visitor& v, Known& known) {
    v.choice<Origin>({.name = "origin",
                      .label = "Origin",
                      .presence = Presence::required,
                      .help = "Given: published. Measured: off a picture or a part. Derived: "
                              "follows from other inputs by a rule. Assumed: guessed. Chosen: a "
                              "decision of one's own."},
                     origins, known.origin);
    v.number({.name = "low",
              .label = "Lower limit",
              .unit = in::pure,
              .range = anyNumber,
              .presence = Presence::optional,
              .help = "Smallest value that is plausible, in the unit of the input.",
              .writtenWhenNull = false},
             known.low);
    v.number({.name = "high",
              .label = "Upper limit",
              .unit = in::pure,
              .range = anyNumber,
              .presence = Presence::optional,
              .help = "Largest value that is plausible, in the unit of the input.",
              .writtenWhenNull = false},
             known.high);
    v.branch({"low", {}}, known.low.has_value(), [&] {
        v.choice<Spread>({.name = "shape",
                          .label = "Distribution",
                          .presence = Presence::optional,
                          .help = "Uniform between the limits, triangular with its mode at the "
                                  "value, or normal with the limits as 5th and 95th percentile."},
                         spreads, known.spread);
    });
    v.texts({.name = "options",
             .label = "Options",
             .range = between(0.0, 50.0),
             .presence = Presence::optional,
             .help = "Of a choice: the words that are plausible.",
             .writtenWhenNull = false},
            {.name = {}, .label = "Option", .range = between(0.0, 200.0)}, known.options);
    v.text({.name = "group",
            .label = "Group",
            .range = anyText,
            .presence = Presence::optional,
            .help = "Inputs of one group move together within their ranges.",
            .writtenWhenNull = false},
           known.group);
    v.text({.name = "rule",
            .label = "Rule",
            .range = anyText,
            .presence = Presence::optional,
            .help = "Name of the rule that a derived or assumed value follows.",
            .writtenWhenNull = false},
           known.rule);
    v.text({.name = "source",
            .label = "Source",
            .range = anyText,
            .presence = Presence::optional,
            .help = "Where the value is published, measured or worked out.",
            .writtenWhenNull = false},
           known.source);
}

} // namespace

void describeKnowledge(Visitor& v, Knowledge& knowledge) {
    v.entries({.name = "knowledge",
               .label = "Knowledge",
               .presence = Presence::optional,
               .help = "Origin and range of inputs, by JSON pointer; an input without an entry is "
                       "chosen. Does not change what is computed.",
               .writtenWhenNull = false},
              "Input", knowledge, [&](Known& known) { describeKnown(v, known); });
}

} // namespace lobewright::design
