#pragma once

#include "ui/plots/base/custom_plot.h"

#include <QString>

namespace lobewright::ui {

/// A remark in a lane of its own above everything else of a plot, in as many lines as it needs.
class HeadLine final : public QCPLayerable {
  public:
    /// On a layer of the plot; one with a buffer of its own may be drawn alone.
    explicit HeadLine(QCustomPlot& plot, const char* layer = "axes");

    /// Shown with the next replot; empty: the lane goes.
    void setText(const QString& text) { text_ = text; }
    const QString& text() const { return text_; }
    /// It breaks into more or fewer lines than it has room for: the plot is to be laid out anew.
    bool needsRoom() const;

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override;
    void draw(QCPPainter* painter) override;

  private:
    QRect place() const;
    void makeRoom();
    QString text_;
};

} // namespace lobewright::ui
