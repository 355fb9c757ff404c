#pragma once

#include "core/ports/liner_sweep.h"
#include "ui/scene/base/turn_view.h"

namespace lobewright::ui {

/// The bore unrolled once, to scale, inlet end above: port rows, the stretches that crowns, rings
/// and skirts sweep, and where the crowns come nearest. Port widths can be dragged.
class LinerMap : public TurnView {
    Q_OBJECT

  public:
    explicit LinerMap(TurnCursor& cursor, QWidget* parent = nullptr);

    /// One sentence for each thing to look at; empty when there is none.
    QStringList remarks() const;
    /// The caption where there is nothing to remark: how much the skirts keep from the ports.
    QString allWell() const;
    /// Where the port lies on the screen [px].
    std::pair<double, double> sector(End end) const;
    void paintHead(QPainter& painter) const;
    QRectF portBox(End end, std::size_t row, int port) const;

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override;

  private:
    double y(double z) const { return middle_ + z * scale_; }
    double place(End end, double inward) const;
    void paintSweeps(QPainter& painter) const;
    void paintStretch(QPainter& painter, End end, const ports::Stretch& stretch, double x,
                      bool warn) const;
    void paintMap(QPainter& painter) const;
    void paintPorts(QPainter& painter, End end) const;
    void paintSkirtRow(QPainter& painter, End end) const;
    /// The row that the skirt of an end uncovers for a pump; null where there is none.
    const ports::Row* skirtRow(End end) const;
    /// Its edge, measured as those of other rows [m].
    double skirtEdge(const ports::Row& row) const;
    void paintPistons(QPainter& painter, End end) const;
    void paintCaption(QPainter& painter) const;
    Handle widthHandle(End end, std::size_t row) const;

    PerEnd<ports::LinerSweep> sweeps_;
    ports::CrownGap gap_;
    QRectF map_;
    double column_ = 0.0; ///< width of the column of a sweep bar [px]
    double scale_ = 1.0;  ///< [px/m]
    double middle_ = 0.0;
    double reach_ = 0.0; ///< half the length shown [m]
};

} // namespace lobewright::ui
