#include "ui/plots/base/readout_strip.h"

#include "ui/base/palette.h"
#include "ui/base/watching.h"

#include <algorithm>

namespace lobewright::ui {

namespace {
constexpr int margin = 6, swatch = 16, gap = 5, between = 14;
/// Advances are rounded; without it a label that fits exactly is elided.
constexpr int slack = 3;
} // namespace

ReadoutStrip::ReadoutStrip(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    helpByPlace(*this, [this](const QPoint& at) { return helpAt(at); });
    whenLookChanges(*this, [this] { fitHeight(); });
}

void ReadoutStrip::setItems(std::vector<Item> items) {
    items_ = std::move(items);
    fitHeight();
    update();
}

void ReadoutStrip::setValue(size_t index, const QString& value) {
    if (items_[index].value == value)
        return;
    items_[index].value = value;
    fitHeight(); // a longer value may need another line
    update();
}

int ReadoutStrip::lineHeight() const {
    return fontMetrics().height() + 2;
}

int ReadoutStrip::itemWidth(const Item& item) const {
    // Room for the widest usual value, so that nothing jumps while the cursor moves.
    const int usual = item.isFixed ? 0 : fontMetrics().horizontalAdvance(QStringLiteral("−0000.0"));
    const int value = std::max(usual, fontMetrics().horizontalAdvance(item.value));
    return swatch + gap + fontMetrics().horizontalAdvance(item.label) + slack + gap + value +
           fontMetrics().horizontalAdvance(QLatin1Char(' ') + item.unit);
}

std::vector<ReadoutStrip::Place> ReadoutStrip::flow(int width) const {
    std::vector<Place> places;
    int x = margin, y = 2;
    for (size_t i = 0; i < items_.size(); ++i) {
        const int wanted = std::min(itemWidth(items_[i]), std::max(40, width - 2 * margin));
        if (x > margin && x + wanted > width - margin) {
            x = margin;
            y += lineHeight();
        }
        places.push_back({i, QRect(x, y, wanted, lineHeight())});
        x += wanted + between;
    }
    return places;
}

int ReadoutStrip::heightForWidth(int width) const {
    const auto places = flow(width);
    return (places.empty() ? lineHeight() : places.back().box.bottom() + 1) + 2;
}

QSize ReadoutStrip::sizeHint() const {
    return {200, lineHeight() + 4};
}

QSize ReadoutStrip::minimumSizeHint() const {
    return {80, lineHeight() + 4};
}

void ReadoutStrip::fitHeight() {
    // Layouts ask for the height that a width needs only now and then: the strip sees to it.
    const int wanted = heightForWidth(width());
    if (wanted != minimumHeight() || wanted != maximumHeight())
        setFixedHeight(wanted);
}

void ReadoutStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitHeight();
}

void ReadoutStrip::paintEvent(QPaintEvent*) {
    QCPPainter painter(this);
    const Palette& tones = Palette::of(*this);
    painter.fillRect(rect(), tones.paper);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Place& place : flow(width())) {
        const Item& item = items_[place.item];
        QRect box = place.box;
        QPen pen = item.pen;
        pen.setCapStyle(Qt::FlatCap); // a broad one would reach its word
        painter.setPen(pen);
        const double middle = box.center().y() + 0.5;
        painter.drawLine(QPointF(box.left(), middle), QPointF(box.left() + swatch, middle));
        if (item.shape != QCPScatterStyle::ssNone) {
            QCPScatterStyle(item.shape, item.pen.color(), item.pen.color(), 6.0)
                .drawShape(&painter, box.left() + 0.5 * swatch, middle);
        }
        box.setLeft(box.left() + swatch + gap);
        const QString value = item.isFixed && item.value.isEmpty() ? QString()
                              : item.value.isEmpty()               ? tr("none")
                                                                   : item.value + ' ' + item.unit;
        painter.setPen(tones.ink);
        painter.drawText(box, Qt::AlignRight | Qt::AlignVCenter, value);
        box.setRight(box.right() - fontMetrics().horizontalAdvance(value) - gap);
        painter.setPen(tones.quiet);
        painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                         fontMetrics().elidedText(item.label, Qt::ElideRight, box.width()));
    }
}

QString ReadoutStrip::helpAt(const QPoint& at) const {
    for (const Place& place : flow(width())) {
        if (place.box.contains(at))
            return items_[place.item].help;
    }
    return {};
}

} // namespace lobewright::ui
