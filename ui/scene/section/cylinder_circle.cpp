#include "ui/scene/section/cylinder_circle.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/drawing.h"
#include "ui/base/words.h"
#include "ui/scene/base/phase.h"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

CylinderCircle::CylinderCircle(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("cylinderCircle"));
    describe(*this, tr("End view of the cylinder circle"),
             tr("Click a cylinder, or press its number, to see it in the section."));
}

void CylinderCircle::setCylinder(int index) {
    cylinder_ = index;
    update();
}

void CylinderCircle::chooseCylinder(int index) {
    if (index < 0 || index >= static_cast<int>(angles_.size()) || index == cylinder_)
        return;
    setCylinder(index);
    Q_EMIT cylinderChosen(index);
}

double CylinderCircle::radiansPerPixel() const {
    return 1.0 / std::max(30.0, engine().design().mechanism.pitchRadius * scale_);
}

void CylinderCircle::layOut() {
    const auto& mechanism = engine().design().mechanism;
    order_ = firingOrder(engine().pair());
    angles_ = mechanism::cylinderAngles(mechanism);
    cylinder_ = std::clamp(cylinder_, 0, std::max(0, static_cast<int>(angles_.size()) - 1));
    // Captions beside the circle where the pane is wide, below it where it is high.
    const QFontMetricsF metrics(font());
    const double line = metrics.height();
    const double column = std::min(0.45 * width(), 24.0 * metrics.averageCharWidth());
    const bool beside = width() - column > height() - 4.0 * line;
    QRectF area = QRectF(rect()).adjusted(6, 6, -6, -6);
    if (beside) {
        captions_ = QRectF(area.right() - column, area.top(), column, area.height());
        area.setRight(captions_.left());
    } else {
        captions_ = QRectF(area.left(), area.bottom() - 4.0 * line, area.width(), 4.0 * line);
        area.setBottom(captions_.top());
    }
    const double outer =
        mechanism.pitchRadius + std::max(0.58 * mechanism.bore, 1.3 * mechanism.roller.width);
    scale_ = std::max(1.0, 0.5 * std::min(area.width(), area.height()) / outer);
    centre_ = area.center();
}

QPointF CylinderCircle::at(double polar, double radius) const {
    return centre_ + scale_ * radius * QPointF(std::sin(polar), -std::cos(polar));
}

QPointF CylinderCircle::middleOf(int cylinder) const {
    return at(angles_[static_cast<std::size_t>(cylinder)], engine().design().mechanism.pitchRadius);
}

bool CylinderCircle::clickedGround(const QPointF& point) {
    const double reach = 0.5 * engine().design().mechanism.bore * scale_;
    for (std::size_t k = 0; k < angles_.size(); ++k) {
        const QPointF way = point - middleOf(static_cast<int>(k));
        if (std::hypot(way.x(), way.y()) <= reach) {
            chooseCylinder(static_cast<int>(k));
            return true;
        }
    }
    return false;
}

void CylinderCircle::keyPressEvent(QKeyEvent* event) {
    if (event->key() >= Qt::Key_1 && event->key() <= Qt::Key_9 &&
        !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier))) {
        chooseCylinder(event->key() - Qt::Key_1);
    } else {
        TurnView::keyPressEvent(event);
    }
}

void CylinderCircle::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    paintTracks(painter);
    for (std::size_t k = 0; k < angles_.size(); ++k)
        paintCylinder(painter, static_cast<int>(k));
    paintShaft(painter);
    paintCaptions(painter);
}

void CylinderCircle::paintTracks(QPainter& painter) const {
    // A band for each track, the deeper in tone the higher the lift; they turn with the shaft.
    const Palette& p = tones();
    const auto& mechanism = engine().design().mechanism;
    const double first = angles_.empty() ? 0.0 : angles_.front();
    constexpr int wedges = 180;
    for (const End end : engine().pair().pistons()) {
        const auto& curve = engine().pair().curve(end);
        const double phase = engine().pair().trackAngle(end, cursor().angle()) + first;
        const double w = mechanism.roller.width;
        const double inner = mechanism.pitchRadius + (end == End::inlet ? -w : 0.04 * w);
        const double outer = mechanism.pitchRadius + (end == End::inlet ? -0.04 * w : w);
        for (int i = 0; i < wedges; ++i) {
            const double from = units::turn * i / wedges, to = units::turn * (i + 1.05) / wedges;
            const double lift = curve.at(phase - 0.5 * (from + to)).y / curve.stroke();
            // Seven flat tones, as for the gas.
            const QColor tone = p.tint(p.side(end), 0.10 + 0.75 * std::round(lift * 6.0) / 6.0);
            painter.setPen(QPen(tone, 0.8)); // closes the seams between neighbours
            painter.setBrush(tone);
            painter.drawPolygon(
                QPolygonF{at(from, inner), at(to, inner), at(to, outer), at(from, outer)});
        }
        outlineOnly(painter, QPen(p.side(end), 1.0));
        painter.drawEllipse(centre_, inner * scale_, inner * scale_);
        painter.drawEllipse(centre_, outer * scale_, outer * scale_);
    }
}

void CylinderCircle::paintCylinder(QPainter& painter, int index) const {
    const Palette& p = tones();
    const double theta = engine().angleOfCylinder(index, cursor().angle());
    const auto gas = engine().gasAt(theta);
    const QPointF middle = middleOf(index);
    const double radius = 0.5 * engine().design().mechanism.bore * scale_;
    const bool chosen = index == cylinder_;
    fillAndOutline(painter,
                   !gas           ? p.panel
                   : gas->burning ? p.burning
                                  : p.gas(gas->burntShare),
                   QPen(p.ink, chosen ? 2.6 : 1.0));
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(p.ink);
    QFont bold = painter.font();
    const QFont plain = bold;
    bold.setBold(true);
    const double line = painter.fontMetrics().height();
    const QString phase = phaseName(phaseAt(engine(), theta));
    const bool roomy = painter.fontMetrics().horizontalAdvance(phase) < 1.85 * radius;
    painter.setFont(bold);
    painter.drawText(
        QRectF(middle.x() - radius, middle.y() - (roomy ? line : 0.5 * line), 2.0 * radius, line),
        Qt::AlignCenter, QString::number(index + 1));
    painter.setFont(plain);
    if (roomy) {
        painter.drawText(QRectF(middle.x() - radius, middle.y(), 2.0 * radius, line),
                         Qt::AlignCenter, phase);
    }
}

void CylinderCircle::paintShaft(QPainter& painter) const {
    const Palette& p = tones();
    const auto& mechanism = engine().design().mechanism;
    const double free =
        mechanism.pitchRadius - std::max(0.5 * mechanism.bore, mechanism.roller.width);
    const double radius = std::max(8.0, 0.42 * free * scale_);
    fillAndOutline(painter, p.metal, QPen(p.ink, 1.0));
    painter.drawEllipse(centre_, radius, radius);
    const double theta = cursor().angle();
    const QPointF way(std::sin(theta), -std::cos(theta));
    painter.setPen(QPen(p.ink, 2.2));
    painter.drawLine(centre_, centre_ + 0.88 * radius * way);
    // Turning direction: an arc with a head outside the shaft.
    const double arc = radius + 6.0;
    outlineOnly(painter, QPen(p.quiet, 1.4));
    painter.drawArc(QRectF(centre_.x() - arc, centre_.y() - arc, 2 * arc, 2 * arc), 60 * 16,
                    -90 * 16);
    const double tip = 120.0 * units::degree;
    const QPointF head = centre_ + arc * QPointF(std::sin(tip), -std::cos(tip));
    const QPointF along(std::cos(tip), std::sin(tip));
    const QPointF across(-along.y(), along.x());
    fillOnly(painter, p.quiet);
    painter.drawPolygon(QPolygonF{head + 6.0 * along, head + 3.5 * across, head - 3.5 * across});
}

void CylinderCircle::paintCaptions(QPainter& painter) const {
    const Palette& p = tones();
    QStringList lines;
    const bool motored = engine().design().running.motored;
    lines << (motored ? tr("Order of inner dead centres") : tr("Firing order")) << order_.text();
    const double even = order_.evenInterval();
    lines << (even > 0.0 ? tr("every %1 of the shaft").arg(words::degrees(even, 1))
                         : tr("at uneven intervals"));
    lines << tr("Shaft %1, seen from the inlet side").arg(words::degrees(cursor().angle(), 1));
    const double line = painter.fontMetrics().height();
    const bool beside = captions_.height() > 5.0 * line;
    QFont bold = painter.font();
    const QFont plain = bold;
    bold.setBold(true);
    const auto heightOf = [&](const QString& text) {
        return beside ? painter.boundingRect(captions_, Qt::TextWordWrap, text).height() : line;
    };
    double total = 0.0;
    for (const QString& text : lines)
        total += heightOf(text);
    double y = captions_.center().y() - 0.5 * total;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        painter.setFont(i == 1 ? bold : plain);
        painter.setPen(i == 1 ? p.ink : p.quiet);
        const double height = heightOf(lines[i]);
        const QRectF box(captions_.left(), y, captions_.width(), height);
        if (beside) {
            painter.drawText(box, Qt::AlignLeft | Qt::TextWordWrap, lines[i]);
        } else {
            painter.drawText(box, Qt::AlignHCenter,
                             painter.fontMetrics().elidedText(lines[i], Qt::ElideRight,
                                                              static_cast<int>(box.width())));
        }
        y += height;
    }
    painter.setFont(plain);
}

} // namespace lobewright::ui
