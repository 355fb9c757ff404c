#include "tests/ui/drawn_text.h"

#include "ui/plots/base/custom_plot.h"

#include <QPaintEngine>

namespace lobewright::ui::test {
namespace {

/// A paint engine that keeps text and strokes and forgets everything else.
class TextEngine : public QPaintEngine {
  public:
    explicit TextEngine(Drawn& found) : QPaintEngine(QPaintEngine::AllFeatures), found_(found) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawPath(const QPainterPath& path) override {
        for (const QPolygonF& line : path.toSubpathPolygons(QTransform()))
            keep(line);
    }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        QPolygonF line(QList<QPointF>(points, points + count));
        if (mode != PolylineMode)
            line.append(points[0]);
        keep(line);
    }
    Type type() const override { return QPaintEngine::User; }

    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QString text = item.text().trimmed();
        if (text.isEmpty())
            return;
        const QRectF box(at.x(), at.y() - item.ascent(), item.width(),
                         item.ascent() + item.descent());
        const QTransform place = painter()->combinedTransform();
        DrawnText drawn{text, place.mapRect(box), {}, place.m11() < 0.99};
        if (painter()->hasClipping())
            drawn.clip = place.mapRect(painter()->clipBoundingRect());
        found_.texts.push_back(drawn);
    }

  private:
    void keep(const QPolygonF& line) {
        const QPen pen = painter()->pen();
        if (pen.style() == Qt::NoPen || pen.color().alpha() == 0)
            return;
        const QTransform place = painter()->combinedTransform();
        DrawnStroke stroke{place.map(line), pen.color(), {}};
        if (painter()->hasClipping())
            stroke.clip = place.mapRect(painter()->clipBoundingRect());
        found_.strokes.push_back(stroke);
    }

    Drawn& found_;
};

class TextDevice : public QPaintDevice {
  public:
    TextDevice(QSize size, Drawn& found) : size_(size), engine_(found) {}
    QPaintEngine* paintEngine() const override { return &engine_; }

  protected:
    int metric(PaintDeviceMetric metric) const override {
        constexpr int dotsPerInch = 96;
        switch (metric) {
        case PdmWidth:
            return size_.width();
        case PdmHeight:
            return size_.height();
        case PdmWidthMM:
            return size_.width() * 254 / (10 * dotsPerInch);
        case PdmHeightMM:
            return size_.height() * 254 / (10 * dotsPerInch);
        case PdmNumColors:
            return 1 << 24;
        case PdmDepth:
            return 32;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        case PdmDevicePixelRatio:
            return 1;
        default:
            return dotsPerInch;
        }
    }

  private:
    QSize size_;
    mutable TextEngine engine_;
};

} // namespace

Drawn drawn(QWidget& widget) {
    Drawn found;
    TextDevice device(widget.size(), found);
    if (auto* plot = qobject_cast<QCustomPlot*>(&widget)) {
        QCPPainter painter;
        painter.begin(&device);
        plot->toPainter(&painter, widget.width(), widget.height());
        painter.end();
    } else {
        widget.render(&device, QPoint(), QRegion(), QWidget::RenderFlags());
    }
    return found;
}

std::vector<DrawnText> drawnText(QWidget& widget) {
    return drawn(widget).texts;
}

bool meets(const DrawnStroke& stroke, const QRectF& box) {
    const QRectF room = stroke.clip.isNull() ? box : box & stroke.clip;
    if (room.isEmpty())
        return false;
    const QLineF edges[] = {{room.topLeft(), room.topRight()},
                            {room.topRight(), room.bottomRight()},
                            {room.bottomRight(), room.bottomLeft()},
                            {room.bottomLeft(), room.topLeft()}};
    for (qsizetype i = 1; i < stroke.line.size(); ++i) {
        const QLineF part(stroke.line[i - 1], stroke.line[i]);
        if (room.contains(part.p1()))
            return true;
        for (const QLineF& edge : edges) {
            if (part.intersects(edge, nullptr) == QLineF::BoundedIntersection)
                return true;
        }
    }
    return false;
}

} // namespace lobewright::ui::test
