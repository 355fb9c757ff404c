#pragma once

#include "ui/base/palette.h"
#include "ui/plots/base/custom_plot.h"

#include <QPagedPaintDevice>
#include <QRectF>
#include <QString>

#include <vector>

namespace lobewright::ui {

/// Pages filled from top to bottom. Lengths are pixels of 1/96 inch, as on a screen, so that plots
/// and text keep the proportions they have there.
class Sheet {
  public:
    struct Footer {
        QString left, middle; ///< the page number stands at the right
        int pages = 0;        ///< 0: not known yet, the first of two runs
    };
    /// Name and value of one line of a table.
    struct Row {
        QString name, value;
        bool isHeading = false;
    };

    Sheet(QPagedPaintDevice& device, Footer footer);
    ~Sheet();

    QCPPainter& painter() { return painter_; }
    const Palette& tones() const { return Palette::lightTones(); }
    int pages() const { return page_; }
    double left() const { return left_; }
    double width() const { return width_; }
    double room() const { return bottom_ - y_; } ///< height left on this page

    void newPage();
    /// A block of this height over the whole width, on a new page where it does not fit.
    QRectF take(double height);
    void space(double height) { y_ += height; }

    void title(const QString& text);
    /// Kept together with at least `follow` of what comes after it.
    void heading(const QString& text, double follow = 60.0);
    void paragraph(const QString& text);
    void caption(const QString& text);
    /// A bold word at the left, running text beside it.
    void entry(const QString& name, const QString& text, const QColor& bar = {});
    /// A block of rich text, kept whole.
    void richText(const QString& html);
    /// Lines in this many columns side by side, column by column, over pages as needed.
    void columns(const std::vector<Row>& rows, int count, double pointSize);

    static QFont font(double pointSize, bool bold = false);

  private:
    void write(const QString& text, const QFont& font, const QColor& colour, double before,
               double after);
    void writeRow(const Row& row, const QRectF& box, double pointSize);
    void paintFooter();

    QPagedPaintDevice& device_;
    Footer footer_;
    QCPPainter painter_;
    int page_ = 1;
    double left_, top_, width_, bottom_, y_;
};

} // namespace lobewright::ui
