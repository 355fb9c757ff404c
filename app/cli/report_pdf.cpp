#include "app/cli/report_pdf.h"

#include "ui/report/report.h"

#include <QApplication>

#include <memory>

namespace lobewright::cli {

bool canReport() {
    return true;
}

Result<std::string> reportPdf(const solution::Solution& solution, Monitor& monitor) {
    auto table = ui::reportTorqueCurve(solution.design, monitor);
    if (!table) {
        return table.problems();
    }
    qputenv("QT_QPA_PLATFORM", "offscreen"); // drawn on paper alone: no display is asked for
    // Nor is there a session whose folders could be missing, as Qt would remark.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    int count = 1;
    char name[] = "lobewright-cli";
    char* arguments[] = {name, nullptr};
    const QApplication application(count, arguments);
    const auto bytes = ui::reportPdf({std::make_shared<const solution::Solution>(solution),
                                      std::move(table).value(), QStringLiteral(LOBEWRIGHT_VERSION),
                                      QDate::currentDate()});
    if (!bytes) {
        return bytes.problems();
    }
    return bytes->toStdString();
}

} // namespace lobewright::cli
