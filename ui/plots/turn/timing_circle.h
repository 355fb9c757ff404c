#pragma once

#include "ui/base/palette.h"
#include "ui/base/shown.h"
#include "ui/plots/base/plot_data.h"
#include "ui/plots/base/turn_cursor.h"

#include <QWidget>

#include <vector>

class QMenu;

namespace lobewright::ui {

/// The circular timing diagram of the trade: one gas cycle clockwise from inner dead centre at
/// the top, ports as arcs, every event with cycle and shaft degrees. Drag turns the shaft.
class TimingCircle : public QWidget, public DataSource {
    Q_OBJECT

  public:
    explicit TimingCircle(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void showGeometry(const GeometryPointer& geometry);
    void addOptions(QMenu& menu);
    DataSheet dataSheet() const override;
    /// The hand at the cursor; shown at first.
    void setHandShown(bool shown) { handShown_ = shown; }
    /// The drawing without its ground, for other paper.
    void paintInto(QPainter& painter) const;
    /// The event whose letters or mark lie here, spelt out with its angles; empty: none.
    QString eventAt(const QPointF& position) const;
    QSize sizeHint() const override { return {320, 320}; }
    QSize minimumSizeHint() const override { return {160, 140}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    struct Frame; ///< centre and radii for the present size
    struct Label; ///< of an event on the rim
    Frame frame() const;
    /// The cycle that the cursor is in; of several that are not alike the circle shows that one.
    const ports::CycleEvents& cycle(const ports::PortTiming& timing) const;
    /// Clockwise from the inner dead centre of that cycle [rad].
    double handAngle() const;
    std::vector<Label> labels(const Frame& frame) const;
    void paintDial(QPainter& painter, const Frame& frame) const;
    void paintSkirt(QPainter& painter, const Frame& place) const;
    void paintPorts(QPainter& painter, const Frame& frame) const;
    void paintBaseline(QPainter& painter, const Frame& frame) const;
    void paintEvents(QPainter& painter, const Frame& frame) const;
    void paintMiddle(QPainter& painter, const Frame& frame) const;
    void paintHand(QPainter& painter, const Frame& frame) const;
    void turnTo(const QPointF& position);

    TurnCursor& cursor_;
    GeometryPointer geometry_;
    SolutionPointer baseline_;
    bool handShown_ = true;
};

} // namespace lobewright::ui
