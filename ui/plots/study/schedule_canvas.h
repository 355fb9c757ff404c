#pragma once

#include "core/design/design.h"
#include "core/design/fields.h"
#include "ui/editing/edit.h"
#include "ui/handles/handle.h"
#include "ui/plots/base/custom_plot.h"

#include <QPointer>

#include <optional>

namespace lobewright::ui {

class ExactEntry;

/// One schedule over the shaft speed with its points as handles. Drag one (Shift: fine), or choose
/// it by Tab or a click and use the arrow keys; Insert adds one, Delete takes the chosen one away;
/// a double click asks for exact numbers, on a free place it adds a point there.
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
    std::optional<std::size_t> chosen() const { return chosen_; }
    void choose(std::optional<std::size_t> point);
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
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void changeEvent(QEvent* event) override;

  private:
    const design::Schedule* schedule() const;
    double shownSpeed(std::size_t point) const; ///< [1/min]
    std::optional<std::size_t> pointAt(const QPointF& place) const;
    Handle handleOf(std::size_t point) const;
    Edit moved(std::size_t point, double speed, double value) const;
    void moveTo(std::size_t point, double speed, double value, bool fine);
    void replace(const std::optional<design::Schedule>& next, const QString& text);
    void insertAt(double speed);
    void nudge(double speeds, double values, bool fine);
    void openExactEntry(std::size_t point);
    void refill();
    void fitValues();
    void applyTones();
    void say();
    QString words(double speed, double value) const;

    design::Design design_;
    std::optional<std::size_t> index_;
    std::optional<design::Field> field_; ///< the input, with its fixed value
    std::optional<std::size_t> chosen_, hovered_;
    struct Drag {
        std::size_t point;
        QPointF offset; ///< from the pointer to the point [px]
        bool moved = false;
    };
    std::optional<Drag> drag_;
    bool isNudging_ = false;
    QPointer<ExactEntry> entry_;
    QCPGraph *curve_, *points_, *marked_;
    QCPItemStraightLine *fixed_, *now_;
};

} // namespace lobewright::ui
