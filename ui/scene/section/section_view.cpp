#include "ui/scene/section/section_view.h"

#include "core/units.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/scene/base/phase.h"
#include "ui/scene/section/section_painter.h"

#include <QPainter>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double sideMargin = 6.0;

double captionHeight(const QFontMetricsF& metrics) {
    return 2.0 * metrics.height() + 10.0;
}

QRectF machineArea(const QSizeF& size, const QFontMetricsF& metrics) {
    const double band = captionHeight(metrics);
    return QRectF(sideMargin, band, size.width() - 2.0 * sideMargin,
                  std::max(40.0, size.height() - 2.0 * band));
}

std::string rowPath(End end, std::size_t row, const char* key) {
    return fmt::format("/ports/{}/{}/{}", name(end), row, key);
}

} // namespace

SectionView::SectionView(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("sectionView"));
    setAccessibleName(tr("Section through one cylinder"));
    setToolTip(tr("Drag to turn the shaft. Drag the ends of a port to move or resize its row."));
}

void SectionView::setCylinder(int index) {
    if (index == cylinder_)
        return;
    cylinder_ = index;
    refresh();
}

double SectionView::turningWay(const QPointF& drag) const {
    // The tracks pass up and down at the pitch radius: a vertical drag takes them along.
    const double perPixel = 1.0 / (frame_.scale() * engine().pair().mechanism().pitchRadius);
    return drag.x() + drag.y() * perPixel / radiansPerPixel();
}

double SectionView::angle() const {
    return engine().angleOfCylinder(cylinder_, cursor().angle());
}

void SectionView::layOut() {
    if (cylinder_ >= engine().cylinders())
        cylinder_ = 0;
    frame_ = SectionFrame(engine(), machineArea(size(), QFontMetricsF(font())));
}

void SectionView::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    SectionPainter(painter, engine(), frame_, tones(), angle()).paint();
    paintCaptions(painter, frame_, size(), angle());
}

void SectionView::paintInto(QPainter& painter, const QSizeF& size) const {
    painter.fillRect(QRectF(QPointF(0, 0), size), tones().paper);
    if (engine().isEmpty())
        return;
    const SectionFrame frame(engine(), machineArea(size, QFontMetricsF(painter.font())));
    SectionPainter(painter, engine(), frame, tones(), angle()).paint();
    paintCaptions(painter, frame, size, angle());
}

void SectionView::paintCaptions(QPainter& painter, const SectionFrame& frame, const QSizeF& size,
                                double theta) const {
    const QFont plain = painter.font();
    QFont bold = plain;
    bold.setBold(true);
    const double left = frame.at(frame.linerEnd(End::inlet), 0).x();
    const double right = frame.at(frame.linerEnd(End::exhaust), 0).x();
    const double line = painter.fontMetrics().height();
    const auto row = [&](double y) { return QRectF(left, y, right - left, line); };
    const auto put = [&](const QRectF& box, int align, const QString& text) {
        const QString shown =
            painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(box.width()));
        // On paper of its own, so that a track passing behind leaves it readable.
        const QRectF written = painter.boundingRect(box, align | Qt::AlignVCenter, shown);
        painter.fillRect(written.adjusted(-3, 0, 3, 0), tones().paper);
        painter.drawText(box, align | Qt::AlignVCenter, shown);
    };

    const QString phase = phaseName(phaseAt(engine(), theta));
    const auto gas = engine().gasAt(theta);
    painter.setFont(bold);
    painter.setPen(tones().ink);
    put(row(4), Qt::AlignHCenter,
        gas ? quantityText(gas->pressure, QStringLiteral("bar"), 2) + QStringLiteral("  ") + phase
            : phase);
    painter.setFont(plain);
    painter.setPen(tones().quiet);
    if (gas)
        put(row(4 + line), Qt::AlignHCenter,
            tr("%1, %2 % burnt gas%3")
                .arg(quantityText(gas->temperature, QStringLiteral("K"), 0),
                     words::number(100.0 * gas->burntShare, 0),
                     engine().isSolved() ? QString() : tr(" (solving)")));
    else
        put(row(4 + line), Qt::AlignHCenter, tr("gas not solved"));

    const double foot = size.height() - 2.0 * line - 6.0;
    const auto moment = engine().cycleAt(theta);
    painter.setPen(tones().ink);
    put(row(foot), Qt::AlignHCenter,
        tr("Shaft %1, cycle %2")
            .arg(words::degrees(cursor().angle(), 1), words::degrees(moment.angle, 1)));
    painter.setPen(tones().quiet);
    QString which = tr("Cylinder %1 of %2, gap %3")
                        .arg(cylinder_ + 1)
                        .arg(engine().cylinders())
                        .arg(quantityText(engine().pair().gap(theta) / units::millimetre,
                                          QStringLiteral("mm"), 1));
    if (!engine().design().mechanism.piston)
        which += tr(", piston length assumed");
    put(row(foot + line), Qt::AlignHCenter, which);

    painter.setFont(bold);
    const double wide = 0.5 * (right - left);
    const double top = 4.0 + 2.0 * line;
    PerEnd<QString> texts;
    bool fits = frame.at(0, -frame.halfBore() - frame.wall()).y() > top + line + 26.0;
    for (const End end : bothEnds) {
        const double open = engine().timing().area(end, theta) / engine().timing().fullArea(end);
        texts[end] = (end == End::inlet ? tr("Inlet %1 % open") : tr("Exhaust %1 % open"))
                         .arg(words::number(100.0 * open, 0));
        fits = fits && painter.fontMetrics().horizontalAdvance(texts[end]) < wide;
    }
    for (const End end : bothEnds) {
        painter.setPen(tones().side(end));
        if (fits)
            put(QRectF(end == End::inlet ? left : left + wide, top, wide, line),
                end == End::inlet ? Qt::AlignLeft : Qt::AlignRight, texts[end]);
    }
    painter.setFont(plain);
}

Handle SectionView::edgeHandle(End end, std::size_t index) const {
    const auto& row = engine().design().ports[end][index];
    Handle handle;
    handle.key = rowPath(end, index, "edge_mm");
    handle.label = (end == End::inlet ? tr("Inlet port row %1, inner edge")
                                      : tr("Exhaust port row %1, inner edge"))
                       .arg(index + 1);
    const double z = frame_.portPlace(end, row.edge);
    const double side = index % 2 == 0 ? -1.0 : 1.0;
    const double b = frame_.halfBore(), w = frame_.wall();
    handle.grip = QLineF(frame_.at(z, side * (b - 0.6 * w)), frame_.at(z, side * (b + 1.6 * w)));
    handle.at = handle.grip.center();
    HandleAxis axis;
    axis.label = tr("edge");
    axis.unit = QStringLiteral("mm");
    axis.value = row.edge / units::millimetre;
    axis.min = 0.1;
    axis.max = engine().pair().curve(end).stroke() / units::millimetre;
    axis.perUnit = QPointF(-SectionFrame::outward(end) * frame_.scale() * units::millimetre, 0.0);
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
    const QPointF shift = frame_.at(frame_.portPlace(end, row.edge - row.height), 0) -
                          frame_.at(frame_.portPlace(end, row.edge), 0);
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
    for (const End end : bothEnds)
        for (std::size_t i = 0; i < engine().design().ports[end].size(); ++i) {
            handles.push_back(edgeHandle(end, i));
            handles.push_back(heightHandle(end, i));
        }
    return handles;
}

} // namespace lobewright::ui
