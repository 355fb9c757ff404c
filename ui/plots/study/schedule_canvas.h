#pragma once

#include "core/design/design.h"
#include "core/design/fields.h"
#include "ui/editing/edit.h"
#include "ui/handles/hand.h"
#include "ui/plots/base/custom_plot.h"

#include <optional>

namespace lobewright::ui {

/// One schedule over the shaft speed with its points as handles. Insert adds one, and so does a
/// double click on a free place.
class ScheduleCanvas : public QCustomPlot {
    Q_OBJECT

  public:
    explicit ScheduleCanvas(QWidget* parent = nullptr);

    /// `index` of the schedule in the design; nothing: no schedule.
    void show(const design::Design& design, std::optional<std::size_t> index);
    using QWidget::show;
    void setSpeeds(double from, double to); ///< [1/min]

    /// Where a point lies on the canvas [px]; nothing where there is none.
    std::optional<QPointF> placeOf(std::size_t point) const;
    std::optional<std::size_t> chosen() const { return pointOf(hand_->chosen()); }
    /// Adds a point between the chosen one and the next, without one in the widest gap.
    void addPoint();
    void removePoint();

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// "1,500 rpm: 6.2°" at the pointer or of the chosen point; empty: nothing to say.
    void said(const QString& text);
    void chosenChanged();

  protected:
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    const design::Schedule* schedule() const;
    double shownSpeed(std::size_t point) const; ///< [1/min]
    /// Of a handle; handles and points have the same order.
    std::optional<std::size_t> pointOf(int handle) const;
    std::optional<std::size_t> strong() const; ///< held, under the pointer or chosen
    Handle handleOf(std::size_t point) const;
    Edit moved(std::size_t point, const std::vector<double>& values) const;
    Edit replaced(const design::Schedule& next, const QString& text) const;
    void insertAt(double speed);
    void makeHandles();
    void refill();
    void fitValues();
    void applyTones();
    void say();
    QString words(double speed, double value) const;

    design::Design design_;
    std::optional<std::size_t> index_;
    std::optional<design::Field> field_; ///< the input, with its fixed value
    Hand* hand_;
    QCPGraph *curve_, *points_, *marked_;
    QCPItemStraightLine *fixed_, *now_;
};

} // namespace lobewright::ui
