#pragma once

#include "ui/plots/turn/turn_plot.h"

namespace lobewright::ui {

/// Nominal contact stress of both tracks over the turn, with the allowable stress and the places
/// where a roller leaves its track.
class StressPlot : public TurnPlot {
    Q_OBJECT

  public:
    explicit StressPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    /// Where the roller of this end leaves its track over the turn.
    const std::vector<Span>& liftOff(End end) const { return liftOff_[end]; }
    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;
    QCPRange contentRange(bool onRight) const override;
    std::vector<ReadoutStrip::Item> remarks() const override;

  private:
    void setForcesShown(bool shown);
    QRectF areaOf(const Span& span) const;
    void paintLiftOff(QCPPainter& painter) const;
    void paintLimit(QCPPainter& painter) const;
    std::optional<double> allowable() const; ///< [MPa]

    PerEnd<size_t> stress_, force_;
    PerEnd<std::vector<Span>> liftOff_;
    bool forcesShown_ = false;
};

} // namespace lobewright::ui
