#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/picture/picture_view.h"

namespace lobewright::ui {

namespace {
constexpr int loupeSide = 150;
constexpr double loupeZoom = 6.0; ///< pixels of the screen a pixel of the picture, at least
constexpr double dot = 4.0;
} // namespace

void PictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Palette& tones = Palette::of(*this);
    painter.fillRect(rect(), tones.panel);
    if (image_.isNull()) {
        painter.setPen(tones.quiet);
        painter.drawText(rect(), Qt::AlignCenter, tr("Open a picture or a PDF, or drop one here"));
        return;
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform, zoom_ < 2.0);
    painter.drawImage(QRectF(corner_, QSizeF(image_.size()) * zoom_), image_);
    painter.setRenderHint(QPainter::Antialiasing);
    if (marks_.axis)
        paintMark(painter, *marks_.axis, tones.inlet);
    if (marks_.scale)
        paintMark(painter, *marks_.scale, tones.warning);
    for (const PictureMark& mark : marks_.readings)
        paintMark(painter, mark, tones.exhaust);
    if (!marks_.open.empty())
        paintMark(painter, {marks_.tool, marks_.open, {}}, tones.cursor);
    if (isOver_ && !isMoving_)
        paintLoupe(painter);
}

void PictureView::paintMark(QPainter& painter, const PictureMark& mark,
                            const QColor& colour) const {
    QPolygonF points;
    for (const picture::Place place : mark.places)
        points << shown(place);
    const auto stroke = [&](const auto& draw) {
        // Legible over light and dark.
        outlineOnly(painter, QPen(QColor(255, 255, 255, 190), 4.0));
        draw();
        painter.setPen(QPen(colour, 1.8));
        draw();
    };
    if (mark.tool == PictureTool::axis && points.size() == 2) {
        const QPointF along = (points[1] - points[0]) * 100.0;
        stroke([&] { painter.drawLine(points[0] - along, points[1] + along); });
    } else if (mark.tool == PictureTool::circle) {
        if (const auto circle = picture::circle(mark.places)) {
            stroke([&] {
                painter.drawEllipse(shown(circle->centre), zoom_ * circle->radius,
                                    zoom_ * circle->radius);
            });
        }
    } else if (points.size() > 1) {
        stroke([&] { painter.drawPolyline(points); });
    }
    for (const QPointF& point : points) {
        fillAndOutline(painter, colour, QPen(Qt::white, 1.0));
        painter.drawEllipse(point, dot, dot);
    }
}

void PictureView::paintLoupe(QPainter& painter) const {
    const bool isRight = mouse_.x() < 0.5 * width(); // away from the mouse
    const QRectF place(isRight ? width() - loupeSide - 8.0 : 8.0, 8.0, loupeSide, loupeSide);
    const double enlarged = std::max(loupeZoom, 2.0 * zoom_);
    const picture::Place under = at(mouse_);
    const double half = 0.5 * loupeSide / enlarged;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.setClipRect(place);
    painter.fillRect(place, Palette::of(*this).panel);
    const QPointF corner = place.center() - enlarged * QPointF(under.x, under.y);
    const QRectF source =
        QRectF(under.x - half - 1.0, under.y - half - 1.0, 2.0 * half + 2.0, 2.0 * half + 2.0)
            .intersected(QRectF(image_.rect()))
            .toAlignedRect();
    painter.drawImage(QRectF(corner + enlarged * source.topLeft(), source.size() * enlarged),
                      image_, source);
    const QPointF middle = place.center();
    for (const auto& [colour, width] :
         {std::pair(QColor(255, 255, 255, 190), 3.0), std::pair(Palette::of(*this).cursor, 1.0)}) {
        painter.setPen(QPen(colour, width));
        painter.drawLine(QPointF(place.left(), middle.y()), QPointF(place.right(), middle.y()));
        painter.drawLine(QPointF(middle.x(), place.top()), QPointF(middle.x(), place.bottom()));
    }
    painter.restore();
    outlineOnly(painter, QPen(Palette::of(*this).ink, 1.0));
    painter.drawRect(place);
}

} // namespace lobewright::ui
