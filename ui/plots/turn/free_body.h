#pragma once

#include "core/loads/free_body.h"
#include "ui/base/shown.h"
#include "ui/plots/base/plot_data.h"
#include "ui/plots/base/turn_cursor.h"

#include <QWidget>

class QMenu;

namespace lobewright::ui {

/// Forces on both pistons of cylinder 1 at the shown angle, head to tail: they close.
class FreeBody : public QWidget, public DataSource {
    Q_OBJECT

  public:
    explicit FreeBody(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    /// Absent before the first solution.
    std::optional<loads::PistonPolygon> polygon(End end) const;
    void addOptions(QMenu& menu);

    DataSheet dataSheet() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintPolygon(QPainter& painter, End end, const QRectF& box) const;

    TurnCursor& cursor_;
    SolutionPointer solution_;
};

} // namespace lobewright::ui
