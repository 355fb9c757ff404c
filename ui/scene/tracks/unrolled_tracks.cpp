#include "ui/scene/tracks/unrolled_tracks.h"

#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/drawing.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/thin_line.h"

#include <QMenu>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace lobewright::ui {

namespace {
constexpr double reach = 9.0; ///< how near to a curve a double click has to be [px]

QString placeName(TrackLimits::Across place) {
    switch (place) {
    case TrackLimits::Across::innerEdge:
        return UnrolledTracks::tr("inner edge");
    case TrackLimits::Across::outerEdge:
        return UnrolledTracks::tr("outer edge");
    default:
        return UnrolledTracks::tr("middle");
    }
}

} // namespace

UnrolledTracks::UnrolledTracks(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("unrolledTracks"));
    describe(*this, tr("Both tracks unrolled over one revolution"),
             tr("Drag a dot to move a segment boundary, its lift or a knot; drag the bar below "
                "to turn the exhaust track; Shift for fine. Double-click a dot to type its "
                "value, the curve of a track of knots to put a knot there; Delete takes the "
                "chosen knot out. Where two dots nearly coincide, Tab goes from one to the next, "
                "and the wheel enlarges them in Piston position."));
    offerOptions(*this);
}

void UnrolledTracks::setCylinder(int index) {
    if (index == cylinder_)
        return;
    cylinder_ = index;
    update();
}

void UnrolledTracks::layOut() {
    const double line = QFontMetricsF(font()).height();
    frame_ = UnrolledFrame(engine(), QRectF(rect()).adjusted(10, 6, -10, -6), line);
    for (const End end : engine().pair().pistons()) {
        limits_[end] = trackLimits(engine(), frame_, end);
        surfaces_[end] = thinned(frame_.surface(end, false));
        pullSurfaces_[end] = engine().design().mechanism.closedTrack
                                 ? thinned(frame_.surface(end, true))
                                 : QPolygonF();
        pitchCurves_[end] = thinned(frame_.pitchCurve(end));
    }
    cylinder_ = std::clamp(cylinder_, 0, engine().cylinders() - 1);
}

void UnrolledTracks::addOptions(QMenu& menu) {
    if (const auto own =
            engine().isEmpty() ? std::nullopt : editing::ownExhaustTrack(engine().design())) {
        menu.addAction(coreText(own->text), this, [this, edit = Edit(*own)] {
            Q_EMIT edited(edit);
            Q_EMIT editFinished();
        });
        menu.addSeparator();
    }
    addPictureActions(menu, *this, accessibleName());
}

std::vector<Handle> UnrolledTracks::makeHandles() const {
    std::vector<Handle> handles = patternHandles(engine(), frame_, End::inlet);
    if (engine().pair().mechanism().isOneSided())
        return handles;
    for (auto& handle : patternHandles(engine(), frame_, End::exhaust))
        handles.push_back(handle);
    handles.push_back(leadHandle(engine(), frame_));
    return handles;
}

bool UnrolledTracks::clickedGround(const QPointF& point) {
    const double u = std::clamp(frame_.u(point.x()), 0.0, units::turn);
    const auto angles = mechanism::cylinderAngles(engine().design().mechanism);
    cursor().setAngle(u + angles[static_cast<std::size_t>(cylinder_)]);
    return true;
}

std::optional<Addition> UnrolledTracks::addition(End end, double u) const {
    const double angle = frame_.patternAngle(end, u) / units::degree;
    const auto edit = editing::addKnot(engine().design(), end, angle);
    return edit ? std::optional(Addition{*edit, frame_.axisPoint(end, u)}) : std::nullopt;
}

std::optional<Addition> UnrolledTracks::additionAt(const QPointF& point) const {
    const double u = frame_.u(point.x());
    if (u < 0.0 || u > units::turn)
        return std::nullopt;
    for (const End end : engine().pair().pistons()) {
        // The path of the roller's axis or the track under it, whichever the person aims at.
        const double axis = frame_.axisPoint(end, u).y();
        const double r = engine().design().mechanism.roller.radius * frame_.scale();
        const double track = axis - UnrolledFrame::inward(end) * r;
        if (std::abs(point.y() - axis) > reach && std::abs(point.y() - track) > reach)
            continue;
        if (const auto found = addition(end, u))
            return found;
    }
    return std::nullopt;
}

std::optional<Addition> UnrolledTracks::additionAtAngle() const {
    const auto angles = mechanism::cylinderAngles(engine().design().mechanism);
    double u =
        std::fmod(cursor().angle() - angles[static_cast<std::size_t>(cylinder_)], units::turn);
    if (u < 0.0)
        u += units::turn;
    const Handle* chosen =
        chosenHandle() < 0 ? nullptr : &handles()[static_cast<std::size_t>(chosenHandle())];
    const bool onExhaust = chosen && chosen->key.starts_with("/tracks/exhaust");
    const End last = engine().pair().pistons().back();
    for (const End end : {onExhaust ? End::exhaust : End::inlet, last}) {
        if (const auto found = addition(end, u))
            return found;
    }
    return std::nullopt;
}

void UnrolledTracks::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    painter.save();
    painter.setClipRect(QRectF(frame_.left(), 0, frame_.right() - frame_.left(), height()));
    for (const End end : engine().pair().pistons())
        paintTrack(painter, end);
    for (const End end : engine().pair().pistons()) {
        paintLimits(painter, end);
        paintCaption(painter, end);
    }
    paintRollers(painter);
    painter.restore();
    paintMiddle(painter);
    for (const End end : engine().pair().pistons())
        paintChain(painter, end);
}

void UnrolledTracks::paintTrack(QPainter& painter, End end) const {
    const Palette& p = tones();
    QPolygonF body = surfaces_[end];
    body << QPointF(body.last().x(), frame_.blankFace(end))
         << QPointF(body.first().x(), frame_.blankFace(end));
    fillOnly(painter, p.metalPale);
    painter.drawPolygon(body);
    painter.setBrush(Qt::NoBrush);
    const auto& curve = engine().pair().curve(end);
    painter.setPen(QPen(p.grid, 1.0));
    for (int lobe = -1; lobe <= curve.lobes(); ++lobe) {
        const double x = frame_.x(lobe * curve.period() - frame_.lead(end));
        painter.drawLine(QPointF(x, frame_.blankFace(end)),
                         QPointF(x, frame_.y(end, curve.stroke())));
    }
    // Port edges as lifts: outward of the dashed line the row is open.
    painter.setPen(QPen(p.tint(p.side(end), 0.6), 1.0, Qt::DashLine));
    for (const auto& row : engine().design().ports[end]) {
        const double y = frame_.y(end, row.edge + engine().pair().shift(end));
        painter.drawLine(QPointF(frame_.left(), y), QPointF(frame_.right(), y));
    }
    if (const auto* baseline = engine().baseline()) {
        QPolygonF old;
        const auto& pair = baseline->pair;
        const double lead = pair.trackAngle(end, 0.0) - pair.trackAngle(End::inlet, 0.0);
        for (int i = 0; i <= 720; ++i) {
            const double u = units::turn * i / 720;
            old << QPointF(frame_.x(u), frame_.y(end, pair.curve(end).at(u + lead).y));
        }
        painter.setPen(QPen(p.baseline(p.side(end)), 2.4));
        painter.drawPolyline(thinned(old));
    }
    painter.setPen(QPen(p.side(end), 1.0, Qt::DotLine));
    painter.drawPolyline(pitchCurves_[end]);
    painter.setPen(QPen(p.side(end), 2.2));
    painter.drawPolyline(surfaces_[end]);
    painter.setPen(QPen(p.side(end), 1.2));
    painter.drawPolyline(pullSurfaces_[end]);
}

void UnrolledTracks::paintLimits(QPainter& painter, End end) const {
    const Palette& p = tones();
    const auto along = [&](const TrackLimits::Stretch& stretch, const QPen& pen) {
        QPolygonF part;
        const int steps = std::max(2, static_cast<int>((stretch.to - stretch.from) * 200.0));
        for (int i = 0; i <= steps; ++i)
            part << frame_.axisPoint(end, stretch.from + (stretch.to - stretch.from) * i / steps);
        painter.setPen(pen);
        painter.drawPolyline(part);
    };
    painter.setBrush(Qt::NoBrush);
    for (const auto& stretch : limits_[end].steep)
        along(stretch, QPen(p.warning, 2.6, Qt::DashLine, Qt::FlatCap));
    for (const auto& stretch : limits_[end].tooSteep)
        along(stretch, QPen(p.warning, 3.4));
    for (const auto& stretch : limits_[end].undercut) {
        const double wide = std::max(3.0, frame_.x(stretch.to) - frame_.x(stretch.from));
        const double middle = 0.5 * (frame_.x(stretch.from) + frame_.x(stretch.to));
        const double y = frame_.axisPoint(end, 0.5 * (stretch.from + stretch.to)).y();
        const double r = engine().design().mechanism.roller.radius * frame_.scale();
        const double top = y - UnrolledFrame::inward(end) * r;
        QRectF box(QPointF(middle - 0.5 * wide, top - 5.0),
                   QPointF(middle + 0.5 * wide, top + 5.0));
        fillAndOutline(painter, QBrush(p.warning, Qt::BDiagPattern), QPen(p.warning, 1.6));
        painter.drawRect(box);
        painter.setBrush(Qt::NoBrush);
    }
}

void UnrolledTracks::paintRollers(QPainter& painter) const {
    const Palette& p = tones();
    const double r = engine().design().mechanism.roller.radius * frame_.scale();
    const auto angles = mechanism::cylinderAngles(engine().design().mechanism);
    for (std::size_t k = 0; k < angles.size(); ++k) {
        const bool chosen = static_cast<int>(k) == cylinder_;
        double u = std::remainder(cursor().angle() - angles[k], units::turn);
        if (u < 0.0)
            u += units::turn;
        for (const double shown : {u - units::turn, u, u + units::turn}) {
            const double x = frame_.x(shown);
            if (x < frame_.left() - r || x > frame_.right() + r)
                continue;
            painter.setPen(
                QPen(p.cursor, chosen ? 1.4 : 0.8, chosen ? Qt::SolidLine : Qt::DotLine));
            painter.drawLine(QPointF(x, frame_.blankFace(End::inlet)),
                             QPointF(x, frame_.blankFace(End::exhaust)));
            for (const End end : engine().pair().pistons()) {
                const QPointF centre = frame_.axisPoint(end, shown);
                fillAndOutline(painter, chosen ? p.metal : p.tint(p.metal, 0.45),
                               QPen(p.ink, chosen ? 1.6 : 1.0));
                painter.drawEllipse(centre, r, r);
                if (r > 0.7 * painter.fontMetrics().height()) {
                    painter.drawText(QRectF(centre.x() - r, centre.y() - r, 2 * r, 2 * r),
                                     Qt::AlignCenter, QString::number(k + 1));
                }
            }
        }
    }
}

void UnrolledTracks::paintMiddle(QPainter& painter) const {
    const Palette& p = tones();
    const double line = painter.fontMetrics().height();
    const QRectF& strip = frame_.middle();
    const double axis = strip.center().y();
    // When the ports of a cylinder at ring angle 0 are open: bars either side of the axis.
    painter.setPen(Qt::NoPen);
    const double period = engine().pair().period();
    const double first = mechanism::cylinderAngles(engine().design().mechanism).front();
    for (const End end : bothEnds) {
        painter.setBrush(p.side(end));
        const double y = end == End::inlet ? axis - 0.5 * line - 6.0 : axis + 0.5 * line + 2.0;
        for (const auto& cycle : engine().timing().cycles()) {
            for (double at = -2.0 * period; at < units::turn + period; at += period) {
                const double from = std::clamp(cycle.opens(end) - first + at, 0.0, units::turn);
                const double to = std::clamp(cycle.closes(end) - first + at, 0.0, units::turn);
                if (to > from)
                    painter.drawRect(QRectF(frame_.x(from), y, frame_.x(to) - frame_.x(from), 4.0));
            }
        }
    }
    painter.setPen(p.quiet);
    const double room = frame_.pixelsPerRadian() * units::degree;
    const double label = painter.fontMetrics().horizontalAdvance(QStringLiteral("000°")) + 10.0;
    int step = 10;
    for (const int candidate : {10, 15, 30, 45, 60, 90, 180}) {
        if (candidate * room >= label) {
            step = candidate;
            break;
        }
    }
    for (int degree = 0; degree <= 360; degree += step) {
        const bool crowded = degree < 360 && (360 - degree) * room < 1.5 * label;
        if (crowded)
            continue;
        const double x = frame_.x(degree * units::degree);
        const double wide = 60.0;
        const double left = std::clamp(x - 0.5 * wide, 2.0, width() - 2.0 - wide);
        const int align = degree == 0     ? Qt::AlignLeft
                          : degree == 360 ? Qt::AlignRight
                                          : Qt::AlignHCenter;
        const QRectF box = degree == 0     ? QRectF(x, axis - 0.5 * line, wide, line)
                           : degree == 360 ? QRectF(x - wide, axis - 0.5 * line, wide, line)
                                           : QRectF(left, axis - 0.5 * line, wide, line);
        painter.drawText(box, align | Qt::AlignVCenter, QString::number(degree) + QChar(0x00B0));
    }
}

void UnrolledTracks::paintChain(QPainter& painter, End end) const {
    const QRectF& strip = frame_.chain(end);
    const auto* shape = std::get_if<motion::SegmentShape>(&engine().design().tracks[end].shape);
    if (strip.isEmpty() || !shape)
        return;
    const Palette& p = tones();
    const auto& curve = engine().pair().curve(end);
    const double y = end == End::inlet ? strip.bottom() - 3.0 : strip.top() + 3.0;
    const double text = end == End::inlet ? strip.top() : strip.top() + 6.0;
    const double line = painter.fontMetrics().height();
    const QColor colour = p.side(end);
    painter.setPen(QPen(colour, 1.0));
    for (int lobe = -1; lobe <= curve.lobes(); ++lobe) {
        double start = lobe * curve.period() - frame_.lead(end);
        for (const auto& segment : shape->segments) {
            const double from = std::max(start, 0.0),
                         to = std::min(start + segment.span, units::turn);
            const bool whole = start >= -1e-9 && start + segment.span <= units::turn + 1e-9;
            start += segment.span;
            if (to <= from)
                continue;
            const double x1 = frame_.x(from), x2 = frame_.x(to);
            painter.drawLine(QPointF(x1, y - 3), QPointF(x1, y + 3));
            painter.drawLine(QPointF(x2, y - 3), QPointF(x2, y + 3));
            painter.drawLine(QPointF(x1, y), QPointF(x2, y));
            const QString longText = words::segmentKind(segment.kind) + QLatin1Char(' ') +
                                     words::degrees(segment.span, 1);
            const QString shortText = words::degrees(segment.span, 0);
            const double room = x2 - x1 - 4.0;
            const auto& metrics = painter.fontMetrics();
            const QString shown = metrics.horizontalAdvance(longText) < room    ? longText
                                  : metrics.horizontalAdvance(shortText) < room ? shortText
                                                                                : QString();
            if (whole && !shown.isEmpty())
                painter.drawText(QRectF(x1, text, x2 - x1, line), Qt::AlignCenter, shown);
        }
    }
}

double UnrolledTracks::paintFigure(QPainter& painter, const QPointF& at, const QString& text,
                                   bool bad) const {
    painter.setPen(bad ? tones().warning : tones().ink);
    painter.drawText(at, text);
    return painter.fontMetrics().horizontalAdvance(text);
}

void UnrolledTracks::paintCaption(QPainter& painter, End end) const {
    const double line = painter.fontMetrics().height();
    const auto& limits = limits_[end];
    const bool isSteep = !limits.steep.empty() || !limits.tooSteep.empty();
    const bool isUndercut = limits.leastRelativeRadius <= 0.0;
    const bool isOnly = engine().pair().mechanism().isOneSided();
    const QString side = trackTitle(end, isOnly);
    const bool isSame = end == End::exhaust && !engine().design().tracks.exhaust;
    const QString angle = words::degrees(limits.largestPressureAngle, 1);
    const QString radius =
        quantityText(limits.leastRelativeRadius / units::millimetre, QStringLiteral("mm"), 1);
    // From full sentences to bare figures: a narrow pane shortens the words, never the values.
    using Parts = std::array<QString, 3>;
    const Parts wordings[] = {
        {isSame ? tr("%1 (same pattern)").arg(side) : side,
         tr(": pressure angle up to %1 at the middle").arg(angle),
         isUndercut ? tr(", undercut at %1").arg(placeName(limits.leastRadiusAt))
                    : tr(", relative radius down to %1 at %2")
                          .arg(radius, placeName(limits.leastRadiusAt))},
        {side, tr(": angle %1 (middle)").arg(angle),
         isUndercut ? tr(", undercut (%1)").arg(placeName(limits.leastRadiusAt))
                    : tr(", radius %1 (%2)").arg(radius, placeName(limits.leastRadiusAt))},
        {isOnly ? trackTitle(end, isOnly) : words::side(end), QStringLiteral(" α ") + angle,
         isUndercut ? tr(", undercut") : QStringLiteral(", R ") + radius},
        {QString(), QStringLiteral("α ") + angle,
         isUndercut ? tr(", undercut") : QStringLiteral(" R ") + radius}};
    const double wide = frame_.right() - frame_.left() - 8.0;
    const auto width = [&](const Parts& parts) {
        return painter.fontMetrics().horizontalAdvance(parts[0] + parts[1] + parts[2]);
    };
    const Parts* shown = &wordings[0];
    while (width(*shown) > wide && shown + 1 != std::end(wordings))
        ++shown;
    const double y = frame_.caption(end).top();
    QPointF at(frame_.left() + 5.0, y + painter.fontMetrics().ascent());
    // Lines of the lobes run behind the words, and in a very flat view the track does.
    QColor ground = tones().metalPale;
    ground.setAlphaF(0.85F);
    painter.fillRect(QRectF(at.x() - 3.0, y, width(*shown) + 6.0, line), ground);
    at.rx() += paintFigure(painter, at, (*shown)[0], false);
    at.rx() += paintFigure(painter, at, (*shown)[1], isSteep);
    paintFigure(painter, at, (*shown)[2], isUndercut);
}

} // namespace lobewright::ui
