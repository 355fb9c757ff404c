#pragma once

#include "ui/scene/base/turn_view.h"
#include "ui/scene/section/section_frame.h"

namespace lobewright::ui {

/// Section through one cylinder, to scale: both pistons, ports, chamber, rollers and the tracks
/// that pass them, at the common shaft angle. Port edges and heights can be dragged.
class SectionView : public TurnView {
    Q_OBJECT

  public:
    explicit SectionView(TurnCursor& cursor, QWidget* parent = nullptr);

    /// Index of the cylinder shown, from 0.
    int cylinder() const { return cylinder_; }
    const SectionFrame& frame() const { return frame_; }
    /// The drawing with its captions at the given size, without handles or focus frame.
    void paintInto(QPainter& painter, const QSizeF& size) const;

  public Q_SLOTS:
    void setCylinder(int index);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override;
    double turningWay(const QPointF& drag) const override;

  private:
    void paintCaptions(QPainter& painter, const SectionFrame& frame, const QSizeF& size,
                       double theta) const;
    Handle edgeHandle(End end, std::size_t row) const;
    Handle heightHandle(End end, std::size_t row) const;
    double angle() const;

    SectionFrame frame_;
    int cylinder_ = 0;
};

} // namespace lobewright::ui
