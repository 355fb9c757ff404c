#pragma once

#include "ui/base/palette.h"
#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/walk/walk_steps.h"

#include <QWidget>

namespace lobewright::ui {

/// The stages of one cycle side by side, each with the pistons as they stand then; the present one
/// is lit. A click, or the arrow keys and Enter, turn the shaft to one.
class StageStrip : public QWidget {
    Q_OBJECT

  public:
    explicit StageStrip(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);

    /// Index of the stage that the shaft is in, −1 without a design.
    int present() const { return present_; }
    int stages() const { return static_cast<int>(steps_.size()); }
    const WalkStep& stage(int index) const { return steps_[static_cast<std::size_t>(index)]; }
    QRectF cell(int index) const; ///< [px]

    QSize sizeHint() const override { return {640, 84}; }
    QSize minimumSizeHint() const override { return {240, 56}; }

  public Q_SLOTS:
    void setCylinder(int index);

  Q_SIGNALS:
    void stageChosen(int index);
    void presentChanged(int index);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    QString helpAt(const QPoint& at) const;
    void refresh();
    void follow();
    void announce(int index);
    void paintCell(QPainter& painter, int index) const;
    void paintPistons(QPainter& painter, const QRectF& box, double theta) const;

    TurnCursor& cursor_;
    ShownEngine engine_;
    std::vector<WalkStep> steps_;
    int present_ = -1;
    int chosen_ = -1; ///< where the arrow keys stand
    int cylinder_ = 0;
};

} // namespace lobewright::ui
