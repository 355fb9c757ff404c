#include "tests/ui/core_words_list.h"

#include "core/design/fields.h"
#include "core/exchange/track_export.h"
#include "core/solution/solution.h"
#include "core/study/claims_keys.h"
#include "core/study/comparison.h"
#include "ui/core_words.h"
#include "ui/workspace/samples.h"

#include <set>

namespace lobewright::ui::test {

namespace {

class WordSet {
  public:
    void add(std::string_view text) {
        if (!text.empty())
            words_.insert(
                coreTemplate(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))));
    }
    QStringList sorted() const { return {words_.begin(), words_.end()}; }

  private:
    std::set<QString> words_;
};

void addFields(WordSet& words, const design::Design& design) {
    for (const design::Field& field : design::fields(design)) {
        words.add(field.label);
        words.add(field.help);
        words.add(field.groupLabel);
        words.add(field.range.describe());
        for (const std::string& label : field.choiceLabels)
            words.add(label);
    }
}

/// The design with every choice taken once: other kinds have other fields.
void addEveryChoice(WordSet& words, const design::Design& design) {
    addFields(words, design);
    for (const design::Field& field : design::fields(design)) {
        for (const std::string& choice : field.choices) {
            if (const auto other = design::withField(design, field.path, choice))
                addFields(words, *other);
        }
    }
}

solution::Solution solved(const design::Design& design) {
    SilentMonitor monitor;
    return solution::solve(design, monitor).value();
}

void addSolution(WordSet& words, const solution::Solution& solution) {
    const std::string pressureOf = "Mean effective pressure of ";
    for (const auto& figure : solution.figures) {
        words.add(figure.label);
        words.add(figure.note);
        // The audit names its losses without what they have in common.
        if (figure.label.starts_with(pressureOf)) {
            std::string loss = figure.label.substr(pressureOf.size());
            if (loss.starts_with("the "))
                loss = loss.substr(4);
            loss[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(loss[0])));
            words.add(loss);
        }
    }
    for (const auto& channel : solution.channels)
        words.add(channel.label);
}

template <class Keys>
void addKeys(WordSet& words, const Keys& keys) {
    for (const auto& key : keys) {
        words.add(key.label);
        words.add(key.help);
        for (const auto& word : key.words)
            words.add(word.label);
    }
}

} // namespace

QStringList coreWords() {
    WordSet words;
    for (const Sample& sample : samples()) {
        const design::Design design = loadSample(sample).value();
        addEveryChoice(words, design);
        addSolution(words, solved(design));
    }
    design::Design crowned = loadSample(samples().front()).value();
    crowned.mechanism.roller.crownRadius = 1.0;
    crowned.mechanism.closedTrack = true;
    addEveryChoice(words, crowned);
    addSolution(words, solved(crowned));
    for (const study::BasisWord& word : study::basisWords)
        words.add(word.label);
    for (int engine = 0; engine < 5; ++engine)
        words.add(study::label(static_cast<study::Compared>(engine)));
    for (const exchange::ExportWords& kind : exchange::exportWords) {
        words.add(kind.label);
        words.add(kind.help);
    }
    addKeys(words, study::claimHeadKeys());
    study::forEachGroup([&](const char*, const auto& keys, auto) { addKeys(words, keys); });
    addKeys(words, study::statementKeys());
    return words.sorted();
}

QStringList checkSentences() {
    WordSet words;
    struct Bound {
        const char *quantity, *unit, *advice;
        bool above;
    };
    const Bound bounds[] = {
        {"Web between ports", "mm",
         "fewer or narrower ports leave piston rings something to run on", false},
        {"Mean piston speed", "m/s", "less speed, stroke or lobes", true},
        {"Peak pressure", "bar", "more clearance, a later or longer burn, or less supply pressure",
         true},
        {"Knock integral", "", "a later burn, less compression or a cooler supply", true},
        {"Pressure angle", "°",
         "a larger pitch radius, a longer span or a shorter stroke makes it flatter", true}};
    for (const Bound& bound : bounds) {
        const bool sided = std::string(bound.quantity).starts_with("Web") ||
                           std::string(bound.quantity).starts_with("Pressure angle");
        for (const char* side : {", inlet side", ", exhaust side"}) {
            const std::string unit = *bound.unit ? std::string(" ") + bound.unit : std::string();
            words.add(std::string(bound.quantity) + (sided ? side : "") + " is 1" + unit + ", " +
                      (bound.above ? "above" : "below") + " 2" + unit + ": " + bound.advice + '.');
        }
    }
    for (const char* side : {"inlet", "exhaust"}) {
        const std::string on = side;
        words.add("Velocity of the " + on +
                  " track jumps at 2 junctions, most by 3 mm/rad at track "
                  "angle 4°: the piston would be struck; let neighbouring segments meet with equal "
                  "slope.");
        words.add(
            "Acceleration of the " + on +
            " track jumps at 2 junctions, most by 3 mm/rad² at "
            "track angle 4°: infinite jerk; a law with continuous acceleration runs quieter.");
        words.add("Jerk of the " + on +
                  " track jumps at 2 junctions, most by 3 mm/rad³ at track "
                  "angle 4°: usual for most laws, and harmless at moderate speed.");
        words.add(
            "The roller of the " + on +
            " side leaves its open track: following it would take "
            "1 N of pull; less speed, a lighter piston, a gentler lobe or a closed track keeps "
            "it on.");
        for (const char* flank : {"push", "pull"}) {
            const std::string begin = std::string("The ") + flank + " flank of the " + on +
                                      " track is undercut: relative radius 1 mm at track angle 2° "
                                      "and 3 mm from the shaft; ";
            words.add(begin + "a roller radius below 4 mm cuts no cusp.");
            words.add(begin + "a larger pitch radius or a gentler lobe avoids it.");
        }
    }
    words.add("The exhaust closes 1 shaft ° after the inlet, so fresh gas can still leave: more "
              "exhaust lead or a lower exhaust port turns the order round.");
    words.add("Supply power not counted: 1 kW would be needed to charge the reservoir; every brake "
              "value is that much too kind.");
    words.add("The load changes flank 1 times a pattern: the rollers rattle and reverse their spin "
              "there; more supply pressure or lighter pistons keep them on the push flank.");
    return words.sorted();
}

QStringList checksOfSamples() {
    WordSet words;
    for (const Sample& sample : samples()) {
        for (const auto& check : solved(loadSample(sample).value()).checks)
            words.add(check.message);
    }
    return words.sorted();
}

} // namespace lobewright::ui::test
