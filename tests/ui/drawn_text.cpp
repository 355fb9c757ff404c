#include "tests/ui/drawn_text.h"

#include "ui/plots/base/custom_plot.h"

#include <QPaintEngine>

namespace lobewright::ui::test {
namespace {

/// A paint engine that keeps text and forgets everything else.
class TextEngine : public QPaintEngine {
  public:
    explicit TextEngine(std::vector<DrawnText>& found)
        : QPaintEngine(QPaintEngine::AllFeatures), found_(found) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
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
        found_.push_back(drawn);
    }

  private:
    std::vector<DrawnText>& found_;
};

class TextDevice : public QPaintDevice {
  public:
    TextDevice(QSize size, std::vector<DrawnText>& found) : size_(size), engine_(found) {}
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

std::vector<DrawnText> drawnText(QWidget& widget) {
    std::vector<DrawnText> found;
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

} // namespace lobewright::ui::test
