#pragma once

#include "ui/plots/study/study_runner.h"
#include "ui/report/report.h"

#include <QObject>

class QPrinter;

namespace lobewright::ui {

/// Makes the report of a solution in the background and writes it. The torque curve is computed
/// on a thread of its own; drawing takes a moment on the thread of the window.
class ReportJob : public QObject {
    Q_OBJECT

  public:
    explicit ReportJob(QObject* parent = nullptr);

    /// Replaces a job that still runs. The solution must have a solved gas cycle; torque curve and
    /// date are the job's to fill in.
    void start(const ReportContent& content, const QString& file);
    /// The same on paper, or into the file that the printer was told to write.
    void print(const ReportContent& content, const std::shared_ptr<QPrinter>& printer);
    /// Nothing is written any more, no signal follows.
    void cancel();
    bool isBusy() const { return busy_; }

  Q_SIGNALS:
    void progressed(double fraction);
    void written();
    void failed(const QString& reason);

  private:
    void begin(const ReportContent& content);
    void draw(const study::Table& table);
    std::optional<QString> write() const;
    void fail(const QString& reason);

    StudyRunner runner_;
    ReportContent content_;
    std::shared_ptr<std::shared_ptr<const ReportUnknowns>> unknowns_; ///< filled by the work
    QString file_;
    std::shared_ptr<QPrinter> printer_; ///< null: into the file
    quint64 number_ = 0;
    int points_ = 0;
    bool busy_ = false;
};

} // namespace lobewright::ui
