#include "ui/scene/walk/cause_bars.h"

#include "ui/base/core_text.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"

#include <algorithm>

namespace lobewright::ui {

CauseBars::CauseBars(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("causeBars"));
    setAccessibleName(tr("Causes of the change"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void CauseBars::setCauses(const lessons::Task& task, const lessons::Verdict& verdict,
                          double guess) {
    task_ = task;
    guess_ = guess;
    answer_ = verdict.answer;
    bars_.clear();
    if (!verdict.causes.empty()) {
        if (verdict.before != 0.0)
            bars_.push_back({tr("before"), 0.0, verdict.before});
        double reached = verdict.before;
        for (const lessons::Cause& cause : verdict.causes) {
            bars_.push_back({coreText(cause.what), reached, reached + cause.amount});
            reached += cause.amount;
        }
    }
    QStringList read;
    for (const Bar& bar : bars_)
        read << bar.words + QStringLiteral(": ") + valueText(bar.to - bar.from);
    setAccessibleDescription(read.join(QStringLiteral("; ")));
    setToolTip(bars_.empty() ? QString()
                             : tr("Each bar is one cause; together they lead to the answer. The "
                                  "dashed line is your guess."));
    updateGeometry();
    update();
}

void CauseBars::clear() {
    bars_.clear();
    setAccessibleDescription({});
    updateGeometry();
    update();
}

double CauseBars::rowHeight() const {
    return 2.0 * QFontMetricsF(font()).height() + 4.0;
}

QSize CauseBars::sizeHint() const {
    const double rows = static_cast<double>(bars_.size()) + (bars_.empty() ? 0.0 : 0.6);
    return {240, static_cast<int>(rows * rowHeight())};
}

QString CauseBars::valueText(double si) const {
    const QString text = amountText(withDecimals(std::abs(si), *task_.unit, task_.decimals));
    return (si < 0.0 ? QString(QChar(0x2212)) : QStringLiteral("+")) + text;
}

void CauseBars::paintEvent(QPaintEvent*) {
    if (bars_.empty())
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    double low = std::min({0.0, guess_, answer_}), high = std::max({0.0, guess_, answer_});
    for (const Bar& bar : bars_) {
        low = std::min({low, bar.from, bar.to});
        high = std::max({high, bar.from, bar.to});
    }
    const double wide = width() - 8.0;
    const auto x = [&](double value) {
        return 4.0 + wide * (value - low) / std::max(1e-300, high - low);
    };
    const double line = painter.fontMetrics().height();
    double y = 0.0;
    for (const Bar& bar : bars_) {
        painter.setPen(tones.ink);
        const QString value =
            bar.from == 0.0 && &bar == &bars_.front() && bars_.size() > 1 && bar.to != 0.0
                ? amountText(withDecimals(bar.to, *task_.unit, task_.decimals))
                : valueText(bar.to - bar.from);
        const double valueWide = painter.fontMetrics().horizontalAdvance(value) + 8.0;
        painter.drawText(QRectF(4.0, y, wide - valueWide, line), Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(bar.words, Qt::ElideRight,
                                                          static_cast<int>(wide - valueWide)));
        painter.drawText(QRectF(4.0, y, wide, line), Qt::AlignRight | Qt::AlignVCenter, value);
        fillAndOutline(painter, bar.to >= bar.from ? tones.metal : tones.metalPale,
                       QPen(tones.ink, 1.0));
        painter.drawRect(
            QRectF(QPointF(x(bar.from), y + line + 2.0), QPointF(x(bar.to), y + 2.0 * line - 2.0))
                .normalized());
        y += rowHeight();
    }
    painter.setPen(QPen(tones.quiet, 1.0));
    painter.drawLine(QPointF(x(0.0), line), QPointF(x(0.0), y));
    painter.setPen(QPen(tones.ink, 1.6, Qt::DashLine));
    painter.drawLine(QPointF(x(guess_), line), QPointF(x(guess_), y));
}

} // namespace lobewright::ui
