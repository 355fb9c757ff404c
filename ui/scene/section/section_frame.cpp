#include "ui/scene/section/section_frame.h"

#include "core/design/skirt_row.h"
#include "core/mechanism/clearances.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

SectionFrame::SectionFrame(const ShownEngine& engine, const QRectF& area)
    : engine_(&engine), area_(area) {
    const auto& mechanism = engine.design().mechanism;
    const double r = mechanism.roller.radius;
    halfBore_ = 0.5 * mechanism.bore;
    wall_ = 0.08 * mechanism.bore;
    pistonLength_ = mechanism.piston ? mechanism.piston->length : 1.1 * mechanism.bore;
    const double rim = track::rimThickness(engine.design().trackBlank, mechanism.roller);
    const bool isOneSided = mechanism.isOneSided();
    axisDistance_ = mechanism::crownToRollerAxis(engine.pair(), pistonLength_, rim);
    for (const End end : bothEnds)
        rimFace_[end] = axisDistance_ - engine.pair().curve(end).stroke() - r - rim;
    blank_ = 1.7 * r;
    double reachOut = 0.0;
    for (const End end : engine.pair().pistons()) {
        const double out = 0.5 * mechanism.clearance + engine.pair().curve(end).stroke() +
                           axisDistance_ + blank_ + std::max(0.0, engine.pair().shift(end));
        reachOut = std::max(reachOut, out);
        rolled_[end] = RolledPath(engine.pair().curve(end), mechanism.pitchRadius);
    }
    const double across = 2.0 * (halfBore_ + wall_);
    headThickness_ = 0.45 * halfBore_;
    const double other = isOneSided ? 0.5 * mechanism.clearance + 1.3 * headThickness_ : reachOut;
    scale_ = std::max(1.0, std::min(area.width() / (reachOut + other), area.height() / across));
    centre_ = area.center() + QPointF(0.5 * (reachOut - other) * scale_, 0.0);
}

double SectionFrame::portPlace(End end, double inward) const {
    const auto& pair = engine_->pair();
    const End piston = pair.uncovers(end);
    const double out = 0.5 * pair.mechanism().clearance + pair.curve(piston).stroke() - inward;
    return outward(piston) * out;
}

double SectionFrame::head() const {
    return 0.5 * engine_->pair().mechanism().clearance;
}

double SectionFrame::crown(End end, double theta) const {
    const auto& pair = engine_->pair();
    if (pair.uncovers(end) != end)
        return head();
    return portPlace(end, pair.lift(end, theta).y - pair.shift(end));
}

double SectionFrame::rollerAxis(End end, double theta) const {
    return crown(end, theta) + outward(end) * axisDistance_;
}

double SectionFrame::linerEnd(End end) const {
    if (engine_->pair().uncovers(end) != end)
        return head();
    double inward = -0.55 * pistonLength_;
    if (const auto* row = design::skirtRow(engine_->design(), end))
        inward = std::min(inward, row->edge - pistonLength_ - 0.2 * halfBore_);
    return portPlace(end, inward);
}

double SectionFrame::rimFace(End end) const {
    return at(portPlace(end, -engine_->pair().shift(end)) + outward(end) * rimFace_[end], 0.0).x();
}

double SectionFrame::blankFace(End end) const {
    const double z =
        portPlace(end, -engine_->pair().shift(end)) + outward(end) * (axisDistance_ + blank_);
    return at(z, 0.0).x();
}

QPointF SectionFrame::contact(End end, double theta, bool pullFlank) const {
    const auto& mechanism = engine_->pair().mechanism();
    const double r = mechanism.roller.radius * (pullFlank ? -1.0 : 1.0);
    const double slope = engine_->pair().lift(end, theta).y1 / mechanism.pitchRadius;
    const double cosine = 1.0 / std::hypot(1.0, slope);
    return at(rollerAxis(end, theta) + outward(end) * r * cosine, -r * slope * cosine);
}

QPointF SectionFrame::push(End end, double theta) const {
    const double slope =
        engine_->pair().lift(end, theta).y1 / engine_->pair().mechanism().pitchRadius;
    const double cosine = 1.0 / std::hypot(1.0, slope);
    return {-outward(end) * cosine, slope * cosine};
}

QPolygonF SectionFrame::trackProfile(End end, double theta, bool pullFlank) const {
    const auto& pair = engine_->pair();
    const double radius = pair.mechanism().pitchRadius;
    const double r = pair.mechanism().roller.radius * (pullFlank ? -1.0 : 1.0);
    const double half =
        std::min(0.5 * area_.height() / scale_ + 2.0 * std::abs(r), units::pi * radius);
    const int steps = std::clamp(static_cast<int>(half * scale_), 60, 600);
    const double phi = pair.trackAngle(end, theta);
    QPolygonF profile;
    for (int i = -steps; i <= steps; ++i) {
        const double t = half * i / steps;
        const auto lift = pair.curve(end).at(phi - t / radius);
        const double slope = lift.y1 / radius;
        const double cosine = 1.0 / std::hypot(1.0, slope);
        const double z =
            portPlace(end, lift.y - pair.shift(end)) + outward(end) * (axisDistance_ + r * cosine);
        profile << at(z, t - r * slope * cosine);
    }
    return profile;
}

double SectionFrame::rollerTurn(End end, double theta) const {
    const auto& mechanism = engine_->pair().mechanism();
    const double phi = engine_->pair().trackAngle(end, theta);
    return outward(end) * rolled_[end].at(phi) / mechanism.roller.radius;
}

} // namespace lobewright::ui
