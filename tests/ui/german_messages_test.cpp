// Messages of the core, in a German window.
#include "core/design/file.h"
#include "core/solution/solution.h"
#include "core/study/claims_file.h"
#include "core/study/claims_report.h"
#include "tests/design/bad_designs.h"
#include "tests/places.h"
#include "tests/ui/core_words_list.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/english_words.h"
#include "ui/core_templates.h"
#include "ui/core_words.h"
#include "ui/report/report_words.h"
#include "ui/workspace/dialogs.h"
#include "ui/workspace/samples.h"

#include <QDialog>
#include <QDir>
#include <QFile>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

void expectGerman(const QString& text, const std::string& source) {
    EXPECT_EQ(englishIn(text), QString()) << text.toStdString() << "\n  from: " << source;
}

} // namespace

// resources/translations/refresh brings the list up to date.
TEST(GermanMessages, ProgramKnowsEveryFormatOfTheCore) {
    QFile file(QStringLiteral(":/translations/core_formats.txt"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts), coreFormats());
    EXPECT_GT(coreFormats().size(), 150);
}

TEST(GermanMessages, FormatsKnowTheirOwnSentencesOnly) {
    const CoreTemplate format(QStringLiteral("{0} of \"{1}\" is {2:.4g} mm, above {{{0}}}"));
    const auto values = format.values(QStringLiteral("Lift of \"x\" is 2.5 mm, above {Lift}"));
    ASSERT_TRUE(values);
    EXPECT_EQ(*values, (QStringList{"Lift", "x", "2.5"}));
    EXPECT_TRUE(format.isQuoted(1));
    EXPECT_FALSE(format.isQuoted(0));
    EXPECT_EQ(format.key(), QStringLiteral("%1 of \"%2\" is %3 mm, above {%1}"));
    EXPECT_FALSE(format.values(QStringLiteral("Lift of \"x\" is wide mm, above {Lift}")));
    EXPECT_FALSE(format.values(QStringLiteral("Lift of \"x\" is 2.5 mm, above {Lift}!")));
}

TEST(GermanMessages, ValuesAreTranslatedUnlessQuoted) {
    EXPECT_EQ(coreText("Bore is 0 mm; it must be > 0 and ≤ 1000.5 mm"),
              QStringLiteral("Bohrung ist 0 mm; verlangt ist > 0 und ≤ 1000,5 mm"));
    EXPECT_EQ(coreText("\"Bore\" is not a key here; the nearest known key is \"bore_mm\""),
              QStringLiteral("\"Bore\" ist hier kein Schlüssel; der nächstliegende bekannte ist "
                             "\"bore_mm\""));
    EXPECT_EQ(coreText("charger not given: none assumed; 280.0 K is outside 283 … 313 K: outside "
                       "the limits of the standard"),
              QStringLiteral("Lader nicht angegeben: keiner angenommen; 280,0 K liegt außerhalb "
                             "von 283 … 313 K: außerhalb der Grenzen der Norm"));
    EXPECT_EQ(localNumbers(QStringLiteral("§ 2.7, 3.25 mm, 1.2.3")),
              QStringLiteral("§ 2.7, 3,25 mm, 1.2.3"));
}

TEST(GermanMessages, ProblemsOfBadDesignsAreGerman) {
    int told = 0;
    for (const auto& bad : design::testing::badDesigns()) {
        const auto result = design::readDesign(bad.text);
        ASSERT_FALSE(result) << bad.name;
        for (const Problem& problem : result.problems()) {
            ++told;
            EXPECT_NE(coreText(problem.message), QString::fromStdString(problem.message));
            expectGerman(coreText(problem.message), problem.message);
        }
    }
    EXPECT_GT(told, 60);
}

TEST(GermanMessages, ChecksOfSamplesAreGerman) {
    for (const Sample& sample : samples()) {
        SilentMonitor monitor;
        const auto solution = solution::solve(loadSample(sample).value(), monitor);
        ASSERT_TRUE(solution);
        for (const auto& check : solution->checks)
            expectGerman(coreText(check.message), check.message);
    }
}

TEST(GermanMessages, FailedSolvesSayWhyInGerman) {
    design::Design design = sampleDesign();
    const auto told = [&] {
        SilentMonitor monitor;
        const auto solution = solution::solve(design, monitor);
        QStringList messages;
        if (!solution) {
            for (const Problem& problem : solution.problems())
                messages << QString::fromStdString(problem.message);
        } else {
            for (const auto& check : solution->checks) {
                if (check.id == "not-converged")
                    messages << QString::fromStdString(check.message);
            }
        }
        EXPECT_FALSE(messages.isEmpty());
        for (const QString& message : messages) {
            EXPECT_NE(coreText(message.toStdString()), message);
            expectGerman(coreText(message.toStdString()), message.toStdString());
        }
    };
    design.gas.exhaustPressure = 3.0 * design.gas.supply.pressure;
    told();
    design = sampleDesign();
    design.gas.burn.start = -2.5;
    told();
    design = sampleDesign();
    design.mechanism.clearance = -0.01;
    told();
}

TEST(GermanMessages, ClaimsReportIsGerman) {
    QDir folder(QString::fromStdString(lobewright::test::sourceFolder() + "/samples/claims"));
    const QStringList files = folder.entryList({"*.claims.json"});
    ASSERT_FALSE(files.isEmpty());
    for (const QString& file : files) {
        const auto claims = study::loadClaims(folder.filePath(file).toStdString());
        ASSERT_TRUE(claims) << file.toStdString();
        study::Claims unsaid = *claims; // the words of the source stay as they were said
        unsaid.title = unsaid.source = unsaid.notes = {};
        for (auto& statement : unsaid.statements)
            statement.claim = statement.source = {};
        const std::string report =
            study::claimsText(study::checkClaims(unsaid), 2000, [](std::string_view text) {
                return localNumbers(coreText(text)).toStdString();
            });
        for (const QString& line : QString::fromStdString(report).split('\n'))
            expectGerman(line, file.toStdString());
    }
}

TEST_F(WindowTest, ReportIsGerman) {
    const solution::Solution& solution = *window_->solution();
    QStringList texts;
    for (const QString& caution : cautionTexts())
        texts << caution;
    for (const auto& rows :
         {mainFigures(solution), timingFigures(solution), designNumbers(solution.design)}) {
        EXPECT_FALSE(rows.empty());
        for (const auto& row : rows)
            texts << row.name << row.value;
    }
    for (const auto& [what, assumed] : assumptions(solution))
        texts << what << assumed;
    for (const QString& text : texts)
        expectGerman(text, "report");
}

TEST_F(WindowTest, BadFileIsRefusedInGerman) {
    QStringList shown;
    onNextDialog([&](QDialog& dialog) {
        for (QTreeWidgetItemIterator it(dialog.findChild<QTreeWidget*>()); *it; ++it)
            shown << (*it)->text(1);
    });
    showProblems(window_.get(), QStringLiteral("x.json"),
                 design::readDesign("{\"format\": 1}").problems());
    ASSERT_FALSE(shown.isEmpty());
    for (const QString& message : shown)
        expectGerman(message, message.toStdString());
}
