#pragma once

#include "ui/scene/base/rolled_path.h"
#include "ui/scene/base/shown_engine.h"

#include <QPointF>
#include <QPolygonF>
#include <QRectF>

namespace lobewright::ui {

/// Where the parts of one cylinder stand in the drawing, to scale. Drawing coordinates: z along the
/// cylinder [m], 0 in the middle between the crowns at inner dead centre, exhaust side positive;
/// t across it in the direction the tracks move [m], downwards on the screen, because the cylinder
/// is seen from outside the cylinder circle. The tracks are unrolled at the pitch radius.
class SectionFrame {
  public:
    SectionFrame() = default;
    /// Fits the section into `area` [px].
    SectionFrame(const ShownEngine& engine, const QRectF& area);

    double scale() const { return scale_; } ///< [px/m]
    QPointF at(double z, double t) const {
        return {centre_.x() + z * scale_, centre_.y() + t * scale_};
    }
    QRectF box(double z1, double t1, double z2, double t2) const {
        return QRectF(at(z1, t1), at(z2, t2)).normalized();
    }
    static double outward(End end) { return end == End::inlet ? -1.0 : 1.0; }

    /// Place z of a point `inward` from where the crown stands at outer dead centre (no shift).
    double portPlace(End end, double inward) const;
    double crown(End end, double theta) const;
    double rollerAxis(End end, double theta) const;
    double linerEnd(End end) const;
    /// Face of the head of a one-sided engine; the crown of its exhaust end stands there.
    double head() const;
    double headThickness() const { return headThickness_; }
    double pistonLength() const { return pistonLength_; }
    double wall() const { return wall_; }
    double halfBore() const { return halfBore_; }
    /// The surface of the track around the roller, push flank or pull flank [px], from the top of
    /// the area to its bottom.
    QPolygonF trackProfile(End end, double theta, bool pullFlank) const;
    /// Point where the track touches the roller [px].
    QPointF contact(End end, double theta, bool pullFlank) const;
    /// Unit vector in which the track pushes the roller, on the screen.
    QPointF push(End end, double theta) const;
    /// Outer face of the track blank [px].
    double blankFace(End end) const;
    /// Inner face of the rim over the pull flank of a closed track [px].
    double rimFace(End end) const;
    /// How far the roller has rolled [rad], positive clockwise on the screen.
    double rollerTurn(End end, double theta) const;

  private:
    const ShownEngine* engine_ = nullptr;
    QRectF area_;
    QPointF centre_;
    double scale_ = 1.0;
    double pistonLength_ = 0.0;
    double axisDistance_ = 0.0; ///< crown to roller axis
    PerEnd<double> rimFace_;    ///< outward of the crown's plane at outer dead centre [m]
    double wall_ = 0.0;
    double headThickness_ = 0.0;
    double halfBore_ = 0.0;
    double blank_ = 0.0; ///< track blank beyond the lowest pitch point
    PerEnd<RolledPath> rolled_;
};

} // namespace lobewright::ui
