#pragma once

#include "ui/plots/base/custom_plot.h"

#include <QPen>
#include <QString>
#include <QWidget>

#include <vector>

namespace lobewright::ui {

/// Names of the curves of a plot with their values at the cursor: legend and readout in one.
/// Flows into as many lines as the width asks for.
class ReadoutStrip : public QWidget {
    Q_OBJECT

  public:
    struct Item {
        QPen pen;      ///< as the curve is drawn
        QString label; ///< "Lift, inlet side"
        QString value; ///< "12.3"; empty where there is none
        QString unit;
        QString help;         ///< tooltip
        bool isFixed = false; ///< does not follow the cursor
        /// Of the points of the curve.
        QCPScatterStyle::ScatterShape shape = QCPScatterStyle::ssNone;
    };

    explicit ReadoutStrip(QWidget* parent = nullptr);

    void setItems(std::vector<Item> items);
    /// Only the value text changes: no new layout unless it grew.
    void setValue(size_t index, const QString& value);

    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    QString helpAt(const QPoint& at) const;
    struct Place {
        size_t item;
        QRect box;
    };
    std::vector<Place> flow(int width) const;
    int itemWidth(const Item& item) const;
    int lineHeight() const;
    void fitHeight();
    std::vector<Item> items_;
};

} // namespace lobewright::ui
