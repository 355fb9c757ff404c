#pragma once

#include "core/unknowns/bands.h"
#include "core/unknowns/turn_bands.h"

#include <QColor>
#include <QObject>
#include <QPolygonF>
#include <QString>

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

class QMenu;
class QPainter;

namespace lobewright::ui {

/// Bands of the engines that the design may be, to lie behind plots of the design as it is; and the
/// one switch that shows them in all of these plots.
class BandsBehind : public QObject {
    Q_OBJECT

  public:
    using TurnPointer = std::shared_ptr<const unknowns::TurnBands>;

    explicit BandsBehind(QObject* parent = nullptr) : QObject(parent) {}

    bool isShown() const { return isShown_; }
    void setShown(bool shown);
    /// What is known now: by speed, over a turn (null: not yet), and in words why there is nothing.
    void set(std::vector<unknowns::CurvePoint> curve, const TurnPointer& turn,
             const QString& state);

    /// Null where it is not shown or not known.
    const unknowns::ChannelBand* channel(std::string_view name) const;
    const Samples& theta() const { return turn_->theta; }
    /// Empty where it is not shown or not known.
    const std::vector<unknowns::CurvePoint>& curve() const { return shownCurve_; }
    /// "9 of 10 engines, half of them darker", or why there is nothing yet.
    QString words(bool isOverTurn) const;
    void addAction(QMenu& menu);

  Q_SIGNALS:
    void changed();
    void shownChanged();

  private:
    bool isShown_ = false;
    std::vector<unknowns::CurvePoint> curve_, shownCurve_;
    TurnPointer turn_;
    QString state_;
};

/// The quantity of the curve that a figure is; absent: none of them.
std::optional<unknowns::CurveQuantity> curveQuantity(const QString& figure);

/// Of the outer band, and of the inner one that lies on it.
QColor outerBand(QColor curve);
QColor innerBand(QColor curve);

/// Fills between two lines of equally many points; points that are not a number end an area.
void paintBand(QPainter& painter, const QPolygonF& low, const QPolygonF& high,
               const QColor& colour);

} // namespace lobewright::ui
