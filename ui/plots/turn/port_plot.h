#pragma once

#include "ui/plots/turn/turn_plot.h"

namespace lobewright::ui {

/// Open port areas over the turn. Blowdown, overlap and after-charge are shaded and labelled with
/// shaft degrees, cycle degrees and milliseconds.
class PortPlot : public TurnPlot {
    Q_OBJECT

  public:
    explicit PortPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    /// Lays the baseline over equal cycle degrees from inner dead centre instead of equal shaft
    /// degrees, so that engines with different numbers of lobes can be compared.
    void setBaselineByCycle(bool byCycle);
    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;
    std::vector<ReadoutStrip::Item> remarks() const override;

  private:
    /// Shaft angles of the baseline that stand behind those of the present engine.
    Samples baselineAngles(const Samples& theta) const;
    void paintShading(QCPPainter& painter) const;
    /// The area between zero and the curve `of`, cut to the span [px].
    QPolygonF areaUnder(size_t of, const Span& span) const;
    /// The same under the lower of both curves.
    QPolygonF areaUnderBoth(const Span& span) const;
    QPolygonF area(const Span& span, const std::function<double(Eigen::Index)>& height) const;

    PerEnd<size_t> area_;
    PortSpans spans_;
    bool baselineByCycle_ = false;
};

/// "12.5° shaft, 25° cycle, 1.16 ms" of an interval of the shaft angle [rad] at ω [rad/s];
/// without the time when ω is 0.
QString spanText(double shaftAngle, int cyclesPerTurn, double omega);

} // namespace lobewright::ui
