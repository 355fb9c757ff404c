#include "ui/plots/base/bar_table.h"

#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"

#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double edge = 8.0; // [px]
constexpr double valueShare = 0.2;
/// Labels take what the longest of them needs, within these bounds.
constexpr double leastLabelShare = 0.46, mostLabelShare = 0.62;

double largestOf(const BarTable::Section& section) {
    double largest = section.scale;
    for (const BarTable::Row& row : section.rows) {
        largest = std::max(
            {largest, std::abs(row.value.value_or(0.0)), std::abs(row.before.value_or(0.0))});
    }
    return withoutNoise(largest);
}

} // namespace

BarTable::BarTable(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    connect(&Units::instance(), &Units::changed, this, [this] { update(); });
    helpByPlace(*this, [this](const QPoint& at) { return helpAt(at); });
}

void BarTable::setSections(std::vector<Section> sections) {
    sections_ = std::move(sections);
    places_.clear();
    QStringList text;
    for (const Section& section : sections_) {
        text << section.title << section.remark;
        for (const Row& row : section.rows)
            text << row.label + ' ' + (row.value ? quantityText(*row.value, row.unit) : QString());
    }
    setAccessibleDescription(text.join(QLatin1String(". ")));
    update();
}

DataSheet BarTable::dataSheet() const {
    DataSheet sheet{{tr("part"), tr("quantity"), tr("value"), tr("baseline"), tr("unit")}, {}};
    for (const Section& section : sections_) {
        for (const Row& row : section.rows) {
            const Unit unit = unitFor(row.unit);
            const auto cell = [&](const std::optional<double>& value) {
                return value ? dataText(unit.shown(*value)) : QString();
            };
            sheet.rows.push_back(
                {section.title, row.label, cell(row.value), cell(row.before), unit.text});
        }
    }
    return sheet;
}

QSize BarTable::minimumSizeHint() const {
    return {160, 90};
}

double BarTable::lineHeight() const {
    return fontMetrics().height() * 1.3;
}

void BarTable::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Palette::of(*this).paper);
    places_.clear();
    double top = 2.0 - scrolled_;
    for (const Section& section : sections_)
        top = paintSection(painter, section, top);
    contentHeight_ = top + scrolled_;
}

double BarTable::paintSection(QPainter& painter, const Section& section, double top) {
    const Palette& tones = Palette::of(*this);
    const double line = lineHeight();
    painter.setFont(inBold(font()));
    painter.setPen(tones.ink);
    painter.drawText(QRectF(edge, top, width() - 2 * edge, line), Qt::AlignVCenter, section.title);
    top += line;
    painter.setFont(font());
    if (!section.remark.isEmpty()) {
        painter.setPen(tones.quiet);
        QRectF place(edge, top, width() - 2 * edge, 4 * line);
        QRectF used;
        painter.drawText(place, Qt::TextWordWrap, section.remark, &used);
        top += used.height() + 0.2 * line;
    }
    if (section.oneBar) {
        paintParts(painter, section, QRectF(edge, top, width() - 2 * edge, line));
        top += 1.3 * line;
    }
    for (const Row& row : section.rows) {
        const QRectF box(edge, top, width() - 2 * edge, line);
        paintRow(painter, section, row, box);
        places_.push_back({&row, box});
        top += line;
    }
    return top + 0.4 * line;
}

double BarTable::labelWidthOf(const Section& section, double width) const {
    double widest = 0.0;
    for (const Row& row : section.rows)
        widest = std::max(widest, fontMetrics().horizontalAdvance(row.label) + 8.0);
    return std::clamp(widest, leastLabelShare * width, mostLabelShare * width);
}

void BarTable::paintRow(QPainter& painter, const Section& section, const Row& row,
                        const QRectF& box) {
    const Palette& tones = Palette::of(*this);
    const double labelWidth = labelWidthOf(section, box.width()),
                 valueWidth = valueShare * box.width();
    painter.setPen(tones.ink);
    painter.drawText(
        QRectF(box.left(), box.top(), labelWidth - 4, box.height()), Qt::AlignVCenter,
        fontMetrics().elidedText(row.label, Qt::ElideRight, static_cast<int>(labelWidth - 4)));
    const QString value = row.value ? quantityText(*row.value, row.unit) : tr("none");
    painter.drawText(QRectF(box.left() + labelWidth, box.top(), valueWidth, box.height()),
                     Qt::AlignVCenter | Qt::AlignRight, value);
    const double largest = largestOf(section);
    if (largest <= 0.0)
        return;
    const double left = box.left() + labelWidth + valueWidth + 8;
    const double whole = box.right() - left;
    const QColor colour = colourOf(tones, row.tone);
    const double share = std::abs(row.value.value_or(0.0)) / largest;
    const QRectF bar(left, box.top() + 0.22 * box.height(), share * whole, 0.56 * box.height());
    painter.setPen(QPen(colour, 1));
    // Hatched where the value is negative: it goes the other way.
    if (row.value.value_or(0.0) < 0.0)
        painter.setBrush(QBrush(colour, Qt::BDiagPattern));
    else
        painter.setBrush(tones.tint(colour, 0.45));
    painter.drawRect(bar);
    if (row.before) {
        const double x = left + std::abs(*row.before) / largest * whole;
        painter.setPen(QPen(tones.baseline(colour), 3));
        painter.drawLine(QPointF(x, box.top() + 2), QPointF(x, box.bottom() - 2));
    }
}

void BarTable::paintParts(QPainter& painter, const Section& section, const QRectF& box) {
    double sum = 0.0;
    for (const Row& row : section.rows)
        sum += std::max(row.value.value_or(0.0), 0.0);
    if (sum <= 0.0)
        return;
    const Palette& tones = Palette::of(*this);
    double left = box.left();
    for (size_t i = 0; i < section.rows.size(); ++i) {
        const Row& row = section.rows[i];
        const double part = std::max(row.value.value_or(0.0), 0.0) / sum;
        const QRectF area(left, box.top(), part * box.width(), box.height());
        left = area.right();
        const QColor colour = colourOf(tones, row.tone);
        fillAndOutline(painter, tones.tint(colour, i % 2 == 0 ? 0.5 : 0.25),
                       QPen(tones.paper, 1.5));
        painter.drawRect(area);
        const QString text = QStringLiteral("%1 %").arg(100.0 * part, 0, 'f', 0);
        if (fontMetrics().horizontalAdvance(text) + 6 < area.width()) {
            painter.setPen(tones.ink);
            painter.drawText(area, Qt::AlignCenter, text);
        }
    }
}

void BarTable::scrollBy(double pixels) {
    scrolled_ = std::clamp(scrolled_ + pixels, 0.0, std::max(0.0, contentHeight_ - height()));
    update();
}

void BarTable::wheelEvent(QWheelEvent* event) {
    scrollBy(-0.5 * event->angleDelta().y());
    event->accept();
}

void BarTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Down || event->key() == Qt::Key_PageDown)
        scrollBy(3 * lineHeight());
    else if (event->key() == Qt::Key_Up || event->key() == Qt::Key_PageUp)
        scrollBy(-3 * lineHeight());
    else
        QWidget::keyPressEvent(event);
}

void BarTable::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    scrollBy(0.0);
}

QString BarTable::helpAt(const QPoint& at) const {
    for (const Place& place : places_) {
        if (place.box.contains(at)) {
            return place.row->label +
                   (place.row->help.isEmpty() ? QString() : QLatin1Char('\n') + place.row->help);
        }
    }
    return {};
}

} // namespace lobewright::ui
