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
    const auto limit = [&v](std::string_view name, TextId label, std::optional<double>& value,
                            TextId help) {
        v.number({name, label, in::pure, anyNumber, Presence::optional, help, false}, value);
    };
    limit("low", LW_TEXT("Lower limit"), known.low,
          LW_TEXT("Smallest value that is plausible, in the unit of the input."));
    limit("high", LW_TEXT("Upper limit"), known.high,
          LW_TEXT("Largest value that is plausible, in the unit of the input."));
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
    const auto text = [&v](std::string_view name, TextId label, std::string& value, TextId help) {
        v.text({name, label, in::pure, anyText, Presence::optional, help, false}, value);
    };
    text("group", LW_TEXT("Group"), known.group,
         LW_TEXT("Inputs of one group move together within their ranges."));
    text("rule", LW_TEXT("Rule"), known.rule,
         LW_TEXT("Name of the rule that a derived or assumed value follows."));
    text("source", LW_TEXT("Source"), known.source,
         LW_TEXT("Where the value is published, measured or worked out."));
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
