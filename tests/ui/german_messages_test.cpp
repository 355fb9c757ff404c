// Messages of the core, in a German window.
#include "core/claims/claims_file.h"
#include "core/claims/claims_report.h"
#include "core/design/file.h"
#include "core/solution/solution.h"
#include "tests/design/bad_designs.h"
#include "tests/places.h"
#include "tests/ui/desktop_fixture.h"
#include "tests/ui/english_words.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/document/samples.h"
#include "ui/report/report_words.h"

#include <QDialog>
#include <QDir>
#include <QTreeWidget>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

void expectGerman(const QString& text, const std::string& source) {
    EXPECT_EQ(englishIn(text), QString()) << text.toStdString() << "\n  from: " << source;
}

} // namespace

TEST(GermanMessages, WordsOfTheUserStayAsTheyAre) {
    EXPECT_EQ(coreText(Message(LW_TEXT("\"%1\" is not a key here; the nearest known key is \"%2\""),
                               std::string("Bore"), std::string("bore_mm"))),
              QStringLiteral("„Bore“ ist hier kein Schlüssel; der nächstliegende bekannte ist "
                             "„bore_mm“"));
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
            EXPECT_NE(coreText(problem.message).toStdString(), problem.message.english());
            expectGerman(coreText(problem.message), problem.message.english());
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
            expectGerman(coreText(check.message), check.message.english());
    }
}

TEST(GermanMessages, FailedSolvesSayWhyInGerman) {
    design::Design design = sampleDesign();
    const auto told = [&] {
        SilentMonitor monitor;
        const auto solution = solution::solve(design, monitor);
        std::vector<Message> messages;
        if (!solution) {
            for (const Problem& problem : solution.problems())
                messages.push_back(problem.message);
        } else {
            for (const auto& check : solution->checks) {
                if (check.id == "not-converged")
                    messages.push_back(check.message);
            }
        }
        EXPECT_FALSE(messages.empty());
        for (const Message& message : messages)
            expectGerman(coreText(message), message.english());
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
            study::claimsText(study::checkClaims(unsaid), 2000, [](const Message& text) {
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
