#pragma once

#include "core/claims/verdict.h"
#include "core/monitor.h"
#include "core/result.h"
#include "core/study/operating_points.h"
#include "core/unknowns/consistent.h"
#include "core/unknowns/decides.h"
#include "ui/base/shown.h"

#include <QByteArray>
#include <QDate>
#include <QString>

#include <optional>
#include <utility>

class QPrinter;

/// The design on a few pages for people who will judge it away from the screen.
namespace lobewright::ui {

/// What is not known of a design and what that means for its results.
struct ReportUnknowns {
    unknowns::Ensemble ensemble;
    std::vector<unknowns::DecidedResult> decided;
    std::optional<unknowns::Requirement> required; ///< with published figures
};

/// Everything a report is made of; nothing else is looked up while it is drawn.
struct ReportContent {
    SolutionPointer solution;           ///< with a solved gas cycle
    study::Table torqueCurve;           ///< of the same design, see reportTorqueCurve()
    QString version;                    ///< of the program
    QDate date;                         ///< of the report
    SolutionPointer baseline = nullptr; ///< kept in the window; null: none
    QString baselineName = {};
    std::shared_ptr<const ReportUnknowns> unknowns = nullptr; ///< null: everything counts as known
    /// On published figures of this engine; absent: none are attached.
    std::optional<study::VerdictPage> verdict = std::nullopt;
};

/// The day that a report bears: today, or what SOURCE_DATE_EPOCH says.
QDate reportDate();

/// Speeds that the torque curve of a report covers: about 0.3 to 1.8 times the design's [1/min].
std::pair<double, double> reportSpeeds(const design::Design& design);

/// Torque and power of the design at 21 speeds. Errors: cancelled (path ""), invalid design.
Result<study::Table> reportTorqueCurve(const design::Design& design, Monitor& monitor,
                                       const study::PointSink& sink = {});
inline constexpr int reportCurvePoints = 21;

/// The engines that the design may be, what decides their results, and what would have to be true
/// for published figures; null where no input has a range. known: engines that have been computed,
/// null: none. conditions: searched for unless that is known.
/// Errors: cancelled (path ""), no statistics (path "").
Result<std::shared_ptr<const ReportUnknowns>>
reportUnknowns(const design::Design& design, Monitor& monitor,
               const std::shared_ptr<const ReportUnknowns>& known = nullptr,
               const std::vector<unknowns::Condition>& conditions = {});

/// The report as a PDF of A4 pages: vector drawings, embedded fonts, in the light tones whatever
/// the screen shows. Needs a QApplication; the offscreen platform will do. Error: the gas cycle of
/// the solution could not be solved (with its reason).
Result<QByteArray> reportPdf(const ReportContent& content);

/// The same on the paper of a printer. Returns the number of pages.
Result<int> printReport(const ReportContent& content, QPrinter& printer);

} // namespace lobewright::ui
