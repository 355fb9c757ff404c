#pragma once

#include "ui/scene/base/turn_view.h"
#include "ui/scene/section/firing_order.h"

namespace lobewright::ui {

/// End view of the cylinder circle, seen from the inlet end, so that the shaft turns clockwise:
/// every cylinder with its gas, both tracks with their lobes, the firing order. A click or a digit
/// key chooses a cylinder.
class CylinderCircle : public TurnView {
    Q_OBJECT

  public:
    explicit CylinderCircle(TurnCursor& cursor, QWidget* parent = nullptr);

    int cylinder() const { return cylinder_; }
    const FiringOrder& order() const { return order_; }
    /// Middle of a cylinder [px], counted from 0.
    QPointF middleOf(int cylinder) const;
    QSize sizeHint() const override { return {360, 300}; }

  public Q_SLOTS:
    void setCylinder(int index);

  Q_SIGNALS:
    void cylinderChosen(int index);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override { return {}; }
    double radiansPerPixel() const override;
    bool clickedGround(const QPointF& point) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QPointF at(double polar, double radius) const;
    void paintTracks(QPainter& painter) const;
    void paintCylinder(QPainter& painter, int index) const;
    void paintShaft(QPainter& painter) const;
    void paintCaptions(QPainter& painter) const;
    void chooseCylinder(int index);

    FiringOrder order_;
    std::vector<double> angles_;
    QRectF captions_;
    QPointF centre_;
    double scale_ = 1.0; ///< [px/m]
    int cylinder_ = 0;
};

} // namespace lobewright::ui
