#pragma once

#include "core/motion/motion_law.h"

#include <QWidget>

class QPainter;

namespace lobewright::ui {

/// The normalised curves of all motion laws side by side, unit lift over unit span: each quantity
/// to one scale in all frames, so that heights can be compared across the laws.
class LawFrames : public QWidget {
    Q_OBJECT

  public:
    enum Curve { lift = 1, velocity = 2, acceleration = 4, jerk = 8 };

    explicit LawFrames(QWidget* parent = nullptr);

    void setCurves(int shown); ///< Curve flags
    int curves() const { return curves_; }
    /// Framed in ink; −1: none.
    void setPresent(int law);
    void setChosen(int law);
    int chosen() const { return chosen_; }

    QSize minimumSizeHint() const override;
    QSize sizeHint() const override { return {700, 180}; }
    /// The frame of a law [px].
    QRectF frameOf(int law) const;

  Q_SIGNALS:
    void lawChosen(int law);
    void lawWanted(int law); ///< double click or Enter

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QString helpAt(const QPoint& at) const;
    int frameAt(const QPointF& point) const;
    void paintFrame(QPainter& painter, int law) const;
    void paintCurve(QPainter& painter, int law, int derivative, const QRectF& box) const;

    int curves_ = lift | velocity | acceleration;
    int present_ = -1, chosen_ = -1;
};

} // namespace lobewright::ui
