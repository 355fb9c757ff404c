#pragma once

#include "core/design/knowledge.h"
#include "core/draft/brief.h"
#include "core/text/message.h"

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lobewright::draft {

/// How one number of a draft is found. The text is what the program shows.
struct Rule {
    std::string_view id; ///< "bore-from-displacement", noted in the design's knowledge
    TextId title;        ///< "Bore from displacement"
    TextId formula;      ///< in symbols
    TextId source;
    TextId range = {}; ///< of what had to be assumed; empty: nothing
};

/// All rules, in the order of the draft.
std::span<const Rule> rules();
/// The rule of this id; null when there is none.
const Rule* findRule(std::string_view id);

/// A number with how far it may be off.
struct Span {
    double value = 0.0, low = 0.0, high = 0.0;
};

/// One number of the draft: which rule gave it from what.
struct Step {
    const Rule* rule = nullptr;
    TextId label;     ///< "Bore"
    std::string unit; ///< of the design file, "mm"
    Span span;        ///< in that unit; low = high: no range
    Message working;  ///< the formula with the numbers put in
    design::Origin origin = design::Origin::derived;
    std::vector<std::string> inputs; ///< JSON pointers that it sets; empty: on the way only
    bool isResult = false;           ///< of other steps: no number can be put in its place
};

/// Numbers that a person puts in place of a rule's, by its id, in the unit of the step.
using OwnNumbers = std::map<std::string, double, std::less<>>;

/// Collects the steps of a draft; a person's own number replaces what a rule gives.
class Notebook {
  public:
    explicit Notebook(OwnNumbers own) : own_(std::move(own)) {}

    /// What is published: no rule, no range but its rounding.
    double given(TextId label, std::string_view unit, double value, double precision,
                 Message source, std::vector<std::string> inputs = {});
    /// The same of a figure of the brief: its value [SI].
    double given(TextId label, std::string_view unit, double factor, const Figure& figure,
                 std::string source, std::vector<std::string> inputs = {}) {
        return given(label, unit, figure.value / factor, figure.precision, std::move(source),
                     std::move(inputs)) *
               factor;
    }
    /// What a rule gives, or the person's own number instead.
    double take(std::string_view rule, TextId label, std::string_view unit, Span span,
                Message working, std::vector<std::string> inputs = {},
                design::Origin origin = design::Origin::derived);
    /// What the numbers come to, and the inputs that it sets; no number can be put in its place.
    void result(std::string_view rule, TextId label, std::string_view unit, Span span,
                Message working, std::vector<std::string> inputs = {});
    /// A guess: the middle of a range.
    double assume(std::string_view rule, TextId label, std::string_view unit, Span span,
                  std::vector<std::string> inputs = {});
    bool isOwn(std::string_view rule) const { return own_.contains(rule); }
    /// Gives the last step of this rule another value, found by a search.
    void revise(std::string_view rule, double value, Message working);

    const std::vector<Step>& steps() const { return steps_; }

  private:
    OwnNumbers own_;
    std::vector<Step> steps_;
};

} // namespace lobewright::draft
