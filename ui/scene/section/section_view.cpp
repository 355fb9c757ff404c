#include "ui/scene/section/section_view.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/plot_export.h"
#include "ui/scene/base/phase.h"
#include "ui/scene/section/engine_painter.h"
#include "ui/scene/section/heat_key.h"
#include "ui/scene/section/strip_painter.h"

#include <QLinearGradient>
#include <QMenu>
#include <QPainter>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double sideMargin = 6.0, endMargin = 4.0; ///< [px]
constexpr double fadeHeight = 26.0;                 ///< [px]
constexpr double oppositeWithin = 1e-6;             ///< [rad]

QRectF drawingArea(const QSizeF& size) {
    return QRectF(QPointF(0.0, 0.0), size).adjusted(sideMargin, endMargin, -sideMargin, -endMargin);
}

std::string rowPath(End end, std::size_t row, const char* key) {
    return fmt::format("/ports/{}/{}/{}", name(end), row, key);
}

} // namespace

SectionView::SectionView(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("sectionView"));
    describe(*this, tr("Section through one cylinder"),
             tr("Drag to turn the shaft. Drag the ends of a port to move or resize its row."));
    hand().setApproach(64.0);
}

void SectionView::setPartNames(PartNames& names) {
    names_ = &names;
    connect(&names, &PartNames::shownChanged, this, &SectionView::refresh);
}

void SectionView::addOptions(QMenu& menu) {
    if (names_)
        names_->addAction(menu);
    addPictureActions(menu, *this, tr("Section through a cylinder"));
}

void SectionView::setCylinder(int index) {
    if (index == cylinder_)
        return;
    cylinder_ = index;
    refresh();
}

double SectionView::turningWay(const QPointF& drag) const {
    // In front of the shaft the tracks pass downwards: a vertical drag takes them along.
    const double perPixel = 1.0 / (frame().scale() * engine().pair().mechanism().pitchRadius);
    return drag.x() + drag.y() * perPixel / radiansPerPixel();
}

double SectionView::angle() const {
    return engine().angleOfCylinder(cylinder_, cursor().angle());
}

void SectionView::layOut() {
    if (cylinder_ >= engine().cylinders())
        cylinder_ = 0;
    frame_ = EngineFrame(engine(), drawingArea(size()), QFontMetricsF(font()).height());
}

void SectionView::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    paintPicture(painter, frame_);
}

void SectionView::paintInto(QPainter& painter, const QSizeF& size) const {
    painter.fillRect(QRectF(QPointF(0, 0), size), tones().paper);
    if (engine().isEmpty())
        return;
    paintPicture(painter,
                 EngineFrame(engine(), drawingArea(size), QFontMetricsF(painter.font()).height()));
}

std::optional<int> SectionView::opposite() const {
    const auto angles = mechanism::cylinderAngles(engine().design().mechanism);
    const double own = angles[static_cast<std::size_t>(cylinder_)];
    for (std::size_t k = 0; k < angles.size(); ++k) {
        if (std::abs(std::remainder(angles[k] - own - units::pi, units::turn)) < oppositeWithin)
            return static_cast<int>(k);
    }
    return std::nullopt;
}

void SectionView::paintPicture(QPainter& painter, const EngineFrame& frame) const {
    const double theta = angle();
    painter.save();
    painter.setClipRect(frame.machine());
    EnginePainter picture(painter, engine(), frame, tones(), theta, !names_ || names_->areShown());
    if (const auto other = opposite())
        picture.paintOpposite(engine().angleOfCylinder(*other, cursor().angle()));
    picture.paint();
    fadeOut(painter, frame);
    painter.restore();
    StripPainter strips(painter, engine(), frame, tones(), theta);
    for (const End end : engine().pair().pistons())
        strips.paint(end);
    paintHeading(painter, frame, theta);
    paintFoot(painter, frame, theta);
    if (frame.hasStrips())
        strips.paintForceScale(frame.foot());
}

/// Below the shaft the machine goes on: the picture ends softly where it is cut off.
void SectionView::fadeOut(QPainter& painter, const EngineFrame& frame) const {
    const QRectF machine = frame.machine();
    if (frame.at(0.0, -frame.pitchRadius() - frame.halfTrack()).y() < machine.bottom())
        return;
    const QRectF edge(machine.left(), machine.bottom() - fadeHeight, machine.width(), fadeHeight);
    QLinearGradient veil(edge.topLeft(), edge.bottomLeft());
    QColor clear = tones().paper;
    clear.setAlpha(0);
    veil.setColorAt(0.0, clear);
    veil.setColorAt(1.0, tones().paper);
    painter.fillRect(edge, veil);
}

void SectionView::paintHeading(QPainter& painter, const EngineFrame& frame, double theta) const {
    const QFont plain = painter.font();
    const QFont large =
        inBold(sized(plain, frame.hasStrips() ? TypeSize::heading : TypeSize::body));
    const auto gas = engine().gasAt(theta);
    const QRectF& heading = frame.heading();
    double y = heading.top() + 2.0;
    const auto put = [&](const QString& text, const QFont& face, const QColor& tone) {
        painter.setFont(face);
        painter.setPen(tone);
        const double line = painter.fontMetrics().height();
        painter.drawText(QRectF(heading.left(), y, heading.width(), line), Qt::AlignCenter,
                         painter.fontMetrics().elidedText(text, Qt::ElideRight,
                                                          static_cast<int>(heading.width())));
        y += line;
        painter.setFont(plain);
    };
    const QString phase = phaseName(phaseAt(engine(), theta));
    const QString state = gas ? quantityText(gas->pressure, QStringLiteral("bar"), 2) +
                                    QStringLiteral(",  ") +
                                    quantityText(gas->temperature, QStringLiteral("K"), 0) +
                                    (engine().isSolved() ? QString() : tr(" (solving)"))
                              : tr("gas not solved");
    if (frame.hasStrips()) {
        put(phase, large, tones().ink);
        put(state, plain, tones().ink);
        y += 4.0;
    } else {
        put(phase + QStringLiteral(",  ") + state, large, tones().ink);
    }
    const double line = painter.fontMetrics().height();
    paintHeatKey(painter, tones(), QRectF(heading.left(), y, heading.width(), line),
                 gas ? std::optional(gas->temperature) : std::nullopt);
}

void SectionView::paintFoot(QPainter& painter, const EngineFrame& frame, double theta) const {
    const QRectF& foot = frame.foot();
    QString which = tr("Cylinder %1 of %2, gap %3")
                        .arg(cylinder_ + 1)
                        .arg(engine().cylinders())
                        .arg(quantityText(engine().pair().gap(theta) / units::millimetre,
                                          QStringLiteral("mm"), 1));
    if (!engine().design().mechanism.piston)
        which += tr(", piston length assumed");
    const QString shaft = tr("Shaft %1, cycle %2")
                              .arg(words::degrees(cursor().angle(), 1),
                                   words::degrees(engine().cycleAt(theta).angle, 1));
    const auto& metrics = painter.fontMetrics();
    const double wide = metrics.horizontalAdvance(which) + 12.0;
    painter.setPen(tones().quiet);
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(which, Qt::ElideRight, static_cast<int>(foot.width())));
    const double left = std::max(wide, 0.5 * (foot.width() - metrics.horizontalAdvance(shaft)));
    if (left + metrics.horizontalAdvance(shaft) > foot.width())
        return;
    painter.setPen(tones().ink);
    painter.drawText(foot.adjusted(left, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, shaft);
}

Handle SectionView::edgeHandle(End end, std::size_t index) const {
    const auto& row = engine().design().ports[end][index];
    Handle handle;
    handle.key = rowPath(end, index, "edge_mm");
    handle.label = (end == End::inlet ? tr("Inlet port row %1, inner edge")
                                      : tr("Exhaust port row %1, inner edge"))
                       .arg(index + 1);
    const double z = frame().portPlace(end, row.edge);
    const double side = index % 2 == 0 ? -1.0 : 1.0;
    const double b = frame().halfBore(), w = frame().wall();
    handle.grip = QLineF(frame().at(z, side * (b - 0.6 * w)), frame().at(z, side * (b + 1.6 * w)));
    handle.at = handle.grip.center();
    HandleAxis axis;
    axis.label = tr("edge");
    axis.unit = QStringLiteral("mm");
    axis.value = row.edge / units::millimetre;
    axis.min = 0.1;
    axis.max = engine().pair().curve(end).stroke() / units::millimetre;
    axis.perUnit = QPointF(-SectionFrame::outward(end) * frame().scale() * units::millimetre, 0.0);
    handle.axes = {axis};
    handle.edit = [key = handle.key, text = end == End::inlet ? tr("Move inlet port edge")
                                                              : tr("Move exhaust port edge")](
                      const std::vector<double>& values) {
        return Edit{text, {{key, values[0]}}, {}, {}};
    };
    return handle;
}

Handle SectionView::heightHandle(End end, std::size_t index) const {
    const auto& row = engine().design().ports[end][index];
    Handle handle = edgeHandle(end, index);
    handle.key = rowPath(end, index, "height_mm");
    handle.label =
        (end == End::inlet ? tr("Inlet port row %1, height") : tr("Exhaust port row %1, height"))
            .arg(index + 1);
    const QPointF shift = frame().at(frame().portPlace(end, row.edge - row.height), 0) -
                          frame().at(frame().portPlace(end, row.edge), 0);
    handle.grip.translate(shift);
    handle.at += shift;
    HandleAxis& axis = handle.axes[0];
    axis.label = tr("height");
    axis.value = row.height / units::millimetre;
    axis.min = std::max(0.1, 2.0 * row.cornerRadius / units::millimetre);
    axis.perUnit = -axis.perUnit;
    handle.edit = [key = handle.key, text = end == End::inlet ? tr("Change inlet port height")
                                                              : tr("Change exhaust port height")](
                      const std::vector<double>& values) {
        return Edit{text, {{key, values[0]}}, {}, {}};
    };
    return handle;
}

std::vector<Handle> SectionView::makeHandles() const {
    std::vector<Handle> handles;
    for (const End end : bothEnds) {
        for (std::size_t i = 0; i < engine().design().ports[end].size(); ++i) {
            handles.push_back(edgeHandle(end, i));
            handles.push_back(heightHandle(end, i));
        }
    }
    return handles;
}

} // namespace lobewright::ui
