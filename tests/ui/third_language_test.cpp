// Every message of the core in an invented language and with an invented system of units: no
// English may be left, and no place without its value.
#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"
#include "core/design/file.h"
#include "core/exchange/track_export.h"
#include "core/solution/solution.h"
#include "core/solution/workings/working.h"
#include "tests/design/bad_designs.h"
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/translations.h"
#include "ui/document/samples.h"

#include <QRegularExpression>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

/// Every text reads "§" with its places, and lengths are told in furlongs.
class Invented : public MessageReader {
  public:
    std::string amount(const Amount& amount) const override {
        const double furlong = 201.168; // [m], 660 ft
        const bool isLength = amount.unit == &in::mm || amount.unit == &in::um;
        return isLength
                   ? withUnit(digitsOf(amount, amount.value / furlong), amount.isBare ? "" : "fur")
                   : MessageReader::amount(amount);
    }

  protected:
    std::string text(TextId id) const override {
        std::string shown;
        const std::string_view words = id.text;
        for (std::size_t i = 0; i + 1 < words.size(); ++i) {
            if (words[i] == '%' && words[i + 1] >= '1' && words[i + 1] <= '9') {
                shown += std::string("§") + std::string(words.substr(i, 2));
            }
        }
        return shown.empty() ? "§" : shown;
    }
};

/// Holds every message that it is shown.
class EveryMessage {
  public:
    EveryMessage() : known_(readTranslations(germanFile())) {}

    void look(const Message& message, const std::string& where) {
        if (message.empty())
            return;
        ++told_;
        check(message, where);
        const std::string shown = Invented().read(message);
        static const QRegularExpression place(QStringLiteral("%[1-9]"));
        EXPECT_FALSE(QString::fromStdString(shown).contains(place)) << where << ": " << shown;
        static const QRegularExpression millimetres(QStringLiteral(" mm(?![/²³])"));
        EXPECT_FALSE(QString::fromStdString(shown).contains(millimetres)) << where << ": " << shown;
    }
    int told() const { return told_; }

  private:
    /// Texts are those that translators see, places have values, and words in between are no
    /// sentences of ours.
    void check(const Message& message, const std::string& where) {
        const QString text = QString::fromUtf8(message.text.text);
        const bool isWordsOnly = text == QStringLiteral("%1");
        EXPECT_TRUE(isWordsOnly || known_.contains({QStringLiteral("Core"), text}))
            << where << ": " << message.text.text;
        for (std::size_t i = 1; i <= message.arguments.size(); ++i)
            EXPECT_TRUE(text.contains(QStringLiteral("%%1").arg(i))) << message.text.text;
        for (const Argument& argument : message.arguments) {
            if (const auto* id = std::get_if<TextId>(&argument)) {
                EXPECT_TRUE(known_.contains({QStringLiteral("Core"), QString::fromUtf8(id->text)}))
                    << where << ": " << id->text;
            } else if (const auto* nested = std::get_if<std::vector<Message>>(&argument)) {
                for (const Message& inner : *nested)
                    check(inner, where);
            } else if (const auto* words = std::get_if<std::string>(&argument)) {
                static const QRegularExpression sentence(
                    QStringLiteral("\\b(the|is|are|must|and|which|given|of the)\\b"));
                EXPECT_FALSE(QString::fromStdString(*words).contains(sentence))
                    << where << ": " << *words;
            }
        }
    }

    Messages known_;
    int told_ = 0;
};

void lookAtSolution(EveryMessage& every, const solution::Solution& solution) {
    for (const auto& check : solution.checks)
        every.look(check.message, check.id);
    for (const auto& channel : solution.channels)
        every.look(channel.label, channel.name);
    for (const auto& figure : solution.figures) {
        every.look(figure.label, figure.name);
        every.look(figure.note, figure.name);
        if (const auto working = solution::working(solution, figure.name)) {
            every.look(working->source, figure.name);
            every.look(working->note, figure.name);
            for (const auto& operand : working->operands) {
                every.look(operand.label, figure.name);
                every.look(operand.note, figure.name);
            }
        }
    }
}

design::Design crowned() {
    design::Design design = sampleDesign();
    design.mechanism.roller.crownRadius = 1.0;
    design.mechanism.closedTrack = true;
    design.mechanism.bore *= 1.02;
    return design;
}

void lookAtClaims(EveryMessage& every, const study::ClaimsReport& report) {
    for (const Message& assumption : report.assumptions)
        every.look(assumption, "assumption");
    for (const auto& finding : report.findings) {
        for (const Message& text : {finding.quantity, finding.formula, finding.substituted,
                                    finding.band, finding.source, finding.note})
            every.look(text, finding.id);
        every.look(study::name(finding.verdict), finding.id);
    }
    for (const auto& conflict : report.conflicts) {
        every.look(conflict.message, "conflict");
        every.look(conflict.arithmetic, "conflict");
    }
    for (const auto& row : report.statements) {
        for (const Message& text : {row.computed, row.arithmetic, row.overturnedBy})
            every.look(text, row.statement.claim);
        every.look(study::name(row.outcome), "outcome");
        every.look(study::name(row.confidence), "confidence");
    }
    for (const auto& missing : report.missing) {
        every.look(missing.label, missing.path);
        every.look(missing.decides, missing.path);
    }
}

} // namespace

TEST(ThirdLanguage, SolutionsLeaveNoEnglishAndNoPlace) {
    EveryMessage every;
    std::vector<design::Design> designs = {crowned()};
    for (const Sample& sample : samples())
        designs.push_back(loadSample(sample).value());
    for (const design::Design& design : designs) {
        SilentMonitor monitor;
        const auto solution = solution::solve(design, monitor);
        ASSERT_TRUE(solution) << solution.problems().front().message.english();
        lookAtSolution(every, *solution);
    }
    EXPECT_GT(every.told(), 2000);
}

TEST(ThirdLanguage, FieldsLeaveNoEnglishAndNoPlace) {
    EveryMessage every;
    for (const Sample& sample : samples()) {
        const design::Design design = loadSample(sample).value();
        for (const design::Field& field : design::fields(design)) {
            for (const Message& text : {field.label, field.help, field.groupLabel})
                every.look(text, field.path);
            for (const TextId label : field.choiceLabels)
                every.look(label, field.path);
            every.look(field.range.describe(), field.path);
        }
    }
    for (const exchange::ExportWords& words : exchange::exportWords) {
        every.look(words.label, "export");
        every.look(words.help, "export");
    }
    EXPECT_GT(every.told(), 500);
}

TEST(ThirdLanguage, ProblemsLeaveNoEnglishAndNoPlace) {
    EveryMessage every;
    for (const auto& bad : design::testing::badDesigns()) {
        const auto result = design::readDesign(bad.text);
        ASSERT_FALSE(result) << bad.name;
        for (const Problem& problem : result.problems())
            every.look(problem.message, bad.name);
    }
    EXPECT_GT(every.told(), 60);
}

TEST(ThirdLanguage, ClaimsLeaveNoEnglishAndNoPlace) {
    EveryMessage every;
    const auto claims = study::loadClaims(lobewright::test::sourceFolder() +
                                          "/samples/claims/irrigation-set.claims.json");
    ASSERT_TRUE(claims);
    lookAtClaims(every, study::checkClaims(*claims));
    lookAtClaims(every, study::checkClaims(study::Claims()));
    EXPECT_GT(every.told(), 60);
}
