#include "ui/report/report_job.h"

#include "core/files/write_file.h"
#include "ui/base/core_text.h"
#include "ui/base/faults.h"

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

void ReportJob::start(const ReportContent& content, const QString& file) {
    file_ = file;
    printer_.reset();
    begin(content);
}

void ReportJob::print(const ReportContent& content, const std::shared_ptr<QPrinter>& printer) {
    printer_ = printer;
    begin(content);
}

void ReportJob::begin(const ReportContent& content) {
    content_ = content;
    content_.date = reportDate();
    points_ = 0;
    busy_ = true;
    unknowns_ = std::make_shared<std::shared_ptr<const ReportUnknowns>>(content.unknowns);
    number_ = runner_.request(
        [design = content.solution->design, unknowns = unknowns_](
            Monitor& monitor, const study::PointSink& sink) -> Result<study::Table> {
            auto found = reportUnknowns(design, monitor, *unknowns);
            if (!found)
                return found.problems();
            *unknowns = std::move(found).value();
            return reportTorqueCurve(design, monitor, sink);
        });
}

void ReportJob::cancel() {
    busy_ = false;
    runner_.cancel();
}

void ReportJob::draw(const study::Table& table) {
    content_.torqueCurve = table;
    content_.unknowns = *unknowns_;
    const Problems problems = guardedWork([this]() -> Problems {
        const auto reason = write();
        return reason ? Problems{{"", reason->toStdString()}} : Problems();
    });
    if (!problems.empty()) {
        fail(coreText(problems.front().message));
        return;
    }
    busy_ = false;
    Q_EMIT written();
}

/// Why it could not be written; absent when it was.
std::optional<QString> ReportJob::write() const {
    if (printer_) {
        const auto pages = printReport(content_, *printer_);
        return pages ? std::nullopt : std::optional(coreText(pages.problems().front().message));
    }
    const auto bytes = reportPdf(content_);
    if (!bytes)
        return coreText(bytes.problems().front().message);
    const std::string_view view(bytes->constData(), static_cast<size_t>(bytes->size()));
    if (const auto problem = files::writeFile(file_.toStdString(), view))
        return coreText(problem->message);
    return std::nullopt;
}

void ReportJob::fail(const QString& reason) {
    busy_ = false;
    Q_EMIT failed(reason);
}

} // namespace lobewright::ui
