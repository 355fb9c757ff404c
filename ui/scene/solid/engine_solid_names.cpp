// The part of EngineSolid that says what its parts are.
#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/scene/section/drawn_arrow.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/liner_mesh.h"
#include "ui/scene/solid/names_layout.h"
#include "ui/scene/solid/solid_points.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

using namespace namesLayout;

constexpr double mostForNames = 0.5;  ///< of the width, both columns together
constexpr double leastHeight = 150.0; ///< [px] of a picture with names

/// What may have a name, in the order in which names are given where there is room for some only.
enum class SolidPart {
    roller,
    seenTrack,
    piston,
    gas,
    shaft,
    cylinder,
    inletPorts,
    exhaustPorts,
    otherTrack ///< of two
};

double outward(End end) {
    return end == End::inlet ? -1.0 : 1.0;
}

} // namespace

/// Of each part, in the order of `SolidPart`: whole words, or the first of each where there is no
/// room. None where there is none even for those.
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

/// Anchors on the sides of the parts that are turned to the eye.
std::vector<NamedPart> EngineSolid::namedParts(const Sight& sight) const {
    if (sight.words.isEmpty())
        return {};
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes& sizes = sizes_;
    const QMatrix4x4 eye = turnedEye();
    const int cylinder = nearestCylinder();
    const QMatrix4x4 bore = boreOf(cylinder);
    const double theta = engine_.angleOfCylinder(cylinder, cursor_.angle());
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    // Round the bore towards the eye, from the direction away from the shaft.
    const double towards =
        eye.mapVector(bore.mapVector({0.0F, 1.0F, 0.0F})).z() >= 0.0F ? 1.0 : -1.0;
    const auto at = [&](const QVector3D& place) { return onScreen(sight.screen, place, size()); };
    const End seen = seenEnd();
    const End other = mechanism.isOneSided() || seen == End::exhaust ? End::inlet : End::exhaust;
    // Along the shaft only what stands in front is seen.
    const auto before = endBeforeEye();
    const auto isSeen = [&](SolidPart part) {
        const bool isHead = before && pair.uncovers(*before) != *before;
        // Nothing is drawn between crowns that stand apart.
        return (!before || part == SolidPart::shaft || (part == SolidPart::roller && !isHead) ||
                (part == SolidPart::seenTrack && *before != seen && engine_.cylinders() > 1)) &&
               !(view_.apart > 0.0F && part == SolidPart::gas);
    };
    std::vector<NamedPart> parts;
    const auto add = [&](SolidPart part, const QVector3D& now, const QVector3D& rest) {
        const auto nowAt = at(now), restAt = at(rest);
        if (isSeen(part) && nowAt && restAt)
            parts.push_back({sight.words[static_cast<qsizetype>(part)], *nowAt, *restAt});
    };
    const auto still = [&](SolidPart part, const QVector3D& place) { add(part, place, place); };
    const End rolling = before && !mechanism.isOneSided() ? *before : seen;
    const auto roller = [&](double lift) {
        const double z =
            sizes.rollerOrigin[rolling] - outward(rolling) * lift + 0.5 * apart(rolling);
        return bore.map(vector(0.5 * mechanism.roller.width, towards * 0.6 * r, z));
    };
    add(SolidPart::roller, roller(pair.lift(rolling, theta).y),
        roller(0.5 * pair.curve(rolling).stroke()));
    const auto track = [&](End end) {
        const double z = sizes.rollerOrigin[end] + outward(end) * 1.5 * r + apart(end);
        const double radius = mechanism.pitchRadius + 0.5 * sizes.trackWidth;
        // The highest place of the rim that faces the eye.
        QVector3D best;
        double highest = 1e300;
        for (int i = 0; i < 48; ++i) {
            const double angle = units::turn * i / 48.0;
            const QVector3D place = polar(radius, angle, z);
            const auto point = at(place);
            if (eye.mapVector(polar(1.0, angle, 0.0)).z() > 0.45F && point &&
                point->y() < highest) {
                highest = point->y();
                best = place;
            }
        }
        if (highest < 1e300)
            return best;
        // Along the shaft: the face, away from the cylinders.
        const double angle =
            mechanism::cylinderAngles(mechanism).front() + units::pi / engine_.cylinders();
        return polar(mechanism.pitchRadius + 0.3 * sizes.trackWidth, angle,
                     sizes.rollerOrigin[end] + outward(end) * r + apart(end));
    };
    still(SolidPart::seenTrack, track(seen));
    const auto piston = [&](double crownAt) {
        return bore.map(
            polar(0.985 * b, towards * 0.5,
                  crownAt + 0.5 * apart(other) + outward(other) * 0.45 * sizes.pistonLength));
    };
    const double middle = sizes.rollerOrigin[other] -
                          outward(other) * (0.5 * pair.curve(other).stroke() + sizes.axisDistance);
    add(SolidPart::piston, piston(crown(other, theta)), piston(middle));
    const double chamber = 0.5 * (crown(End::inlet, theta) + crown(End::exhaust, theta));
    add(SolidPart::gas, bore.map(polar(0.98 * b, towards * 0.5, chamber)),
        bore.map(polar(0.98 * b, towards * 0.5, 0.0)));
    const double end = shaftEnd();
    const QVector3D front = eye.inverted().mapVector({0.0F, 0.0F, 1.0F});
    still(SolidPart::shaft, polar(sizes.shaftRadius, std::atan2(front.y(), front.x()), end));
    const double wall = linerReach(engine_, seen);
    still(SolidPart::cylinder,
          bore.map(polar(1.12 * b, towards * (linerCut() + 0.03), outward(seen) * 0.93 * wall)));
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
        still(row == End::inlet ? SolidPart::inletPorts : SolidPart::exhaustPorts, best);
    }
    if (!mechanism.isOneSided())
        still(SolidPart::otherTrack, track(other));
    return parts;
}

std::vector<PlacedName> EngineSolid::names() const {
    return engine_.isEmpty() || !areNamed() ? std::vector<PlacedName>() : names(sight());
}

std::vector<PlacedName> EngineSolid::names(const Sight& sight) const {
    const QRectF area = QRectF(rect()).adjusted(rim, rim, -rim, -footRoom);
    std::vector<NamedPart> parts = namedParts(sight);
    // Close by, parts lie outside the picture.
    std::erase_if(parts, [&](const NamedPart& part) { return !area.contains(part.at); });
    return placedNames(parts, area, pictureBox(sight) & area, QFontMetricsF(font()));
}

void EngineSolid::paintNames(QPainter& painter, const Sight& sight) const {
    if (engine_.isEmpty())
        return;
    const Palette& p = Palette::of(*this);
    if (!view_.onRoller)
        paintTurning(painter, sight);
    const auto placed = names(sight);
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
void EngineSolid::paintTurning(QPainter& painter, const Sight& sight) const {
    const double z = shaftEnd(), radius = 1.35 * sizes_.shaftRadius;
    const QVector3D front = turnedEye().inverted().mapVector({0.0F, 0.0F, 1.0F});
    const double middle = std::atan2(front.y(), front.x());
    constexpr int steps = 20;
    QPolygonF arc;
    for (int i = 0; i <= steps; ++i) {
        const double angle = middle + 1.25 * (2.0 * i / steps - 1.0);
        const auto point = onScreen(sight.screen, polar(radius, angle, z), size());
        if (!point)
            return; // beside the eye, or behind it
        arc << *point;
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
