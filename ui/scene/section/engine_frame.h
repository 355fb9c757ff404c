#pragma once

#include "ui/scene/section/section_frame.h"

#include <vector>

namespace lobewright::ui {

/// Where the parts stand in the section of the engine: the plane through the axes of the shaft and
/// of one cylinder, the cylinder above the shaft. rho [m] is the distance from the shaft's axis,
/// upwards; z as in SectionFrame. What turns comes towards the viewer above the shaft. Over each
/// roller the track is drawn unrolled as seen from outside, in projection: one z has one x.
class EngineFrame {
  public:
    /// A place of a running surface at the pitch radius.
    struct FacePoint {
        double angle = 0.0; ///< from the cylinder away from the viewer round the shaft [rad]
        double z = 0.0;     ///< [m]
    };

    EngineFrame() = default;
    /// Fits the picture into `area` [px]; `line`: height of a line of text [px].
    EngineFrame(const ShownEngine& engine, const QRectF& area, double line);

    /// The cylinder of the plane; its t is downwards, towards the shaft.
    const SectionFrame& cylinder() const { return cylinder_; }
    /// The unrolled tracks over the rollers; its t is downwards, the way in which the tracks move.
    const SectionFrame& unrolled() const { return unrolled_; }
    bool hasStrips() const { return !strips_[End::inlet].isEmpty(); }
    /// The box of an unrolled track [px]; empty without strips, and where no piston runs.
    const QRectF& strip(End end) const { return strips_[end]; }
    /// What the machine itself is drawn in [px].
    const QRectF& machine() const { return machine_; }
    /// Free for the name of the phase and the state of the gas, above the cylinder [px].
    const QRectF& heading() const { return heading_; }
    /// Line at the foot [px].
    const QRectF& foot() const { return foot_; }

    double scale() const { return cylinder_.scale(); } ///< [px/m]
    QPointF at(double z, double rho) const;
    QRectF box(double z1, double rho1, double z2, double rho2) const {
        return QRectF(at(z1, rho1), at(z2, rho2)).normalized();
    }
    double pitchRadius() const { return pitchRadius_; }
    double shaftRadius() const { return shaftRadius_; }
    /// Half the radial width of a track [m].
    double halfTrack() const { return halfTrack_; }
    double axisDistance() const { return axisDistance_; }
    /// Faces of a track drum away from the cylinder, and of a closed track towards it [m].
    double back(End end) const { return back_[end]; }
    double rim(End end) const { return rim_[end]; }

    /// The running surface over the far half of the shaft and a little beyond, ascending by the
    /// angle where it is free of undercut.
    std::vector<FacePoint> face(End end, double theta, bool pullFlank) const;
    /// z of a running surface at an angle, linear between its points.
    static double zAt(const std::vector<FacePoint>& face, double angle);

  private:
    void fit(const QRectF& area, double line);
    void placeStrips(const QRectF& area);

    const ShownEngine* engine_ = nullptr;
    SectionFrame cylinder_, unrolled_;
    PerEnd<QRectF> strips_;
    QRectF machine_, heading_, foot_;
    double shaftY_ = 0.0;
    double pitchRadius_ = 0.0, shaftRadius_ = 0.0, halfTrack_ = 0.0, axisDistance_ = 0.0;
    PerEnd<double> back_, rim_;
};

} // namespace lobewright::ui
