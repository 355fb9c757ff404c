#pragma once

#include "ui/scene/base/part_names.h"
#include "ui/scene/base/turn_view.h"
#include "ui/scene/section/engine_frame.h"

#include <optional>

class QMenu;

namespace lobewright::ui {

/// Section of the engine, to scale: the plane through the shaft and one cylinder, with what turns,
/// what slides and what stands still, at the common shaft angle; over the rollers their tracks,
/// unrolled, and the force that turns the shaft. Port edges and heights can be dragged.
class SectionView : public TurnView {
    Q_OBJECT

  public:
    explicit SectionView(TurnCursor& cursor, QWidget* parent = nullptr);

    /// Index of the cylinder shown, from 0.
    int cylinder() const { return cylinder_; }
    /// Index of the cylinder on the other side of the shaft, if one stands there.
    std::optional<int> opposite() const;
    const EngineFrame& picture() const { return frame_; }
    const SectionFrame& frame() const { return frame_.cylinder(); }
    /// The drawing with its captions at the given size, without handles or focus frame.
    void paintInto(QPainter& painter, const QSizeF& size) const;
    void addOptions(QMenu& menu);
    /// Whose switch says whether parts are named; without one they are.
    void setPartNames(PartNames& names);

  public Q_SLOTS:
    void setCylinder(int index);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override;
    double turningWay(const QPointF& drag) const override;

  private:
    void paintPicture(QPainter& painter, const EngineFrame& frame) const;
    void fadeOut(QPainter& painter, const EngineFrame& frame) const;
    void paintHeading(QPainter& painter, const EngineFrame& frame, double theta) const;
    void paintFoot(QPainter& painter, const EngineFrame& frame, double theta) const;
    Handle edgeHandle(End end, std::size_t row) const;
    Handle heightHandle(End end, std::size_t row) const;
    double angle() const;

    EngineFrame frame_;
    int cylinder_ = 0;
    PartNames* names_ = nullptr;
};

} // namespace lobewright::ui
