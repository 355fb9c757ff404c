#include "ui/report/report_sheet.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QTextDocument>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

constexpr double pixelsPerMillimetre = 96.0 / 25.4;
constexpr double margin = 17.0 * pixelsPerMillimetre;
constexpr double footerHeight = 11.0 * pixelsPerMillimetre;
constexpr double entryName = 150.0;

/// Height of wrapped text.
double heightOf(QPainter& painter, const QString& text, double width) {
    return painter.boundingRect(QRectF(0, 0, width, 1e5), Qt::TextWordWrap, text).height();
}

} // namespace

QFont Sheet::font(double pointSize, bool bold) {
    QFont font;
    font.setPointSizeF(pointSize);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting); // screen pixels mean nothing on paper
    // No ligatures: whoever searches the file for "figure" shall find it.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

Sheet::Sheet(QPagedPaintDevice& device, Footer footer)
    : device_(device), footer_(std::move(footer)), left_(margin), top_(margin),
      width_(device.width() - 2.0 * margin), bottom_(device.height() - margin - footerHeight),
      y_(margin) {
    painter_.begin(&device_);
    painter_.setMode(QCPPainter::pmVectorized);
    painter_.setMode(QCPPainter::pmNoCaching);
    painter_.setRenderHint(QPainter::Antialiasing);
}

Sheet::~Sheet() {
    paintFooter();
    painter_.end();
}

void Sheet::paintFooter() {
    painter_.setFont(font(7.5));
    painter_.setPen(QPen(tones().grid, 1));
    const double line = bottom_ + 0.45 * footerHeight;
    painter_.drawLine(QPointF(left_, line), QPointF(left_ + width_, line));
    painter_.setPen(tones().quiet);
    const QRectF box(left_, line + 4, width_, 14);
    const QFontMetricsF metrics(painter_.font(), &device_);
    painter_.drawText(box, Qt::AlignLeft,
                      metrics.elidedText(footer_.left, Qt::ElideRight, 0.42 * width_));
    painter_.drawText(box, Qt::AlignHCenter, footer_.middle);
    painter_.drawText(box, Qt::AlignRight,
                      footer_.pages ? Words::tr("Page %1 of %2").arg(page_).arg(footer_.pages)
                                    : Words::tr("Page %1").arg(page_));
}

void Sheet::newPage() {
    paintFooter();
    device_.newPage();
    ++page_;
    y_ = top_;
}

QRectF Sheet::take(double height) {
    if (y_ + height > bottom_ && y_ > top_)
        newPage();
    const QRectF box(left_, y_, width_, height);
    y_ += height;
    return box;
}

void Sheet::write(const QString& text, const QFont& textFont, const QColor& colour, double before,
                  double after) {
    painter_.setFont(textFont);
    const double height = heightOf(painter_, text, width_);
    if (y_ > top_)
        space(before);
    const QRectF box = take(height);
    painter_.setPen(colour);
    painter_.drawText(box, Qt::TextWordWrap, text);
    space(after);
}

void Sheet::title(const QString& text) {
    write(text, font(19.0, true), tones().ink, 0.0, 4.0);
}

void Sheet::heading(const QString& text, double follow) {
    if (y_ > top_ && y_ + 34.0 + follow > bottom_)
        newPage();
    write(text, font(12.0, true), tones().ink, 12.0, 4.0);
}

void Sheet::paragraph(const QString& text) {
    write(text, font(9.0), tones().ink, 0.0, 5.0);
}

void Sheet::caption(const QString& text) {
    write(text, font(8.0), tones().quiet, 2.0, 4.0);
}

void Sheet::richText(const QString& html) {
    QTextDocument document;
    document.documentLayout()->setPaintDevice(&device_);
    document.setDocumentMargin(0.0);
    document.setDefaultFont(font(8.0));
    document.setDefaultStyleSheet(QStringLiteral("body { color: %1 }").arg(tones().ink.name()));
    document.setHtml(QStringLiteral("<body>%1</body>").arg(html));
    document.setTextWidth(width_);
    const QRectF box = take(document.size().height());
    painter_.save();
    painter_.translate(box.topLeft());
    document.drawContents(&painter_);
    painter_.restore();
}

void Sheet::entry(const QString& name, const QString& text, const QColor& bar) {
    const double gap = 12.0;
    painter_.setFont(font(8.5, true));
    const double nameHeight = heightOf(painter_, name, entryName - gap);
    painter_.setFont(font(8.5));
    const double textHeight = heightOf(painter_, text, width_ - entryName);
    const QRectF box = take(std::max(nameHeight, textHeight));
    if (bar.isValid())
        painter_.fillRect(QRectF(box.left(), box.top() + 1, 3, box.height() - 2), bar);
    painter_.setPen(tones().ink);
    painter_.drawText(box.adjusted(entryName, 0, 0, 0), Qt::TextWordWrap, text);
    painter_.setFont(font(8.5, true));
    painter_.drawText(
        QRectF(box.left() + (bar.isValid() ? 9 : 0), box.top(), entryName - gap, box.height()),
        Qt::TextWordWrap, name);
    space(5.0);
}

/// Name and value, both in narrower letters where they would not fit beside each other.
void Sheet::writeRow(const Row& row, const QRectF& box, double pointSize) {
    constexpr double gap = 8.0;
    QFont letters = font(pointSize, row.isHeading);
    QFontMetricsF metrics(letters, &device_);
    for (const int stretch : {92, 84, 76}) {
        if (metrics.horizontalAdvance(row.name) + metrics.horizontalAdvance(row.value) + gap <=
            box.width())
            break;
        letters.setStretch(stretch);
        metrics = QFontMetricsF(letters, &device_);
    }
    painter_.setFont(letters);
    painter_.setPen(tones().ink);
    painter_.drawText(box, Qt::AlignRight | Qt::AlignVCenter, row.value);
    painter_.setPen(row.isHeading ? tones().ink : tones().quiet);
    const double room = box.width() - metrics.horizontalAdvance(row.value) - gap;
    painter_.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                      metrics.elidedText(row.name, Qt::ElideRight, room));
}

void Sheet::columns(const std::vector<Row>& rows, int count, double pointSize) {
    const double gap = 18.0;
    const double each = (width_ - gap * (count - 1)) / count;
    const double line = std::ceil(pointSize * 96.0 / 72.0 * 1.38);
    size_t from = 0;
    while (from < rows.size()) {
        if (room() < 3.0 * line)
            newPage();
        const auto fits = static_cast<size_t>(room() / line);
        const size_t wanted =
            (rows.size() - from + static_cast<size_t>(count) - 1) / static_cast<size_t>(count);
        const size_t high = std::min(fits, wanted);
        const QRectF block = take(static_cast<double>(high) * line);
        for (size_t i = 0; i < high * static_cast<size_t>(count) && from < rows.size(); ++from) {
            // A heading at the foot of a column would stand alone.
            if (rows[from].isHeading && i % high == high - 1 && high > 1)
                ++i;
            if (i >= high * static_cast<size_t>(count))
                break;
            const size_t column = i / high;
            const QRectF box(block.left() + static_cast<double>(column) * (each + gap),
                             block.top() + static_cast<double>(i % high) * line, each, line);
            writeRow(rows[from], box, pointSize);
            painter_.setPen(QPen(tones().grid, 0.6));
            painter_.drawLine(box.bottomLeft(), box.bottomRight());
            ++i;
        }
    }
    space(4.0);
}

} // namespace lobewright::ui
