#include "ui/plots/base/bands_behind.h"

#include "ui/base/drawing.h"

#include <QMenu>

#include <cmath>

namespace lobewright::ui {

void BandsBehind::setShown(bool shown) {
    if (shown == isShown_)
        return;
    isShown_ = shown;
    shownCurve_ = shown ? curve_ : std::vector<unknowns::CurvePoint>();
    Q_EMIT shownChanged();
    Q_EMIT changed();
}

void BandsBehind::set(std::vector<unknowns::CurvePoint> curve, const TurnPointer& turn,
                      const QString& state) {
    curve_ = std::move(curve);
    turn_ = turn;
    state_ = state;
    if (!isShown_)
        return;
    shownCurve_ = curve_;
    Q_EMIT changed();
}

const unknowns::ChannelBand* BandsBehind::channel(std::string_view name) const {
    if (!isShown_ || !turn_)
        return nullptr;
    const auto found = turn_->channels.find(name);
    return found == turn_->channels.end() ? nullptr : &found->second;
}

QString BandsBehind::words(bool isOverTurn) const {
    if (!isShown_)
        return {};
    if (isOverTurn ? turn_ != nullptr : !curve_.empty())
        return tr("9 of 10 possible engines; the stronger band: half of them");
    return state_.isEmpty() ? tr("being computed") : state_;
}

void BandsBehind::addAction(QMenu& menu) {
    QAction* action = menu.addAction(tr("Show &bands"));
    action->setCheckable(true);
    action->setChecked(isShown_);
    action->setToolTip(tr("Behind the curves of all plots: where the engines lie that the design "
                          "may be, by the ranges of its inputs"));
    connect(action, &QAction::toggled, this, &BandsBehind::setShown);
}

std::optional<unknowns::CurveQuantity> curveQuantity(const QString& figure) {
    const auto columns = unknowns::curveColumns();
    for (int i = 0; i < unknowns::keepsContact; ++i) {
        if (figure == QString::fromStdString(columns[static_cast<std::size_t>(i)].name))
            return static_cast<unknowns::CurveQuantity>(i);
    }
    return std::nullopt;
}

// Glass, not paint: bands of two curves cross.
QColor outerBand(QColor curve) {
    curve.setAlphaF(0.15F);
    return curve;
}

QColor innerBand(QColor curve) {
    curve.setAlphaF(0.22F);
    return curve;
}

void paintBand(QPainter& painter, const QPolygonF& low, const QPolygonF& high,
               const QColor& colour) {
    const auto isPoint = [&](qsizetype i) {
        return std::isfinite(low[i].y()) && std::isfinite(high[i].y());
    };
    painter.save();
    fillOnly(painter, colour);
    for (qsizetype from = 0; from < low.size();) {
        if (!isPoint(from)) {
            ++from;
            continue;
        }
        qsizetype to = from;
        while (to < low.size() && isPoint(to))
            ++to;
        QPolygonF area = low.mid(from, to - from);
        for (qsizetype i = to; i-- > from;)
            area.append(high[i]);
        painter.drawPolygon(area);
        from = to;
    }
    painter.restore();
}

} // namespace lobewright::ui
