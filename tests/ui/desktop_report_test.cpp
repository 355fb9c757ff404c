#include "core/editing/design_edits.h"
#include "tests/ui/desktop_fixture.h"
#include "ui/report/report.h"
#include "ui/report/report_job.h"

#include <QFile>
#include <QProcess>
#include <QProgressDialog>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>

using namespace lobewright;
using namespace lobewright::ui;
using namespace lobewright::ui::test;

namespace {

class ReportTest : public WindowTest {
  protected:
    QProgressDialog* progress() { return window_->findChild<QProgressDialog*>("reportProgress"); }
};

bool isPdf(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) && file.read(5) == "%PDF-";
}

} // namespace

TEST_F(ReportTest, IsWrittenInTheBackgroundWithProgress) {
    const QString file = fileIn(QStringLiteral("r.pdf"));
    window_->writeReport(file);
    ASSERT_NE(progress(), nullptr);
    EXPECT_FALSE(QFile::exists(file)); // the window went on at once
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 60000));
    EXPECT_TRUE(isPdf(file));
    EXPECT_TRUE(QTest::qWaitFor([&] { return progress() == nullptr; }));
}

TEST_F(ReportTest, CancelledReportWritesNothing) {
    const QString file = fileIn(QStringLiteral("r.pdf"));
    window_->writeReport(file);
    ASSERT_NE(progress(), nullptr);
    QTest::mouseClick(progress()->findChild<QPushButton*>(), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([&] { return progress() == nullptr; }));
    QTest::qWait(700);
    EXPECT_FALSE(QFile::exists(file));
}

TEST_F(ReportTest, FolderThatIsNotThereIsSaid) {
    ReportJob job;
    QSignalSpy failed(&job, &ReportJob::failed);
    job.start({window_->solution(), {}, QStringLiteral("0"), {}},
              fileIn(QStringLiteral("none/r.pdf")));
    ASSERT_TRUE(failed.wait(60000));
    EXPECT_TRUE(failed[0][0].toString().contains(QStringLiteral("cannot be written")));
}

TEST_F(ReportTest, SaysWhatIsDifferentFromTheBaseline) {
    window_->keepBaseline();
    window_->document().apply(editing::fieldEdit(window_->document().design(),
                                                 "/mechanism/clearance_mm", 6.25, "clearance"));
    ASSERT_TRUE(waitUntilSolved());
    const QString file = fileIn(QStringLiteral("r.pdf"));
    window_->writeReport(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(file); }, 60000));
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), file, QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(text.contains(QStringLiteral("Beside the baseline")));
    EXPECT_TRUE(text.contains(QRegularExpression(
        QStringLiteral("Shaded: speeds at which .* \\(.*a roller lifts off.*\\)"))));
    EXPECT_TRUE(text.contains(QStringLiteral("6.25 mm, baseline 7 mm")));
    EXPECT_TRUE(text.contains(QRegularExpression(
        QStringLiteral("Compression ratio +[0-9.]+, baseline [0-9.]+ \\(\\+[0-9.]+ %\\)"))));
}

TEST_F(ReportTest, SolutionWithoutGasHasNoReport) {
    auto solution = std::make_shared<solution::Solution>(*window_->solution());
    solution->gas.reset();
    EXPECT_FALSE(reportPdf({solution, {}, QStringLiteral("0"), QDate(2026, 1, 1)}));
}

// On paper the tones are the light ones, whatever the screen shows.
TEST_F(ReportTest, IsTheSameInBothThemes) {
    SilentMonitor monitor;
    const auto table = reportTorqueCurve(window_->solution()->design, monitor);
    ASSERT_TRUE(table);
    const ReportContent content{window_->solution(), *table, QStringLiteral("0"),
                                QDate(2026, 1, 1)};
    const auto drawn = [&](const char* theme) {
        window_->setTheme(QString::fromLatin1(theme));
        return reportPdf(content)->size();
    };
    // Times and names inside the file differ; what is drawn weighs the same.
    EXPECT_NEAR(static_cast<double>(drawn("light")), static_cast<double>(drawn("dark")), 60.0);
}
