#include "tests/ui/core_words_list.h"

#include "core/contact/track_materials.h"
#include "core/design/fields.h"
#include "core/exchange/track_export.h"
#include "core/solution/solution.h"
#include "core/study/claims_check.h"
#include "core/study/claims_keys.h"
#include "core/study/comparison.h"
#include "tests/ui/core_messages.h"
#include "ui/core_templates.h"
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

/// Names of what the core counts up, and single words that stand for a value in its sentences.
void addSingleWords(WordSet& words) {
    for (int verdict = 0; verdict <= static_cast<int>(study::Verdict::contradictory); ++verdict)
        words.add(study::name(static_cast<study::Verdict>(verdict)));
    for (int i = 0; i < 3; ++i) {
        words.add(study::name(static_cast<study::Confidence>(i)));
        words.add(study::name(static_cast<study::Outcome>(i)));
    }
    for (int dimension = 0; dimension <= static_cast<int>(study::Dimension::fraction); ++dimension)
        words.add(study::describe(static_cast<study::Dimension>(dimension)));
    for (const auto& material : contact::trackMaterials())
        words.add(material.source);
    for (const char* word : {"inlet",
                             "exhaust",
                             "middle",
                             "push",
                             "pull",
                             "rise",
                             "return",
                             "dwell",
                             "Velocity",
                             "Acceleration",
                             "Jerk",
                             "above",
                             "spark",
                             "compression",
                             "cycle",
                             "ignition",
                             "none",
                             "radius",
                             "width",
                             "positive",
                             "assumed",
                             "exact",
                             "Statements",
                             "Assumed",
                             "arithmetic",
                             "band",
                             "source",
                             "note",
                             "computed",
                             "confidence",
                             "overturned",
                             "keys",
                             "cancelled",
                             "Overlap",
                             "rev/min",
                             "mm/turn",
                             "air/(V_d·c·n·ρ_amb)",
                             "air/trapping·[h(T₂) − h(T_amb)]"})
        words.add(word);
}

} // namespace

QStringList coreWords() {
    WordSet words;
    for (const Sample& sample : samples()) {
        const design::Design design = loadSample(sample).value();
        words.add(design.title);
        words.add(design.notes);
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
    addSingleWords(words);
    QStringList all = words.sorted();
    for (const QString& literal : coreLiterals()) {
        const CoreTemplate format(literal);
        all << (format.hasPlaces() ? format.key() : coreTemplate(literal));
    }
    all.removeDuplicates();
    all.sort();
    return all;
}

QStringList coreFormats() {
    QStringList formats;
    for (const QString& literal : coreLiterals()) {
        if (CoreTemplate(literal).hasPlaces())
            formats << literal;
    }
    return formats;
}

} // namespace lobewright::ui::test
