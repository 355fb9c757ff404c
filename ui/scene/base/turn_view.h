#pragma once

#include "ui/base/palette.h"
#include "ui/handles/handle.h"
#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/base/shown_engine.h"

#include <QPointer>
#include <QWidget>

#include <optional>

namespace lobewright::ui {

class ExactEntry;

/// A drawing of the engine at the common shaft angle that can be turned and edited by hand.
/// Mouse: drag the ground or the wheel turns the shaft, dragging a handle edits (Shift: fine,
/// Escape: back), double click or Enter on a handle opens exact entry.
/// Keyboard: Tab walks the handles, arrow keys nudge the chosen handle or, without one, turn the
/// shaft; Insert puts one at the shaft angle, Delete takes the chosen one away, where that is
/// possible; Space plays; Home goes to inner dead centre, Page Up and Page Down to the port events.
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
    const std::vector<Handle>& handles() const { return handles_; }
    /// Index into handles() of the chosen or gripped one, −1: none.
    int chosenHandle() const { return chosen_; }
    /// Brings the handle of this path into keyboard reach, if the drawing has one.
    bool chooseHandle(const std::string& key);

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

    /// How near the pointer comes before a handle shows [px]; 0: all of them while it is inside,
    /// and a hint at rest.
    virtual double approach() const { return 0.0; }

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
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

  private:
    struct Grip {
        Handle handle; ///< as it was when gripped: its scale holds for the whole drag
        QPointF from;
        std::vector<double> start;  ///< values the fine or coarse stretch began with
        std::vector<double> before; ///< values to go back to
        bool fine = false;
        bool moved = false;
    };

    int handleAt(const QPointF& point) const;
    const Handle* handleOf(int index) const;
    void choose(int index);
    void dragHandle(const QPointF& to, bool fine);
    void dropHandle(bool keep);
    void nudge(const Handle& handle, QPointF direction, bool fine);
    void emitEdit(const Handle& handle, const std::vector<double>& values);
    void emitWhole(const std::optional<Edit>& edit);
    void add(const std::optional<Addition>& addition);
    void walkByKey(int key);
    void openExactEntry(const Handle& handle);
    void turnBy(double radians);
    void goToEvent(int step);
    void paintHandles(QPainter& painter);
    bool isApproached(const Handle& handle) const;
    void paintHandle(QPainter& painter, const Handle& handle, bool strong) const;
    void paintTag(QPainter& painter, const Handle& handle) const;
    void announce();

    TurnCursor& cursor_;
    ShownEngine engine_;
    std::vector<Handle> handles_;
    int hovered_ = -1;
    int chosen_ = -1;
    bool pointerInside_ = false;
    QPointF pointer_; ///< where it was last seen inside
    std::optional<Grip> grip_;
    bool nudging_ = false;
    bool byKeyboard_ = false;        ///< the chosen handle was last chosen or moved with keys
    std::string released_;           ///< handle let go of: no tag until the pointer has left it
    std::optional<QPointF> turning_; ///< last point of a drag that turns the shaft
    QPointF pressed_;
    QPointer<ExactEntry> entry_;
};

} // namespace lobewright::ui
