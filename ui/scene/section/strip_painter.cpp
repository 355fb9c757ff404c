#include "ui/scene/section/strip_painter.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/base/thin_line.h"
#include "ui/scene/section/drawn_arrow.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <string>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(StripPainter)
};

std::string contactForce(End end) {
    return solution::QuantityId{"contact_force", &in::N, end}.written();
}

constexpr double wordsRoom = 34.0;    ///< at the edge of a strip, for the way of the track [px]
constexpr double besideContact = 8.0; ///< of the arrow that turns the shaft [px]

/// 1, 2 or 5 times a power of ten, at most `most`.
double roundBelow(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    for (const double factor : {5.0, 2.0}) {
        if (factor * power <= most)
            return factor * power;
    }
    return power;
}

} // namespace

void StripPainter::paint(End end) {
    const QRectF& box = frame_.strip(end);
    if (box.isEmpty())
        return;
    painter_.save();
    painter_.setClipRect(box);
    painter_.fillRect(box, tones_.panel);
    paintTrack(end);
    paintRoller(end);
    paintMoving(end);
    painter_.restore();
    outlineOnly(painter_, QPen(tones_.quiet, 1.0));
    painter_.drawRect(box);
    // In projection: the same roller, seen from above and from the side.
    const double x = frame_.unrolled().at(frame_.unrolled().rollerAxis(end, theta_), 0.0).x();
    const double half = 0.5 * engine_.design().mechanism.roller.width;
    painter_.setPen(QPen(tones_.quiet, 1.0, Qt::DotLine));
    const double line = painter_.fontMetrics().height();
    painter_.drawLine(QPointF(x, box.bottom() + line + 4.0),
                      QPointF(x, frame_.cylinder().at(0.0, -half).y()));
    const bool isOnly = engine_.pair().mechanism().isOneSided();
    QString title = isOnly              ? Words::tr("Track, unrolled")
                    : end == End::inlet ? Words::tr("Inlet track, unrolled")
                                        : Words::tr("Exhaust track, unrolled");
    if (painter_.fontMetrics().horizontalAdvance(title) > box.width())
        title = trackTitle(end, isOnly);
    painter_.setPen(tones_.side(end));
    painter_.drawText(QRectF(box.left(), box.top() - line, box.width(), line),
                      (end == End::inlet ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter,
                      title);
    paintForce(end);
}

void StripPainter::paintTrack(End end) {
    const SectionFrame& strip = frame_.unrolled();
    const QRectF& box = frame_.strip(end);
    const auto flank = [&](bool pull, double face) {
        const QPolygonF line = thinned(strip.trackProfile(end, theta_, pull));
        QPolygonF body = line;
        body << QPointF(face, line.last().y()) << QPointF(face, line.first().y());
        fillOnly(painter_, materials_.iron);
        painter_.drawPolygon(body);
        outlineOnly(painter_, QPen(tones_.side(end), pull ? 1.6 : 2.8));
        painter_.drawPolyline(line);
    };
    flank(false, end == End::inlet ? box.left() : box.right());
    if (engine_.design().mechanism.closedTrack)
        flank(true, end == End::inlet ? box.right() : box.left());
}

void StripPainter::paintRoller(End end) {
    const SectionFrame& strip = frame_.unrolled();
    const double r = engine_.design().mechanism.roller.radius * strip.scale();
    const QPointF centre = strip.at(strip.rollerAxis(end, theta_), 0.0);
    fillAndOutline(painter_, materials_.steel, QPen(tones_.ink, 1.2));
    painter_.drawEllipse(centre, r, r);
    painter_.setBrush(materials_.bronze);
    painter_.drawEllipse(centre, 0.24 * r, 0.24 * r);
    const double turn = strip.rollerTurn(end, theta_);
    fillOnly(painter_, tones_.quiet);
    for (int i = 0; i < 3; ++i) {
        const double angle = turn + i * units::turn / 3.0;
        painter_.drawEllipse(centre + 0.72 * r * QPointF(std::cos(angle), std::sin(angle)),
                             0.07 * r, 0.07 * r);
    }
}

/// The way of the track, written along it in its own body.
void StripPainter::paintMoving(End end) {
    const QRectF& box = frame_.strip(end);
    const double out = SectionFrame::outward(end);
    const double line = painter_.fontMetrics().height();
    const double edge = out < 0.0 ? box.left() : box.right();
    const QString word = Words::tr("track moves");
    const double wide = painter_.fontMetrics().horizontalAdvance(word);
    const double x = edge - out * 8.0;
    painter_.setPen(QPen(tones_.ink, 2.0));
    const double half = std::min(0.5 * box.height() - 6.0, 0.5 * wide);
    drawArrow(painter_, {x, box.center().y() - half}, {x, box.center().y() + half}, 9.0);
    if (wide + 6.0 > box.height())
        return;
    painter_.save();
    painter_.translate(edge - out * (14.0 + 0.5 * line), box.center().y());
    painter_.rotate(90.0);
    painter_.drawText(QRectF(-0.5 * wide - 2.0, -0.5 * line, wide + 4.0, line), Qt::AlignCenter,
                      word);
    painter_.restore();
}

double StripPainter::pixelsPerNewton() const {
    double peak = 0.0;
    for (const End end : engine_.pair().pistons())
        peak = std::max(peak, engine_.channelPeak(contactForce(end)).value_or(0.0));
    if (peak <= 0.0)
        return 0.0;
    // The largest force, near inner dead centre, ends short of the words in the body of its track.
    const double r = engine_.design().mechanism.roller.radius;
    const double body = (0.7 * r + engine_.pair().curve(End::inlet).stroke()) * frame_.scale();
    return std::max(24.0, std::min(frame_.strip(End::inlet).height(), body - wordsRoom)) / peak;
}

void StripPainter::paintForce(End end) {
    const auto force = engine_.channel(contactForce(end), theta_);
    const double scale = pixelsPerNewton();
    if (!force || scale <= 0.0)
        return;
    const QRectF& box = frame_.strip(end);
    const SectionFrame& strip = frame_.unrolled();
    const bool isClosed = engine_.design().mechanism.closedTrack;
    const double line = painter_.fontMetrics().height();
    const double lineTop = box.bottom() + 2.0;
    const auto put = [&](const QString& text, const QColor& tone) {
        painter_.setPen(tone);
        painter_.drawText(QRectF(box.left(), lineTop, box.width(), line),
                          (end == End::inlet ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                          text);
    };
    if (!isClosed && *force <= 0.0) {
        const double r = engine_.design().mechanism.roller.radius * strip.scale();
        outlineOnly(painter_, QPen(tones_.warning, 2.4, Qt::DashLine));
        painter_.drawEllipse(strip.at(strip.rollerAxis(end, theta_), 0.0), r + 3.0, r + 3.0);
        put(Words::tr("lifts off"), tones_.warning);
        return;
    }
    const bool pull = *force < 0.0;
    const QPointF touch = strip.contact(end, theta_, pull);
    const QPointF whole = -*force * scale * strip.push(end, theta_); // on the track
    const QPointF axial(whole.x(), 0.0), around(0.0, whole.y());
    painter_.save();
    painter_.setClipRect(box);
    painter_.setPen(QPen(tones_.ink, 1.0, Qt::DashLine));
    painter_.drawLine(touch + axial, touch + whole);
    painter_.drawLine(touch + around, touch + whole);
    painter_.setPen(QPen(tones_.ink, 1.6));
    drawArrow(painter_, touch, touch + axial, 8.0);
    painter_.setPen(QPen(tones_.ink, 2.6));
    drawArrow(painter_, touch, touch + whole, 10.0);
    // Beside the point of contact, on the roller, where no other arrow covers it.
    const QPointF aside = touch - QPointF(SectionFrame::outward(end) * besideContact, 0.0);
    painter_.setPen(QPen(useful(), 4.0));
    drawArrow(painter_, aside, aside + around, 10.0);
    painter_.restore();
    if (std::abs(around.y()) < 2.0)
        return;
    const QString words =
        around.y() > 0.0 ? Words::tr("↓ turns the shaft") : Words::tr("↑ slows the shaft");
    const QString size = quantityText(std::abs(around.y()) / scale / 1000.0, QStringLiteral("kN"));
    const QString both = words + QStringLiteral(": ") + size;
    put(painter_.fontMetrics().horizontalAdvance(both) > box.width() ? words : both, useful());
}

void StripPainter::paintForceScale(const QRectF& row) {
    const double scale = pixelsPerNewton();
    if (scale <= 0.0)
        return;
    const double force = roundBelow(60.0 / scale);
    const QString text = quantityText(force / 1000.0, QStringLiteral("kN"));
    const double wide = painter_.fontMetrics().horizontalAdvance(text);
    const double y = row.center().y(), right = row.right() - wide - 6.0;
    const double left = right - force * scale;
    painter_.setPen(QPen(tones_.ink, 2.0));
    painter_.drawLine(QPointF(left, y), QPointF(right, y));
    for (const double x : {left, right})
        painter_.drawLine(QPointF(x, y - 4.0), QPointF(x, y + 4.0));
    painter_.drawText(row, Qt::AlignRight | Qt::AlignVCenter, text);
}

} // namespace lobewright::ui
