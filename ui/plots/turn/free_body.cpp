#include "ui/plots/turn/free_body.h"

#include "core/solution/pipeline/closer_look.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"

#include <QMenu>
#include <QPainter>

#include <array>

namespace lobewright::ui {

namespace {

struct NamedForce {
    QString name;
    Eigen::Vector2d force;
    QColor colour;
    Qt::PenStyle style;
};

std::array<NamedForce, 5> forcesOf(const loads::PistonPolygon& polygon, const Palette& tones,
                                   End end) {
    return {{{FreeBody::tr("gas"), polygon.gas, tones.ink, Qt::SolidLine},
             {FreeBody::tr("inertia"), polygon.inertia, tones.quiet, Qt::SolidLine},
             {FreeBody::tr("rings"), polygon.rings, tones.quiet, Qt::DotLine},
             {FreeBody::tr("guide"), polygon.guide, tones.ink, Qt::DashLine},
             {FreeBody::tr("track"), polygon.track, tones.side(end), Qt::SolidLine}}};
}

void paintArrow(QPainter& painter, const QPointF& from, const QPointF& to) {
    painter.drawLine(from, to);
    const QLineF line(to, from);
    if (line.length() < 6.0)
        return;
    for (const double turn : {-24.0, 24.0}) {
        QLineF barb = line;
        barb.setLength(7.0);
        barb.setAngle(line.angle() + turn);
        painter.drawLine(barb);
    }
}

} // namespace

FreeBody::FreeBody(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Forces on the pistons"));
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] { update(); });
    connect(&Units::instance(), &Units::changed, this, [this] { update(); });
    offerOptions(*this);
}

DataSheet FreeBody::dataSheet() const {
    const Unit newtons = unitFor(QStringLiteral("N"));
    DataSheet sheet{{tr("shaft angle, °"), tr("piston"), tr("force"),
                     axisText(tr("with the rotation"), QStringLiteral("N")),
                     axisText(tr("inward"), QStringLiteral("N"))},
                    {}};
    for (const End end : solution_ ? solution_->pair.pistons() : std::span<const End>()) {
        const auto found = polygon(end);
        if (!found)
            continue;
        for (const NamedForce& force : forcesOf(*found, Palette::of(*this), end)) {
            sheet.rows.push_back({dataText(cursor_.angle() / units::degree),
                                  end == End::inlet ? tr("inlet") : tr("exhaust"), force.name,
                                  dataText(newtons.shown(force.force.x())),
                                  dataText(newtons.shown(force.force.y()))});
        }
    }
    return sheet;
}

QSize FreeBody::minimumSizeHint() const {
    return {200, 140};
}

void FreeBody::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    update();
}

std::optional<loads::PistonPolygon> FreeBody::polygon(End end) const {
    return solution_ ? solution::pistonPolygon(*solution_, end, cursor_.angle()) : std::nullopt;
}

void FreeBody::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Palette::of(*this).paper);
    const bool isOneSided = solution_ && solution_->pair.mechanism().isOneSided();
    const double half = isOneSided ? width() : 0.5 * width();
    paintPolygon(painter, End::inlet, QRectF(0, 0, half, height()).adjusted(8, 4, -8, -4));
    if (isOneSided)
        return;
    paintPolygon(painter, End::exhaust, QRectF(half, 0, half, height()).adjusted(8, 4, -8, -4));
}

void FreeBody::paintPolygon(QPainter& painter, End end, const QRectF& box) const {
    const auto found = polygon(end);
    if (!found)
        return;
    const Palette& tones = Palette::of(*this);
    const auto forces = forcesOf(*found, tones, end);
    const double line = fontMetrics().height();
    painter.setPen(tones.side(end));
    painter.drawText(box, Qt::AlignHCenter | Qt::AlignTop,
                     pistonTitle(end, solution_->pair.mechanism().isOneSided()));

    // Names and sizes on the left, the polygon on the right of them.
    const double listWidth = std::min(0.5 * box.width(), 11.0 * line);
    double top = box.top() + 1.4 * line;
    QRectF bounds;
    Eigen::Vector2d at = Eigen::Vector2d::Zero();
    std::vector<QPointF> corners{QPointF(0, 0)};
    for (const NamedForce& force : forces) {
        painter.setPen(QPen(force.colour, 2, force.style));
        painter.drawLine(QPointF(box.left(), top + 0.5 * line),
                         QPointF(box.left() + 18, top + 0.5 * line));
        painter.setPen(tones.ink);
        painter.drawText(QRectF(box.left() + 24, top, listWidth - 24, line), Qt::AlignLeft,
                         force.name);
        painter.drawText(QRectF(box.left() + 24, top, listWidth - 24, line), Qt::AlignRight,
                         quantityText(force.force.norm(), QStringLiteral("N"), 0));
        top += 1.15 * line;
        at += force.force;
        corners.emplace_back(at.x(), -at.y());
    }
    const double gap = found->sum().norm();
    painter.setPen(tones.quiet);
    painter.drawText(QRectF(box.left(), top, listWidth, 3 * line), Qt::TextWordWrap,
                     gap < 0.5
                         ? tr("in balance: sum %1").arg(quantityText(0.0, QStringLiteral("N")))
                         : tr("not in balance by %1: the roller is off its track")
                               .arg(quantityText(gap, QStringLiteral("N"), 0)));

    QRectF place = box.adjusted(listWidth + 20, 1.6 * line, -16, -line);
    bounds = QPolygonF(QVector<QPointF>(corners.begin(), corners.end())).boundingRect();
    const double scale = std::min(place.width() / std::max(bounds.width(), 1.0),
                                  place.height() / std::max(bounds.height(), 1.0));
    const auto toScreen = [&](const QPointF& corner) {
        return place.center() + scale * (corner - bounds.center());
    };
    for (size_t i = 0; i < forces.size(); ++i) {
        painter.setPen(QPen(forces[i].colour, 2, forces[i].style));
        paintArrow(painter, toScreen(corners[i]), toScreen(corners[i + 1]));
    }
    painter.setPen(tones.quiet);
    painter.drawText(box, Qt::AlignRight | Qt::AlignBottom, tr("↑ inward, → with the rotation"));
}

void FreeBody::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, accessibleName());
}

} // namespace lobewright::ui
