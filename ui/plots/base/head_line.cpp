#include "ui/plots/base/head_line.h"

#include "ui/base/palette.h"
#include "ui/plots/base/low_frames.h"

namespace lobewright::ui {

namespace {

constexpr int side = 4, below = 2; // [px]
constexpr int flow = Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap;

} // namespace

HeadLine::HeadLine(QCustomPlot& plot, const char* layer)
    : QCPLayerable(&plot, QLatin1String(layer)) {
    QObject::connect(&plot, &QCustomPlot::afterLayout, this, [this] { makeRoom(); });
}

QRect HeadLine::place() const {
    const QRect all = parentPlot()->viewport();
    const QFontMetrics metrics(parentPlot()->xAxis->labelFont());
    const int wide = all.width() - 2 * side;
    const QRect words = metrics.boundingRect(QRect(0, 0, wide, all.height()), flow, text_);
    return {all.left() + side, all.top(), wide, text_.isEmpty() ? 0 : words.height() + below};
}

bool HeadLine::needsRoom() const {
    return parentPlot()->plotLayout()->margins().top() != place().height();
}

void HeadLine::makeRoom() {
    if (!needsRoom())
        return;
    QCPLayoutGrid& layout = *parentPlot()->plotLayout();
    QMargins margins = layout.margins();
    margins.setTop(place().height());
    layout.setMargins(margins);
    layOutAgain(*parentPlot());
}

void HeadLine::applyDefaultAntialiasingHint(QCPPainter* painter) const {
    painter->setAntialiasing(true);
}

void HeadLine::draw(QCPPainter* painter) {
    painter->setFont(parentPlot()->xAxis->labelFont());
    painter->setPen(Palette::of(*parentPlot()).ink);
    painter->drawText(place(), flow, text_);
}

} // namespace lobewright::ui
