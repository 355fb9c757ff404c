#pragma once

#include "core/mechanism/opposed_pair.h"
#include "ui/base/palette.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/turn_cursor.h"

#include <functional>
#include <optional>

namespace lobewright::ui {

class CycleTicks;

/// A plot over one shaft turn in degrees: shaft degrees below, cycle degrees above, the common
/// cursor, zoom and pan shared with every other canvas of the same cursor.
/// Left drag moves the cursor; wheel zooms the angle, with Ctrl the value; middle drag pans; Shift
/// and drag picks a range; double click shows the whole turn.
class TurnCanvas : public QCustomPlot {
    Q_OBJECT

  public:
    using Paint = std::function<void(QCPPainter&)>;
    /// Names of the layers that paints can stand on, from back to front.
    static constexpr const char *shading = "shading", *baseline = "baseline", *marks = "marks",
                                *handles = "handles", *cursorLayer = "cursor";

    TurnCanvas(TurnCursor& cursor, QWidget* parent);

    TurnCursor& cursor() const { return cursor_; }
    const Palette& tones() const { return Palette::of(*this); }
    void setCycles(const mechanism::OpposedPair& pair);
    /// Angles that Page Up and Page Down go to [rad], ascending.
    void setStops(std::vector<double> stops) { stops_ = std::move(stops); }
    /// What the axis shows and the metric unit of it, which is named as it is shown now.
    void setLeftLabel(const QString& quantity, const QString& unit);
    /// Both empty: no right axis.
    void setRightLabel(const QString& quantity, const QString& unit);
    /// Paints with the plot's pixels on a layer; `inside`: clipped to the axes.
    void addPaint(const char* layer, Paint paint, bool inside = true);

    /// A lane above the frame, for the letters of events: on nothing that is drawn. Empty in a
    /// frame that is too low for axes.
    QRectF lane() const;
    /// Too low for axes: the curves alone, between their highest and their lowest value.
    bool isSparkline() const { return isSparkline_; }

    double xOf(double theta) const;
    double thetaAt(double x) const;
    QRectF inside() const;

    /// The values that the left (right) axis has to show; kept unless the person zoomed.
    void setContent(const QCPRange& left, const std::optional<QCPRange>& right = {});
    /// While something in it is dragged: a scale that runs away cannot be aimed at.
    void holdContent(bool isHeld);
    void refreshLayer(const char* name);
    void resetView();

  public Q_SLOTS:
    void zoomIn() { zoomAngle(0.7, cursor_.angle()); }
    void zoomOut() { zoomAngle(1.0 / 0.7, cursor_.angle()); }

  Q_SIGNALS:
    void menuWanted(const QPoint& globalPosition);
    void tonesChanged();

  protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    enum class Hold { nothing, cursor, pan, range };
    void buildLayers();
    void applyTones();
    void applyShown();
    void fitLabels();
    bool fitFrame();
    void fitSides();
    int sideMargin() const; ///< [px] beside the frame, the same in all plots: cursors stand in line
    void paintEnds(QCPPainter& painter) const;
    void zoomAngle(double factor, double about);
    void zoomValue(double factor, double about);
    void toStop(bool forward);
    void panBy(const QPointF& pixels);
    void paintCorners(QCPPainter& painter) const;
    void paintCursor(QCPPainter& painter) const;

    TurnCursor& cursor_;
    QSharedPointer<CycleTicks> cycleTicks_;
    QCPRange leftContent_{0.0, 1.0};
    std::optional<QCPRange> rightContent_;
    bool valueZoomed_ = false, isHeld_ = false, isSparkline_ = false;
    QString leftQuantity_, leftUnit_, rightQuantity_, rightUnit_;
    Hold hold_ = Hold::nothing;
    QPointF lastAt_;
    double rangeFrom_ = 0.0;
    std::vector<double> stops_;
};

} // namespace lobewright::ui
