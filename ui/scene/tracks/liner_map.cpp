#include "ui/scene/tracks/liner_map.h"

#include "core/design/skirt_row.h"
#include "core/ports/skirt_row.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/drawing.h"
#include "ui/base/units.h"
#include "ui/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace lobewright::ui {

LinerMap::LinerMap(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("linerMap"));
    describe(
        *this, tr("The bore unrolled, with ports and ring sweeps"),
        tr("The bore unrolled once around, inlet side above. Bars at the left show how far crown, "
           "rings and skirt travel; a triangle points to a travel that lies wholly outside the "
           "part drawn. Drag the side of a port to change the width of its row."));
}

double LinerMap::place(End end, double inward) const {
    const auto& pair = engine().pair();
    const End piston = pair.uncovers(end);
    const double out = 0.5 * pair.mechanism().clearance + pair.curve(piston).stroke() - inward;
    return piston == End::inlet ? -out : out;
}

void LinerMap::layOut() {
    const auto& pair = engine().pair();
    const auto& mechanism = pair.mechanism();
    sweeps_ = ports::linerSweep(engine().design().ports, pair);
    gap_ = ports::leastCrownGap(pair);
    const QFontMetricsF metrics(font());
    const double line = metrics.height();
    column_ = metrics.horizontalAdvance(tr("ring %1").arg(9)) + 8.0;
    const double bars =
        mechanism.piston ? 2.0 + static_cast<double>(sweeps_.inlet.rings.size()) : 1.0;
    const double left = bars * column_ + 10.0;
    const double top = line + 8.0, foot = 2.0 * line + 8.0;
    const QRectF area(left, top, width() - left - 8.0, height() - top - foot);
    reach_ = 0.0;
    for (const End end : bothEnds)
        reach_ = std::max(reach_, std::abs(place(end, -0.35 * mechanism.bore)));
    if (const auto* row = skirtRow(End::inlet)) {
        reach_ =
            std::max(reach_, std::abs(place(End::inlet, skirtEdge(*row) - 0.1 * mechanism.bore)));
    }
    const double round = units::pi * mechanism.bore;
    scale_ = std::max(1.0, std::min(area.height() / (2.0 * reach_), area.width() / round));
    middle_ = area.center().y();
    const double from = area.left() + 0.5 * (area.width() - round * scale_);
    map_ = QRectF(from, middle_ - reach_ * scale_, round * scale_, 2.0 * reach_ * scale_);
}

/// Part of the circumference that the ports of an end are spread over, as shares of a turn: rows
/// uncovered by one piston stand side by side, in proportion to their width.
std::pair<double, double> LinerMap::sector(End end) const {
    if (!engine().pair().mechanism().isOneSided())
        return {0.0, 1.0};
    PerEnd<double> width;
    for (const End side : bothEnds) {
        for (const auto& row : engine().design().ports[side])
            width[side] = std::max(width[side], row.count * row.width);
    }
    const double share = width.inlet / (width.inlet + width.exhaust);
    return end == End::inlet ? std::pair(0.0, share) : std::pair(share, 1.0);
}

void LinerMap::paintHead(QPainter& painter) const {
    const double face = y(0.5 * engine().pair().mechanism().clearance);
    const QRectF head(QPointF(map_.left(), face), map_.bottomRight());
    painter.fillRect(head, tones().metal);
    painter.setPen(QPen(tones().ink, 2.0));
    painter.drawLine(head.topLeft(), head.topRight());
    painter.drawText(head, Qt::AlignCenter, tr("head"));
}

QRectF LinerMap::portBox(End end, std::size_t index, int port) const {
    const auto& row = engine().design().ports[end][index];
    const double bore = engine().pair().mechanism().bore;
    // Unrolled, a chord becomes an arc.
    const double arc = bore * std::asin(std::clamp(row.width / bore, 0.0, 1.0));
    const auto [from, to] = sector(end);
    const double centre = units::pi * bore * (from + (to - from) * (port + 0.5) / row.count);
    const double inner = y(place(end, row.edge)), outer = y(place(end, row.edge - row.height));
    return QRectF(QPointF(map_.left() + (centre - 0.5 * arc) * scale_, inner),
                  QPointF(map_.left() + (centre + 0.5 * arc) * scale_, outer))
        .normalized();
}

void LinerMap::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    paintSweeps(painter);
    paintMap(painter);
    paintCaption(painter);
}

void LinerMap::paintStretch(QPainter& painter, End end, const ports::Stretch& stretch, double x,
                            bool warn) const {
    const double a = y(place(end, stretch.from)), b = y(place(end, stretch.to));
    fillOnly(painter, warn ? tones().warning : tones().side(end));
    const double top = std::max(std::min(a, b), map_.top());
    const double bottom = std::min(std::max(a, b), map_.bottom());
    if (bottom > top) {
        painter.drawRoundedRect(QRectF(x - 2.5, top, 5.0, bottom - top), 2, 2);
        return;
    }
    // Wholly outside the part drawn: point there.
    const double edge = end == End::inlet ? map_.top() : map_.bottom();
    const double tip = end == End::inlet ? edge : edge - 7.0;
    painter.drawPolygon(end == End::inlet
                            ? QPolygonF{{x, tip}, {x - 4.0, tip + 7.0}, {x + 4.0, tip + 7.0}}
                            : QPolygonF{{x, tip + 7.0}, {x - 4.0, tip}, {x + 4.0, tip}});
}

void LinerMap::paintSweeps(QPainter& painter) const {
    const double line = painter.fontMetrics().height();
    const double bars = engine().pair().mechanism().piston
                            ? 2.0 + static_cast<double>(sweeps_.inlet.rings.size())
                            : 1.0;
    double left = map_.left() - bars * column_ - 4.0;
    const auto label = [&](const QString& text) {
        painter.setPen(tones().quiet);
        painter.drawText(QRectF(left - 4.0, map_.top() - line - 3.0, column_ + 8.0, line),
                         Qt::AlignCenter, text);
    };
    label(tr("crown"));
    for (const End end : engine().pair().pistons())
        paintStretch(painter, end, sweeps_[end].crown, left + 0.5 * column_, false);
    if (!engine().pair().mechanism().piston)
        return;
    for (std::size_t ring = 0; ring < sweeps_.inlet.rings.size(); ++ring) {
        left += column_;
        label(tr("ring %1").arg(ring + 1));
        for (const End end : engine().pair().pistons()) {
            const auto& over = sweeps_[end].ringsOverWide;
            const bool warn = std::any_of(over.begin(), over.end(), [ring](const auto& pass) {
                return pass.ring == static_cast<int>(ring);
            });
            paintStretch(painter, end, sweeps_[end].rings[ring], left + 0.5 * column_, warn);
        }
    }
    left += column_;
    label(tr("skirt"));
    for (const End end : engine().pair().pistons()) {
        paintStretch(painter, end, sweeps_[end].skirt, left + 0.5 * column_,
                     !sweeps_[end].rowsUncoveredBySkirt.empty());
    }
}

void LinerMap::paintMap(QPainter& painter) const {
    const Palette& p = tones();
    painter.save();
    painter.setClipRect(map_);
    painter.fillRect(map_, p.metalPale);
    for (const End end : engine().pair().pistons())
        paintPistons(painter, end);
    if (engine().pair().mechanism().isOneSided())
        paintHead(painter);
    // Where the crowns come nearest.
    const double inner = 0.5 * engine().pair().mechanism().clearance;
    painter.setPen(QPen(p.quiet, 1.0, Qt::DashLine));
    for (const double z : {-inner, -inner + gap_.asSet})
        painter.drawLine(QPointF(map_.left(), y(z)), QPointF(map_.right(), y(z)));
    for (const End end : bothEnds)
        paintPorts(painter, end);
    for (const End end : engine().pair().pistons())
        paintSkirtRow(painter, end);
    painter.restore();
    outlineOnly(painter, QPen(p.ink, 1.0));
    painter.drawRect(map_);
}

void LinerMap::paintPorts(QPainter& painter, End end) const {
    const Palette& p = tones();
    const auto& rows = engine().design().ports[end];
    const double lift = engine().timing().position(end, cursor().angle());
    const End piston = engine().pair().uncovers(end);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& bare = sweeps_[piston].rowsUncoveredBySkirt;
        const bool warn = std::any_of(bare.begin(), bare.end(), [&](const auto& one) {
            return one.side == end && one.row == static_cast<int>(i);
        });
        const double open = std::clamp(rows[i].edge - lift, 0.0, rows[i].height);
        const double corner = rows[i].cornerRadius * scale_;
        for (int port = 0; port < rows[i].count; ++port) {
            const QRectF box = portBox(end, i, port);
            fillOnly(painter, p.sideFill(end));
            painter.drawRoundedRect(box, corner, corner);
            painter.save();
            QRectF uncovered = box;
            if (piston == End::inlet) {
                uncovered.setTop(box.bottom() - open * scale_);
            } else {
                uncovered.setBottom(box.top() + open * scale_);
            }
            painter.setClipRect(uncovered, Qt::IntersectClip);
            painter.setBrush(p.side(end));
            painter.drawRoundedRect(box, corner, corner);
            painter.restore();
            outlineOnly(painter, QPen(warn ? p.warning : p.side(end), warn ? 2.2 : 1.0));
            painter.drawRoundedRect(box, corner, corner);
        }
    }
}

const ports::Row* LinerMap::skirtRow(End end) const {
    return engine().pair().mechanism().piston ? design::skirtRow(engine().design(), end) : nullptr;
}

double LinerMap::skirtEdge(const ports::Row& row) const {
    return row.edge - engine().pair().mechanism().piston->length;
}

/// Ports that the skirt's end uncovers for the pump.
void LinerMap::paintSkirtRow(QPainter& painter, End end) const {
    const auto* row = skirtRow(end);
    if (!row)
        return;
    const Palette& p = tones();
    const auto& pair = engine().pair();
    const double bore = pair.mechanism().bore, edge = skirtEdge(*row);
    const double open =
        std::clamp(ports::skirtPast(*row, pair, end, cursor().angle()), 0.0, row->height);
    const double arc = bore * std::asin(std::clamp(row->width / bore, 0.0, 1.0));
    const double corner = row->cornerRadius * scale_;
    for (int port = 0; port < row->count; ++port) {
        const double centre = units::pi * bore * (port + 0.5) / row->count;
        const auto boxTo = [&](double height) {
            return QRectF(QPointF(map_.left() + (centre - 0.5 * arc) * scale_, y(place(end, edge))),
                          QPointF(map_.left() + (centre + 0.5 * arc) * scale_,
                                  y(place(end, edge + height))))
                .normalized();
        };
        const QRectF box = boxTo(row->height);
        fillOnly(painter, p.sideFill(End::inlet));
        painter.drawRoundedRect(box, corner, corner);
        painter.save();
        painter.setClipRect(boxTo(open), Qt::IntersectClip);
        painter.setBrush(p.side(End::inlet));
        painter.drawRoundedRect(box, corner, corner);
        painter.restore();
        outlineOnly(painter, QPen(p.side(End::inlet), 1.0, Qt::DashLine));
        painter.drawRoundedRect(box, corner, corner);
    }
}

void LinerMap::paintPistons(QPainter& painter, End end) const {
    const Palette& p = tones();
    const auto& pair = engine().pair();
    const double lift = pair.lift(end, cursor().angle()).y - pair.shift(end);
    const double crown = y(place(end, lift));
    const double length = pair.mechanism().piston ? pair.mechanism().piston->length : 4.0 * reach_;
    const double skirt = y(place(end, lift - length));
    painter.fillRect(QRectF(QPointF(map_.left(), crown), QPointF(map_.right(), skirt)).normalized(),
                     p.tint(p.metal, 0.75));
    const auto across = [&](double at) {
        painter.drawLine(QPointF(map_.left(), at), QPointF(map_.right(), at));
    };
    painter.setPen(QPen(p.side(end), 2.4));
    across(crown);
    painter.setPen(QPen(p.ink, 1.6));
    if (pair.mechanism().piston) {
        for (const double distance : pair.mechanism().piston->ringDistances)
            across(y(place(end, lift - distance)));
    }
}

QStringList LinerMap::remarks() const {
    QStringList found;
    for (const End end : bothEnds) {
        for (const auto& bare : sweeps_[end].rowsUncoveredBySkirt) {
            found << (bare.side == End::inlet
                          ? tr("The skirt uncovers inlet row %1 at inner dead centre.")
                          : tr("The skirt uncovers exhaust row %1 at inner dead centre."))
                         .arg(bare.row + 1);
        }
        for (const auto& pass : sweeps_[end].ringsOverWide) {
            found << (pass.side == End::inlet
                          ? tr("Ring %1 runs over the wide ports of inlet row %2.")
                          : tr("Ring %1 runs over the wide ports of exhaust row %2."))
                         .arg(pass.ring + 1)
                         .arg(pass.row + 1);
        }
    }
    return found;
}

QString LinerMap::allWell() const {
    if (!engine().pair().mechanism().piston)
        return tr("Give the piston's length and rings to see their sweep");
    std::optional<double> least;
    for (const End end : bothEnds) {
        if (const auto margin = sweeps_[end].skirtMargin)
            least = std::min(least.value_or(*margin), *margin);
    }
    return least ? tr("Skirts clear the nearest port by %1 at inner dead centre")
                       .arg(quantityText(*least / units::millimetre, QStringLiteral("mm"), 2))
                 : QString();
}

void LinerMap::paintCaption(QPainter& painter) const {
    const double line = painter.fontMetrics().height();
    const auto length = QStringLiteral("mm");
    QString gap =
        (engine().pair().mechanism().isOneSided() ? tr("The crown comes within %1 of the head")
                                                  : tr("Crowns come within %1"))
            .arg(quantityText(gap_.asSet / units::millimetre, length, 2));
    if (gap_.atRest && std::abs(*gap_.atRest - gap_.asSet) > 1e-9) {
        gap += tr(", %1 with the adjuster at rest")
                   .arg(quantityText(*gap_.atRest / units::millimetre, length, 2));
    }
    const QStringList warnings = remarks();
    const QString second = warnings.isEmpty() ? allWell() : warnings.join(QLatin1Char(' '));
    const double top = height() - 2.0 * line - 4.0;
    const int room = width() - 12;
    painter.setPen(tones().ink);
    painter.drawText(QRectF(6, top, room, line), Qt::AlignHCenter,
                     painter.fontMetrics().elidedText(gap, Qt::ElideRight, room));
    painter.setPen(warnings.isEmpty() ? tones().quiet : tones().warning);
    painter.drawText(QRectF(6, top + line, room, line), Qt::AlignHCenter,
                     painter.fontMetrics().elidedText(second, Qt::ElideRight, room));
}

Handle LinerMap::widthHandle(End end, std::size_t index) const {
    const auto& row = engine().design().ports[end][index];
    const double bore = engine().pair().mechanism().bore;
    Handle handle;
    handle.key = fmt::format("/ports/{}/{}/width_mm", name(end), index);
    handle.label =
        (end == End::inlet ? tr("Inlet port row %1") : tr("Exhaust port row %1")).arg(index + 1);
    const QRectF box = portBox(end, index, row.count / 2);
    handle.grip = QLineF(box.topRight(), box.bottomRight());
    handle.at = handle.grip.center();
    HandleAxis axis;
    axis.label = tr("width");
    axis.unit = QStringLiteral("mm");
    axis.value = row.width / units::millimetre;
    axis.min = std::max(0.1, 2.0 * row.cornerRadius / units::millimetre);
    axis.max = 0.99 * bore / units::millimetre;
    // The side moves by half the change of the arc; d(arc)/d(chord) = 1/√(1 − (chord/bore)²).
    const double stretch = 1.0 / std::sqrt(1.0 - std::pow(std::min(0.99, row.width / bore), 2));
    axis.perUnit = QPointF(0.5 * stretch * scale_ * units::millimetre, 0.0);
    handle.axes = {axis};
    handle.edit = [key = handle.key, text = end == End::inlet ? tr("Change inlet port width")
                                                              : tr("Change exhaust port width")](
                      const std::vector<double>& values) {
        return Edit{text, {{key, values[0]}}, {}, {}};
    };
    return handle;
}

std::vector<Handle> LinerMap::makeHandles() const {
    std::vector<Handle> handles;
    for (const End end : bothEnds) {
        for (std::size_t i = 0; i < engine().design().ports[end].size(); ++i)
            handles.push_back(widthHandle(end, i));
    }
    return handles;
}

} // namespace lobewright::ui
