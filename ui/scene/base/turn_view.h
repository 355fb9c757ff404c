#pragma once

#include "ui/base/palette.h"
#include "ui/handles/hand.h"
#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/base/shown_engine.h"

#include <QWidget>

#include <optional>

namespace lobewright::ui {

/// A drawing of the engine at the common shaft angle that can be turned and edited by hand.
/// Mouse: drag the ground or the wheel turns the shaft; handles are those of Hand, a double click
/// beside them puts one there.
/// Keyboard: without a chosen handle arrow keys turn the shaft; Insert puts a handle at the shaft
/// angle, where that is possible; Space plays; Home goes to inner dead centre, Page Up and Page
/// Down to the port events.
class TurnView : public QWidget {
    Q_OBJECT

  public:
    explicit TurnView(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);

    QSize sizeHint() const override { return {760, 420}; }
    QSize minimumSizeHint() const override { return {240, 160}; }

    const ShownEngine& engine() const { return engine_; }
    /// Handles as drawn now, for tests and for the walk by keyboard.
    const std::vector<Handle>& handles() const { return hand_->handles(); }
    /// Index into handles() of the chosen or gripped one, −1: none.
    int chosenHandle() const { return hand_->chosen(); }
    /// Brings the handle of this path into keyboard reach, if the drawing has one.
    bool chooseHandle(const std::string& key) { return hand_->choose(key); }

    /// Starts what the drawing needs beside the solution; whether all of it is there.
    virtual bool isComplete() { return true; }

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();

  protected:
    /// Called when the engine, the size or the font changed: prepare what painting needs.
    virtual void layOut() = 0;
    /// Draws everything but the handles; the engine is not empty.
    virtual void paintDrawing(QPainter& painter) = 0;
    virtual std::vector<Handle> makeHandles() const = 0;
    /// Shaft turn for one pixel of horizontal drag [rad].
    virtual double radiansPerPixel() const;
    /// What of a drag on the ground turns the shaft [px]; the way in which the drawing moves.
    virtual double turningWay(const QPointF& drag) const { return drag.x(); }
    /// A press on the ground that is not a drag; true: taken.
    virtual bool clickedGround(const QPointF&) { return false; }
    /// What a double click that meets no handle puts there.
    virtual std::optional<Addition> additionAt(const QPointF&) const { return std::nullopt; }
    /// What the Insert key puts at the shaft angle.
    virtual std::optional<Addition> additionAtAngle() const { return std::nullopt; }
    /// Whether the drawing shows more of a solution than its motion.
    virtual bool showsGas() const { return true; }
    /// Whether anything but painting depends on the shaft angle (handles that ride along).
    virtual bool handlesFollowAngle() const { return false; }

    Hand& hand() const { return *hand_; }
    TurnCursor& cursor() const { return cursor_; }
    const Palette& tones() const { return Palette::of(*this); }
    void refresh();

    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void walkByKey(int key);
    void turnBy(double radians);
    void goToEvent(int step);

    TurnCursor& cursor_;
    ShownEngine engine_;
    Hand* hand_;
    std::optional<QPointF> turning_; ///< last point of a drag that turns the shaft
    QPointF pressed_;
};

} // namespace lobewright::ui
