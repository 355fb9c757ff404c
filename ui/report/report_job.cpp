#include "ui/report/report_job.h"

#include "core/design/atomic_file.h"
#include "ui/core_words.h"

namespace lobewright::ui {

ReportJob::ReportJob(QObject* parent) : QObject(parent) {
    connect(&runner_, &StudyRunner::pointArrived, this,
            [this](const study::Point&, quint64 number) {
                if (number == number_ && busy_)
                    Q_EMIT progressed(static_cast<double>(++points_) / (reportCurvePoints + 1));
            });
    connect(&runner_, &StudyRunner::finished, this,
            [this](const study::Table& table, quint64 number) {
                if (number == number_ && busy_)
                    draw(table);
            });
    connect(&runner_, &StudyRunner::failed, this, [this](const Problems& problems, quint64 number) {
        if (number == number_ && busy_)
            fail(coreText(problems.front().message));
    });
}

void ReportJob::start(const SolutionPointer& solution, const QString& version,
                      const QString& file) {
    content_ = {solution, {}, version, QDate::currentDate()};
    file_ = file;
    points_ = 0;
    busy_ = true;
    number_ = runner_.request(
        [design = solution->design](Monitor& monitor, const study::PointSink& sink) {
            return reportTorqueCurve(design, monitor, sink);
        });
}

void ReportJob::cancel() {
    busy_ = false;
    runner_.cancel();
}

void ReportJob::draw(const study::Table& table) {
    content_.torqueCurve = table;
    const auto bytes = reportPdf(content_);
    if (!bytes) {
        fail(coreText(bytes.problems().front().message));
        return;
    }
    const std::string_view view(bytes->constData(), static_cast<size_t>(bytes->size()));
    if (const auto problem = design::writeAtomically(file_.toStdString(), view)) {
        fail(coreText(problem->message));
        return;
    }
    busy_ = false;
    Q_EMIT written(file_);
}

void ReportJob::fail(const QString& reason) {
    busy_ = false;
    Q_EMIT failed(reason);
}

} // namespace lobewright::ui
