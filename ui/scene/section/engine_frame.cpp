#include "ui/scene/section/engine_frame.h"

#include "core/units.h"
#include "ui/scene/section/cylinder_painter.h"
#include "ui/scene/solid/solid_mesh.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double stripHeight = 90.0, tallestStrip = 190.0; ///< [px]
constexpr double roomForStrips[] = {540.0, 360.0};         ///< least width and height [px]
constexpr double shaftShare = 1.42, lowShare = 1.3; ///< machine over what stands above the shaft
constexpr double slenderShaft = 0.7;                ///< of the radius that there is room for
constexpr double leastBody = 38.0;                  ///< of the track in a strip [px]
constexpr int faceSteps = 180;
constexpr double beyond = 0.7; ///< over the half turn at both ends of a face [rad]
constexpr double unlimited = 1e6;

} // namespace

EngineFrame::EngineFrame(const ShownEngine& engine, const QRectF& area, double line)
    : engine_(&engine) {
    const auto& mechanism = engine.design().mechanism;
    const SolidSizes sizes = solidSizes(engine.pair());
    pitchRadius_ = mechanism.pitchRadius;
    shaftRadius_ = slenderShaft * sizes.shaftRadius;
    halfTrack_ = 0.5 * sizes.trackWidth;
    fit(area, line);
    axisDistance_ =
        std::abs(cylinder_.rollerAxis(End::inlet, 0.0) - cylinder_.crown(End::inlet, 0.0));
    const double middle = cylinder_.at(0.0, 0.0).x();
    for (const End end : bothEnds) {
        back_[end] = (cylinder_.blankFace(end) - middle) / scale();
        rim_[end] = (cylinder_.rimFace(end) - middle) / scale();
    }
    if (!strips_[End::inlet].isEmpty())
        placeStrips(area);
}

void EngineFrame::fit(const QRectF& area, double line) {
    const double caption = 2.0 * line + 6.0;
    foot_ = QRectF(area.left(), area.bottom() - line, area.width(), line);
    const bool strips = area.width() >= roomForStrips[0] && area.height() >= roomForStrips[1];
    const double free = foot_.top() - 4.0 - area.top();
    // The scale that the width allows; then what the height does, a strip at least as high as the
    // roller in it.
    const SectionFrame probe(*engine_, QRectF(0.0, 0.0, area.width(), unlimited));
    const double above =
        pitchRadius_ + probe.halfBore() * (1.0 + CylinderPainter::beltShare) + 1.5 * probe.wall();
    const double whole = (strips ? shaftShare : lowShare) * above;
    const double roller = 2.2 * engine_->design().mechanism.roller.radius;
    const double titles = strips ? line + 4.0 : caption;
    double fitted = (free - titles - (strips ? stripHeight : 0.0)) / whole;
    if (strips && roller * fitted > stripHeight)
        fitted = (free - titles) / (whole + roller);
    const double share = std::clamp(fitted / probe.scale(), 0.05, 1.0);
    const double scale = share * probe.scale();
    double head = titles;
    if (strips) {
        const double strip = std::max(stripHeight, roller * scale);
        const double spare = std::max(0.0, free - titles - strip - whole * scale);
        head += strip + std::min(0.6 * spare, std::max(0.0, tallestStrip - strip));
        strips_[End::inlet] = QRectF(area.left(), area.top() + line, 1.0, head - titles);
    }
    machine_ = QRectF(area.left(), area.top() + head, area.width(), free - head);
    const double axis = machine_.top() + (above - pitchRadius_) * scale;
    shaftY_ = axis + pitchRadius_ * scale;
    const auto placed = [&](double y) {
        QRectF box(0.0, 0.0, share * area.width(), unlimited);
        box.moveCenter(QPointF(area.center().x(), y));
        return SectionFrame(*engine_, box);
    };
    cylinder_ = placed(axis);
    heading_ = QRectF(area.left(), area.top(), area.width(), head);
    if (strips)
        unrolled_ = placed(strips_[End::inlet].center().y());
}

void EngineFrame::placeStrips(const QRectF& area) {
    const QRectF row = strips_[End::inlet];
    strips_ = {};
    const double r = engine_->design().mechanism.roller.radius;
    double left = area.left(), right = area.right();
    for (const End end : engine_->pair().pistons()) {
        const double out = SectionFrame::outward(end);
        const double inner =
            back_[end] - out * (engine_->pair().curve(end).stroke() + 3.1 * r + 6.0 / scale());
        // Room for words in the body of the track, however low it is there.
        const double edge =
            cylinder_.at(back_[end], 0.0).x() + out * std::max(0.0, leastBody - 0.7 * r * scale());
        QRectF box(QPointF(std::clamp(edge, area.left(), area.right()), row.top()),
                   QPointF(cylinder_.at(inner, 0.0).x(), row.bottom()));
        strips_[end] = box.normalized();
        if (end == End::inlet) {
            left = strips_[end].right();
        } else {
            right = strips_[end].left();
        }
    }
    heading_.setLeft(left + 8.0);
    heading_.setRight(right - 8.0);
}

QPointF EngineFrame::at(double z, double rho) const {
    return {cylinder_.at(z, 0.0).x(), shaftY_ - rho * scale()};
}

std::vector<EngineFrame::FacePoint> EngineFrame::face(End end, double theta, bool pullFlank) const {
    const auto& pair = engine_->pair();
    const double r = pair.mechanism().roller.radius * (pullFlank ? -1.0 : 1.0);
    const double phi = pair.trackAngle(end, theta);
    const double out = SectionFrame::outward(end);
    std::vector<FacePoint> points;
    points.reserve(faceSteps + 1);
    for (int i = 0; i <= faceSteps; ++i) {
        const double angle = -beyond + (units::pi + 2.0 * beyond) * i / faceSteps;
        const auto lift = pair.curve(end).at(phi + angle);
        const double slope = lift.y1 / pitchRadius_;
        const double cosine = 1.0 / std::hypot(1.0, slope);
        const double crown = cylinder_.portPlace(end, lift.y - pair.shift(end));
        points.push_back({angle + r * slope * cosine / pitchRadius_,
                          crown + out * (axisDistance_ + r * cosine)});
    }
    return points;
}

double EngineFrame::zAt(const std::vector<FacePoint>& face, double angle) {
    for (std::size_t i = 1; i < face.size(); ++i) {
        const FacePoint &a = face[i - 1], &b = face[i];
        if (a.angle <= angle && angle <= b.angle && b.angle > a.angle)
            return a.z + (b.z - a.z) * (angle - a.angle) / (b.angle - a.angle);
    }
    return face.empty() ? 0.0 : face.front().z;
}

} // namespace lobewright::ui
