#pragma once

#include "ui/report/report.h"
#include "ui/report/report_sheet.h"

/// The drawings of a report, each on a block of the sheet; the same as on the screen, in the light
/// tones, without cursors and handles.
namespace lobewright::ui {

/// Section through cylinder 1 shortly before its ports open, to scale, with its caption.
void drawSection(Sheet& sheet, const solution::Solution& solution, double height);
/// Position, port areas, torque and contact stress over a turn, one below the other.
void drawTurnPlots(Sheet& sheet, const SolutionPointer& solution, double heightEach);
/// Lift, acceleration, pressure angle and relative radius of both tracks over a turn.
void drawTrackPlots(Sheet& sheet, const SolutionPointer& solution, double heightEach);
/// The circular port diagram in the box.
void drawTimingCircle(Sheet& sheet, const SolutionPointer& solution, const QRectF& box);
/// Torque and power against shaft speed; the design's own speed is marked.
void drawTorqueCurve(Sheet& sheet, const ReportContent& content, double height);

} // namespace lobewright::ui
