#include "ui/scene/tracks/unrolled_frame.h"

#include "core/track/track.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int fewestSamples = 360, mostSamples = 1440; ///< of a curve over the turn

} // namespace

UnrolledFrame::UnrolledFrame(const ShownEngine& engine, const QRectF& area, double line)
    : engine_(&engine), pitchRadius_(engine.design().mechanism.pitchRadius) {
    const double r = engine.design().mechanism.roller.radius;
    const auto& pair = engine.pair();
    const double blank = 1.8 * r; // beyond the axis at lift 0
    double across = 0.0;          // that the rollers reach over, without what is beyond them
    PerEnd<double> inside, beyond, caption; // beyond the rollers [m]; text [px]
    for (const End end : pair.pistons()) {
        inside[end] = pair.curve(end).stroke() + 1.1 * r;
        across += inside[end] + r;
        beyond[end] = blank - r;
        caption[end] = line + 4.0 + (end == End::exhaust ? leadBar : 0.0);
        lead_[end] = pair.trackAngle(end, 0.0) - pair.trackAngle(End::inlet, 0.0);
    }
    const double middle = 2.0 * line + 14.0;
    const bool chains = area.height() > 12.0 * line;
    const double chain = chains ? line + 8.0 : 0.0;
    const double height = area.height() - middle - 2.0 * chain;
    const double widest = area.width() / (units::turn * pitchRadius_);
    // A blank thinner than a line of text is drawn thicker, so that its caption meets no roller;
    // the tracks pay with at most half of their scale.
    const double plain = std::min(widest, height / (across + beyond.inlet + beyond.exhaust));
    const double withCaptions =
        std::min({plain, (height - caption.inlet - caption.exhaust) / across,
                  (height - caption.inlet) / (across + beyond.exhaust),
                  (height - caption.exhaust) / (across + beyond.inlet)});
    const bool hasRoom = withCaptions > 0.5 * plain;
    scale_ = std::max(1.0, hasRoom ? withCaptions : plain);
    PerEnd<double> strip; // from the blank's face to the axis at lift 0 [px]
    double used = 0.0;
    for (const End end : pair.pistons()) {
        const double thin = beyond[end] * scale_;
        strip[end] = r * scale_ + (hasRoom ? std::max(thin, caption[end]) : thin);
        used += strip[end] + inside[end] * scale_;
    }
    left_ = area.center().x() - 0.5 * units::turn * pixelsPerRadian();
    const double spare = std::max(0.0, height - used);
    const double top = area.top() + 0.3 * spare + chain;
    const double bottom = area.bottom() - 0.3 * spare - chain;
    face_ = {top, bottom};
    zero_ = {top + strip.inlet, bottom - strip.exhaust};
    const double middleTop = zero_.inlet + inside.inlet * scale_;
    const double middleBottom = zero_.exhaust - inside.exhaust * scale_;
    middle_ = QRectF(QPointF(left_, middleTop), QPointF(right(), middleBottom));
    caption_ = {QRectF(left_, top + 1.0, right() - left_, line),
                QRectF(left_, bottom - leadBar - line, right() - left_, line)};
    if (chains) {
        chain_ = {QRectF(left_, face_.inlet - chain, right() - left_, chain),
                  QRectF(left_, face_.exhaust, right() - left_, chain)};
    }
}

int UnrolledFrame::samples() const {
    return std::clamp(static_cast<int>(right() - left_), fewestSamples, mostSamples);
}

double UnrolledFrame::right() const {
    return left_ + units::turn * pixelsPerRadian();
}

QPointF UnrolledFrame::axisPoint(End end, double u) const {
    return {x(u), y(end, engine_->pair().curve(end).at(patternAngle(end, u)).y)};
}

QPolygonF UnrolledFrame::pitchCurve(End end) const {
    QPolygonF curve;
    const int count = samples();
    for (int i = 0; i <= count; ++i)
        curve << axisPoint(end, units::turn * i / count);
    return curve;
}

QPolygonF UnrolledFrame::surface(End end, bool pullFlank) const {
    const double r = engine_->design().mechanism.roller.radius * (pullFlank ? -1.0 : 1.0);
    QPolygonF curve;
    // Some way past both ends, because the surface leads or trails its pitch point.
    const double extra = std::abs(r) / pitchRadius_;
    const int count = samples();
    for (int i = 0; i <= count; ++i) {
        const double at = -extra + (units::turn + 2.0 * extra) * i / count;
        const auto lift = engine_->pair().curve(end).at(patternAngle(end, at));
        const double slope = lift.y1 / pitchRadius_;
        const double cosine = 1.0 / std::hypot(1.0, slope);
        curve << QPointF(x(at) + r * slope * cosine * scale_, y(end, lift.y - r * cosine));
    }
    return curve;
}

TrackLimits trackLimits(const ShownEngine& engine, const UnrolledFrame& frame, End end) {
    const auto& design = engine.design();
    const double pitchRadius = design.mechanism.pitchRadius;
    const auto& roller = design.mechanism.roller;
    const Samples u = Samples::LinSpaced(frame.samples() + 1, 0.0, units::turn);
    const auto lift = engine.pair().curve(end).sample(u + frame.lead(end));
    const Samples angle = track::contactAngle(lift, pitchRadius).abs();
    Samples least = Samples::Constant(u.size(), 1e300);
    for (const double rho :
         {roller.innerEdge(pitchRadius), pitchRadius, roller.outerEdge(pitchRadius)}) {
        least = least.min(track::relativeRadius(lift, rho, roller.radius, track::Flank::push));
        if (design.mechanism.closedTrack)
            least = least.min(track::relativeRadius(lift, rho, roller.radius, track::Flank::pull));
    }
    TrackLimits limits;
    limits.largestPressureAngle = angle.maxCoeff();
    // The one minimum that checks and tables quote too, refined beyond the samples.
    limits.leastRelativeRadius = least.minCoeff();
    for (const track::Flank flank : {track::Flank::push, track::Flank::pull}) {
        if (flank == track::Flank::pull && !design.mechanism.closedTrack)
            continue;
        const auto smallest =
            track::smallestRelativeRadius(engine.pair().curve(end), pitchRadius, roller, flank);
        if (smallest.value > limits.leastRelativeRadius)
            continue;
        limits.leastRelativeRadius = smallest.value;
        const double off = (smallest.place.rho - pitchRadius) / roller.width;
        limits.leastRadiusAt = off < -0.25  ? TrackLimits::Across::innerEdge
                               : off > 0.25 ? TrackLimits::Across::outerEdge
                                            : TrackLimits::Across::middle;
    }
    const auto stretches = [&u](const auto& bad) {
        std::vector<TrackLimits::Stretch> found;
        bool inside = false;
        for (Eigen::Index i = 0; i < u.size(); ++i) {
            if (bad(i) && !inside)
                found.push_back({u[i], u[i]});
            if (bad(i))
                found.back().to = u[i];
            inside = bad(i);
        }
        return found;
    };
    const auto& allowed = design.limits.pressureAngle;
    limits.tooSteep = stretches([&](Eigen::Index i) { return angle[i] > allowed.error; });
    limits.steep = stretches(
        [&](Eigen::Index i) { return angle[i] > allowed.warning && angle[i] <= allowed.error; });
    limits.undercut = stretches([&](Eigen::Index i) { return least[i] <= 0.0; });
    return limits;
}

} // namespace lobewright::ui
