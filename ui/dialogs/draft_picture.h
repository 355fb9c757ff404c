#pragma once

#include "core/design/design.h"

#include <QWidget>

namespace lobewright::ui {

/// An engine as a small drawing: its cylinders about the shaft, to one scale for all that stand
/// side by side, and the lift of both tracks over one turn below.
class DraftPicture : public QWidget {
    Q_OBJECT

  public:
    /// `largest`: outer diameter of the largest engine beside it [m]; 0: this one fills the room.
    DraftPicture(const design::Design& design, bool isBoosted, double largest, QWidget* parent);

    QSize sizeHint() const override { return {150, 170}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintCylinders(QPainter& painter, const QRectF& area) const;
    void paintBlower(QPainter& painter, const QRectF& area) const;
    void paintLift(QPainter& painter, const QRectF& area) const;

    design::Design design_;
    bool isBoosted_;
    double largest_;
};

} // namespace lobewright::ui
