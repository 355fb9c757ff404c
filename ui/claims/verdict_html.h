#pragma once

#include "core/claims/verdict.h"

#include <QString>

namespace lobewright::ui {

struct Palette;

/// The verdict as rich text: one table a row, all with the same columns, so that a page can break
/// between any two.
class VerdictHtml {
  public:
    /// `isInteractive`: cells are links, "figure:brake_power_kW", and formulas can be folded away.
    VerdictHtml(const study::VerdictPage& page, const Palette& tones, bool isInteractive)
        : page_(page), tones_(tones), isInteractive_(isInteractive) {}

    /// How many rows say what, and why a column stays empty.
    QString summary() const;
    QString header() const;
    QString row(const study::VerdictRow& row, bool isUnfolded) const;
    /// A formula with its numbers, band and source.
    QString working(const study::RowWorking& working) const;

  private:
    QString cell(const study::VerdictCell& cell, const study::VerdictRow& row,
                 bool isUnfolded) const;
    QString basis(const study::VerdictRow& row) const;
    QString columns(const QStringList& cells, bool isHeader) const;
    QString quiet(const QString& html) const;

    const study::VerdictPage& page_;
    const Palette& tones_;
    bool isInteractive_;
};

/// With the numbers that are put into a formula as the language writes them.
QString arithmeticText(const Message& text);

} // namespace lobewright::ui
