// The part of EngineSolid that says from where it is seen, and what then is seen.
#include "core/units.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/liner_mesh.h"
#include "ui/scene/solid/names_layout.h"
#include "ui/scene/solid/solid_points.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

using namespace namesLayout;

constexpr float fieldOfView = 32.0F;

} // namespace

QMatrix4x4 EngineSolid::lens() const {
    QMatrix4x4 screen;
    const float aspect = static_cast<float>(width()) / static_cast<float>(std::max(1, height()));
    const float size = static_cast<float>(engine_.pair().mechanism().pitchRadius);
    screen.perspective(fieldOfView, aspect, 0.05F * size, 80.0F * size);
    return screen;
}

QMatrix4x4 EngineSolid::turnedEye() const {
    QMatrix4x4 eye;
    eye.rotate(view_.height, 1.0F, 0.0F, 0.0F);
    eye.rotate(view_.azimuth, 0.0F, 1.0F, 0.0F);
    eye.rotate(90.0F, 0.0F, 1.0F, 0.0F); // the shaft lies across, inlet end to the left
    return eye;
}

double EngineSolid::apart(End end) const {
    const double sign = end == End::inlet ? -1.0 : 1.0;
    return sign * static_cast<double>(view_.apart) * engine_.pair().mechanism().pitchRadius;
}

QMatrix4x4 EngineSolid::boreOf(int cylinder) const {
    const auto& mechanism = engine_.pair().mechanism();
    const auto angles = mechanism::cylinderAngles(mechanism);
    QMatrix4x4 bore;
    bore.rotate(static_cast<float>(angles[static_cast<std::size_t>(cylinder)] / units::degree), 0,
                0, 1);
    bore.translate(static_cast<float>(mechanism.pitchRadius), 0, 0);
    return bore;
}

/// z of the crown, or of the head in its place, at θ of cylinder 1 [m].
double EngineSolid::crown(End end, double theta) const {
    const auto& pair = engine_.pair();
    if (pair.uncovers(end) != end)
        return 0.5 * pair.mechanism().clearance;
    const double sign = end == End::inlet ? -1.0 : 1.0;
    const double outermost =
        0.5 * pair.mechanism().clearance + pair.curve(end).stroke() + pair.shift(end);
    return sign * (outermost - pair.lift(end, theta).y);
}

std::optional<End> EngineSolid::endBeforeEye() const {
    constexpr float along = 0.94F; // cosine of 20°
    const float axis = turnedEye().mapVector(QVector3D(0.0F, 0.0F, 1.0F)).z();
    if (view_.onRoller || std::abs(axis) < along)
        return std::nullopt;
    return axis > 0.0F ? End::exhaust : End::inlet;
}

int EngineSolid::nearestCylinder() const {
    if (view_.onRoller)
        return 0;
    const QMatrix4x4 eye = turnedEye();
    int nearest = 0;
    float best = -1e30F;
    for (int k = 0; k < engine_.cylinders(); ++k) {
        const float towards = eye.mapVector(boreOf(k).map(QVector3D())).z();
        if (towards > best + 1e-6F) {
            best = towards;
            nearest = k;
        }
    }
    return nearest;
}

End EngineSolid::seenEnd() const {
    const bool isFromExhaust =
        view_.onRoller || turnedEye().mapVector(QVector3D(0.0F, 0.0F, 1.0F)).z() >= 0.0F;
    return isFromExhaust || engine_.pair().mechanism().isOneSided() ? End::inlet : End::exhaust;
}

double EngineSolid::shaftEnd() const {
    const double r = engine_.pair().mechanism().roller.radius;
    const bool isFromExhaust = turnedEye().mapVector(QVector3D(0.0F, 0.0F, 1.0F)).z() >= 0.0F;
    return isFromExhaust ? sizes_.shaftHigh - 0.7 * r : sizes_.shaftLow + 0.7 * r;
}

/// Points between which the engine lies.
std::vector<QVector3D> EngineSolid::hull() const {
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes& sizes = sizes_;
    std::vector<QVector3D> points;
    const auto ring = [&](double radius, double z) {
        constexpr int steps = 24;
        for (int i = 0; i < steps; ++i)
            points.push_back(polar(radius, units::turn * i / steps, z));
    };
    ring(sizes.shaftRadius, sizes.shaftLow);
    ring(sizes.shaftRadius, sizes.shaftHigh);
    const double r = mechanism.roller.radius, outside = 0.6 * mechanism.bore;
    for (const End end : pair.pistons()) {
        if (endBeforeEye() == end)
            continue;
        const double sign = end == End::inlet ? -1.0 : 1.0;
        const double origin = sizes.rollerOrigin[end] + apart(end);
        for (const double z : {origin + sign * 2.0 * r, origin - sign * pair.curve(end).stroke()})
            ring(mechanism.pitchRadius + 0.5 * sizes.trackWidth + 0.4 * r, z);
    }
    for (const End end : bothEnds) {
        const double sign = end == End::inlet ? -1.0 : 1.0;
        const bool hasPiston = pair.uncovers(end) == end;
        const double axis = hasPiston ? sizes.rollerOrigin[end] + 0.5 * apart(end) + sign * r : 0.0;
        const double reach = hasPiston ? linerReach(engine_, end) : headTop(pair);
        for (int k = 0; k < engine_.cylinders(); ++k) {
            const QMatrix4x4 bore = boreOf(k);
            if (hasPiston) { // fork and roller
                for (const double side : {-0.5, 0.5}) {
                    points.push_back(bore.map(
                        vector(0.5 * sizes.trackWidth + 0.42 * r, side * mechanism.bore, axis)));
                }
            }
            for (int i = 0; i < 8; ++i)
                points.push_back(bore.map(polar(outside, units::turn * i / 8.0, sign * reach)));
        }
    }
    return points;
}

/// The engine stands in the middle of its room and fills it, from wherever it is seen.
QMatrix4x4 EngineSolid::camera(const std::vector<QVector3D>& hull, const QRectF& room) const {
    const QMatrix4x4 turned = turnedEye();
    QMatrix4x4 eye;
    if (view_.onRoller) {
        const auto& pair = engine_.pair();
        const double angle = mechanism::cylinderAngles(pair.mechanism()).front();
        const double origin = sizes_.rollerOrigin.inlet;
        const QVector3D roller = polar(pair.mechanism().pitchRadius, angle,
                                       origin + 0.5 * pair.curve(End::inlet).stroke());
        const double across =
            std::hypot(origin, pair.mechanism().pitchRadius + 0.6 * pair.mechanism().bore) +
            pair.mechanism().roller.radius;
        const double aspect = width() / static_cast<double>(std::max(1, height()));
        eye.translate(0.0F, 0.0F,
                      -static_cast<float>(across / std::sin(0.5 * fieldOfView * units::degree) /
                                          std::min(1.0, aspect)) *
                          view_.distance);
        eye *= turned;
        eye.translate(-roller);
        return eye;
    }
    // A point at x, y, z is seen at x / (far − z) · scale from the middle. The nearest eye whose
    // rays through the edges of the room still pass outside all points, across and upright.
    const double scale =
        0.5 * height() / std::tan(0.5 * static_cast<double>(fieldOfView) * units::degree);
    const QRectF area = room.translated(-QRectF(rect()).center());
    struct Side {
        double from, to;                   ///< slopes of the rays through the room's edges
        double low = 1e300, high = -1e300; ///< largest and least place of a point on them
        void add(double place, double z) {
            high = std::max(high, place + to * z);
            low = std::min(low, place + from * z);
        }
        double least() const { return (high - low) / (to - from); }
        /// What brings the points to the middle, the eye being `far` away.
        double shift(double far) const { return 0.5 * ((to + from) * far - high - low); }
    };
    Side across{area.left() / scale, area.right() / scale};
    Side upright{-area.bottom() / scale, -area.top() / scale};
    for (const QVector3D& point : hull) {
        const QVector3D at = turned.map(point);
        across.add(static_cast<double>(at.x()), static_cast<double>(at.z()));
        upright.add(static_cast<double>(at.y()), static_cast<double>(at.z()));
    }
    const double far =
        std::max(across.least(), upright.least()) * static_cast<double>(view_.distance);
    eye.translate(vector(across.shift(far), upright.shift(far), -far));
    return eye * turned;
}

QRectF EngineSolid::room(const QStringList& words) const {
    double side = rim;
    const QFontMetricsF metrics(font());
    for (const QString& word : words)
        side = std::max(side, metrics.horizontalAdvance(word) + rim + besideEngine);
    return QRectF(rect()).adjusted(side, rim, -side, -footRoom);
}

EngineSolid::Sight EngineSolid::sight() const {
    Sight sight;
    if (areNamed())
        sight.words = partWords();
    sight.hull = hull();
    sight.eye = camera(sight.hull, room(sight.words));
    sight.screen = lens() * sight.eye;
    return sight;
}

QRectF EngineSolid::pictureBox(const Sight& sight) const {
    QPolygonF points;
    for (const QVector3D& point : sight.hull) {
        const auto at = onScreen(sight.screen, point, size());
        if (!at)
            return rect(); // it reaches round the eye
        points << *at;
    }
    return points.boundingRect();
}

} // namespace lobewright::ui
