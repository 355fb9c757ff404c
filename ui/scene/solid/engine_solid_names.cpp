// The part of EngineSolid that says what its parts are.
#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/scene/section/drawn_arrow.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/liner_mesh.h"
#include "ui/scene/solid/solid_points.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double rim = 8.0;           ///< [px] round the picture
constexpr double footRoom = 24.0;     ///< [px] for the angle of the shaft
constexpr double besideEngine = 20.0; ///< [px] for leaders
constexpr double mostForNames = 0.5;  ///< of the width, both columns together
constexpr qsizetype rollerWord = 0, trackWord = 1, gasWord = 3, shaftWord = 4;
constexpr double leastHeight = 150.0; ///< [px] of a picture with names

double outward(End end) {
    return end == End::inlet ? -1.0 : 1.0;
}

} // namespace

QPointF EngineSolid::onScreen(const QMatrix4x4& screen, const QVector3D& place) const {
    const QVector3D at = screen.map(place);
    return {0.5 * (1.0 + static_cast<double>(at.x())) * width(),
            0.5 * (1.0 - static_cast<double>(at.y())) * height()};
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
    const auto [low, high] = shaftEnds(engine_.pair());
    const double r = engine_.pair().mechanism().roller.radius;
    const bool isFromExhaust = turnedEye().mapVector(QVector3D(0.0F, 0.0F, 1.0F)).z() >= 0.0F;
    return isFromExhaust ? high - 0.7 * r : low + 0.7 * r;
}

/// In the order of `namedParts`: whole words, or the first of each where there is no room.
QStringList EngineSolid::partWords() const {
    const bool isOnly = engine_.pair().mechanism().isOneSided();
    QStringList words{tr("Roller: rolls"),
                      isOnly                    ? tr("Track: turns")
                      : seenEnd() == End::inlet ? tr("Inlet track: turns")
                                                : tr("Exhaust track: turns"),
                      tr("Piston: slides"),
                      tr("Gas: pushes"),
                      tr("Shaft: turns"),
                      tr("Cylinder: fixed"),
                      tr("Inlet ports"),
                      tr("Exhaust ports")};
    if (!isOnly)
        words << (seenEnd() == End::inlet ? tr("Exhaust track: turns") : tr("Inlet track: turns"));
    const QFontMetricsF metrics(font());
    const auto widest = [&] {
        double most = 0.0;
        for (const QString& word : words)
            most = std::max(most, metrics.horizontalAdvance(word));
        return most + rim + besideEngine;
    };
    if (2.0 * widest() > mostForNames * width()) {
        for (QString& word : words)
            word = word.section(QLatin1Char(':'), 0, 0);
    }
    const bool isTooNarrow = 2.0 * widest() > mostForNames * width();
    return isTooNarrow || height() < leastHeight ? QStringList() : words;
}

QRectF EngineSolid::room() const {
    double side = rim;
    if (areNamed()) {
        const QFontMetricsF metrics(font());
        for (const QString& word : partWords())
            side = std::max(side, metrics.horizontalAdvance(word) + rim + besideEngine);
    }
    return QRectF(rect()).adjusted(side, rim, -side, -footRoom);
}

QRectF EngineSolid::pictureBox() const {
    const QMatrix4x4 screen = lens() * camera();
    QPolygonF points;
    for (const QVector3D& point : hull())
        points << onScreen(screen, point);
    return points.boundingRect();
}

/// Anchors on the sides of the parts that are turned to the eye.
std::vector<NamedPart> EngineSolid::namedParts() const {
    const QStringList words = partWords();
    if (words.isEmpty())
        return {};
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes sizes = solidSizes(pair);
    const QMatrix4x4 eye = turnedEye(), screen = lens() * camera();
    const int cylinder = nearestCylinder();
    const QMatrix4x4 bore = boreOf(cylinder);
    const double theta = engine_.angleOfCylinder(cylinder, cursor_.angle());
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    // Round the bore towards the eye, from the direction away from the shaft.
    const double towards =
        eye.mapVector(bore.mapVector({0.0F, 1.0F, 0.0F})).z() >= 0.0F ? 1.0 : -1.0;
    const auto at = [&](const QVector3D& place) { return onScreen(screen, place); };
    std::vector<NamedPart> parts;
    const auto add = [&](const QVector3D& now, const QVector3D& rest) {
        parts.push_back({words[static_cast<qsizetype>(parts.size())], at(now), at(rest)});
    };
    const auto still = [&](const QVector3D& place) { add(place, place); };

    const End seen = seenEnd();
    const End other = mechanism.isOneSided() || seen == End::exhaust ? End::inlet : End::exhaust;
    // Along the shaft only what stands in front is seen.
    const auto before = endBeforeEye();
    const End rolling = before && !mechanism.isOneSided() ? *before : seen;
    const auto roller = [&](double lift) {
        const double z =
            rollerOrigin(pair, rolling) - outward(rolling) * lift + 0.5 * apart(rolling);
        return bore.map(vector(0.5 * mechanism.roller.width, towards * 0.6 * r, z));
    };
    add(roller(pair.lift(rolling, theta).y), roller(0.5 * pair.curve(rolling).stroke()));
    const auto track = [&](End end) {
        const double z = rollerOrigin(pair, end) + outward(end) * 1.5 * r + apart(end);
        const double radius = mechanism.pitchRadius + 0.5 * sizes.trackWidth;
        // The highest place of the rim that faces the eye.
        QVector3D best;
        double highest = 1e300;
        for (int i = 0; i < 48; ++i) {
            const double angle = units::turn * i / 48.0;
            const QVector3D place = polar(radius, angle, z);
            if (eye.mapVector(polar(1.0, angle, 0.0)).z() > 0.45F && at(place).y() < highest) {
                highest = at(place).y();
                best = place;
            }
        }
        if (highest < 1e300)
            return best;
        // Along the shaft: the face, away from the cylinders.
        const double angle =
            mechanism::cylinderAngles(mechanism).front() + units::pi / engine_.cylinders();
        return polar(mechanism.pitchRadius + 0.3 * sizes.trackWidth, angle,
                     rollerOrigin(pair, end) + outward(end) * r + apart(end));
    };
    still(track(seen));
    const auto piston = [&](double crownAt) {
        return bore.map(
            polar(0.985 * b, towards * 0.5,
                  crownAt + 0.5 * apart(other) + outward(other) * 0.45 * sizes.pistonLength));
    };
    const double middle = rollerOrigin(pair, other) -
                          outward(other) * (0.5 * pair.curve(other).stroke() + sizes.axisDistance);
    add(piston(crown(other, theta)), piston(middle));
    const double chamber = 0.5 * (crown(End::inlet, theta) + crown(End::exhaust, theta));
    add(bore.map(polar(0.98 * b, towards * 0.5, chamber)),
        bore.map(polar(0.98 * b, towards * 0.5, 0.0)));
    const double end = shaftEnd();
    const QVector3D front = eye.inverted().mapVector({0.0F, 0.0F, 1.0F});
    still(polar(sizes.shaftRadius, std::atan2(front.y(), front.x()), end));
    const double wall = linerReach(engine_, seen);
    still(bore.map(polar(1.12 * b, towards * (linerCut() + 0.03), outward(seen) * 0.93 * wall)));
    for (const End row : bothEnds) {
        QVector3D best;
        float nearest = -1e30F;
        for (const Opening& port : openingsOf(engine_, row)) {
            const QVector3D place = bore.map(
                polar(1.12 * b, 0.5 * (port.from + port.to), 0.5 * (port.low + port.high)));
            if (const float z = eye.mapVector(place).z(); z > nearest) {
                nearest = z;
                best = place;
            }
        }
        still(best);
    }
    if (!mechanism.isOneSided())
        still(track(other));
    // Nothing is drawn between crowns that stand apart.
    std::erase_if(parts, [&](const NamedPart& part) {
        const qsizetype word = words.indexOf(part.text);
        const bool isHead = before && pair.uncovers(*before) != *before;
        const bool isSeen = !before || word == shaftWord || (word == rollerWord && !isHead) ||
                            (word == trackWord && *before != seen && engine_.cylinders() > 1);
        return !isSeen || (view_.apart > 0.0F && word == gasWord);
    });
    return parts;
}

std::vector<PlacedName> EngineSolid::names() const {
    if (engine_.isEmpty() || !areNamed())
        return {};
    const QRectF area = QRectF(rect()).adjusted(rim, rim, -rim, -footRoom);
    std::vector<NamedPart> parts = namedParts();
    // Close by, parts lie outside the picture.
    std::erase_if(parts, [&](const NamedPart& part) { return !area.contains(part.at); });
    return placedNames(parts, area, pictureBox() & area, QFontMetricsF(font()));
}

void EngineSolid::paintNames(QPainter& painter) const {
    if (engine_.isEmpty())
        return;
    const Palette& p = Palette::of(*this);
    if (!view_.onRoller)
        paintTurning(painter);
    const auto placed = names();
    for (const PlacedName& name : placed) {
        painter.setPen(QPen(p.paper, 3.0));
        painter.drawLine(name.leader);
        painter.setPen(QPen(p.quiet, 1.0));
        painter.drawLine(name.leader);
        painter.setBrush(p.quiet);
        painter.drawEllipse(name.leader.p2(), 2.5, 2.5);
    }
    QColor ground = p.paper;
    ground.setAlphaF(0.85F);
    for (const PlacedName& name : placed) {
        painter.fillRect(name.box.adjusted(-2.0, 0.0, 2.0, 0.0), ground);
        painter.setPen(p.ink);
        painter.drawText(name.box, Qt::AlignCenter | Qt::TextDontClip, name.text);
    }
}

/// The way of the shaft, over the side of its end that is turned to the eye.
void EngineSolid::paintTurning(QPainter& painter) const {
    const double z = shaftEnd(), radius = 1.35 * solidSizes(engine_.pair()).shaftRadius;
    const QVector3D front = turnedEye().inverted().mapVector({0.0F, 0.0F, 1.0F});
    const double middle = std::atan2(front.y(), front.x());
    constexpr int steps = 20;
    const QMatrix4x4 screen = lens() * camera();
    QPolygonF arc;
    for (int i = 0; i <= steps; ++i) {
        const double angle = middle + 1.25 * (2.0 * i / steps - 1.0);
        arc << onScreen(screen, polar(radius, angle, z));
    }
    const Palette& p = Palette::of(*this);
    painter.setBrush(Qt::NoBrush);
    for (const auto& [tone, wide] : {std::pair(p.paper, 4.5), std::pair(p.ink, 2.2)}) {
        painter.setPen(QPen(tone, wide));
        painter.drawPolyline(arc.first(steps));
    }
    drawArrow(painter, arc[steps - 2], arc[steps], 9.0);
}

} // namespace lobewright::ui
