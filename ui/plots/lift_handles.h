#pragma once

#include "ui/editing/lift_grips.h"
#include "ui/plots/shown.h"
#include "ui/plots/turn_canvas.h"

#include <QObject>

#include <optional>

namespace lobewright::ui {

/// Bounds and knots of the tracks as handles on a plot of lift over the shaft angle.
/// Drag with the mouse (Shift: fine); or click one and use the arrow keys; double click asks for
/// its exact number. A bound keeps to the direction in which it is first moved.
class LiftHandles : public QObject, public Grips {
    Q_OBJECT

  public:
    LiftHandles(TurnCanvas& canvas, QObject* parent);

    void show(const GeometryPointer& geometry);

    bool press(const QMouseEvent& event) override;
    bool drag(const QMouseEvent& event) override;
    bool release() override;
    bool hover(const QPointF& at) override;
    bool key(const QKeyEvent& event) override;
    bool doubleClick(const QPointF& at) override;

    /// Where a grip stands on the canvas, first repetition in view [px]; for tests and hints.
    std::optional<QPointF> placeOf(End end, LiftGrip::Kind kind, int index) const;

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    void fieldWanted(const QString& path);

  private:
    struct Handle {
        LiftGrip grip;
        double theta = 0.0; ///< [rad]
        double lift = 0.0;  ///< as plotted [mm]
    };
    QPointF placeOf(const Handle& handle) const;
    std::optional<size_t> at(const QPointF& position) const;
    bool isSame(const Handle& handle, const std::optional<LiftGrip>& grip) const;
    void moveTo(double angle, double lift);
    void paint(QCPPainter& painter) const;

    TurnCanvas& canvas_;
    GeometryPointer geometry_;
    std::vector<Handle> handles_;
    std::optional<LiftGrip> hovered_, selected_;
    struct Drag {
        LiftGrip grip; ///< as it was when pressed
        QPointF from;
        bool alongAngle = true, alongLift = true;
        bool decided = false;
    };
    std::optional<Drag> drag_;
};

} // namespace lobewright::ui
