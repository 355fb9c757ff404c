#pragma once

#include "ui/plots/turn/turn_plot.h"

namespace lobewright::ui {

/// Torque on the shaft over a turn: both pistons of cylinder 1, that cylinder, the whole engine,
/// its mean and ripple. Each cylinder and the lever arm of the tracks can be laid over it.
class TorquePlot : public TurnPlot {
    Q_OBJECT

  public:
    explicit TorquePlot(TurnCursor& cursor, QWidget* parent = nullptr);

    void addOptions(QMenu& menu) override;
    QString state() const override;
    void restoreState(const QString& state) override;

  protected:
    void refill() override;
    QCPRange contentRange(bool onRight) const override;
    std::vector<ReadoutStrip::Item> remarks() const override;

  private:
    void setPistonsShown(bool shown);
    void setCylindersShown(bool shown);
    void setLeverShown(bool shown);
    void paintMean(QCPPainter& painter) const;

    PerEnd<size_t> piston_, lever_;
    size_t cylinder_, total_;
    bool pistonsShown_ = true, cylindersShown_ = false, leverShown_ = false;
    std::vector<QCPGraph*> others_; ///< cylinders 2, 3, …
};

} // namespace lobewright::ui
