#pragma once

#include "ui/handles/handle.h"

#include <QObject>
#include <QPointer>

class QKeyEvent;
class QMouseEvent;
class QPainter;
class QWidget;

namespace lobewright::ui {

class ExactEntry;

/// The hand that grips the handles of a drawing or a plot: finds, drags, nudges and paints them,
/// and asks for the edits. It sees the events of its widget first and leaves those that mean no
/// handle.
/// Mouse: a drag edits (Shift: fine, Escape: back), a double click asks for exact values.
/// Keyboard: Tab walks the handles, arrow keys nudge the chosen one, Enter asks for exact values,
/// Delete takes it away where that is possible, Escape lets it go.
class Hand : public QObject {
    Q_OBJECT

  public:
    /// When handles are drawn. At rest a hint of each; plots show theirs always.
    enum class Shown { whenAwake, always };

    explicit Hand(QWidget& on, Shown shown = Shown::whenAwake);

    /// Called before handles are looked for or painted, so that their owner makes them anew where
    /// what they stand on has moved.
    void setFreshener(std::function<void()> freshen) { freshen_ = std::move(freshen); }
    /// How near the pointer comes before a handle shows [px]; 0: all of them while it is inside.
    void setApproach(double pixels) { approach_ = pixels; }
    /// Whether Tab goes from handle to handle.
    void setWalking(bool isWalking) { isWalking_ = isWalking; }

    /// The chosen one stays, by its key.
    void setHandles(std::vector<Handle> handles);
    const std::vector<Handle>& handles() const { return handles_; }
    /// Index of the handle at a place, −1: none.
    int at(const QPointF& point) const;
    int hovered() const { return hovered_; }
    /// Index of the chosen or gripped one, −1: none.
    int chosen() const { return chosen_; }
    void choose(int index);
    /// By its key, as if by keyboard; whether there is one.
    bool choose(const std::string& key);
    bool isGripping() const { return grip_.has_value(); }

    /// An edit that is a step by itself and may rename handles. `next`: the one to be chosen then.
    void apply(const std::optional<Edit>& edit, const std::string& next = {});
    void put(const std::optional<Addition>& addition);

    void paint(QPainter& painter);

    bool eventFilter(QObject* watched, QEvent* event) override;

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// Another handle is chosen, under the pointer or gripped.
    void changed();
    /// The hand holds a handle, or no longer.
    void gripped(bool isHeld);

  private:
    struct Grip {
        Handle handle; ///< as it was when gripped: its scale holds for the whole drag
        QPointF from;
        std::vector<double> start;  ///< values the fine or coarse stretch began with
        std::vector<double> before; ///< values to go back to
        bool fine = false;
        bool moved = false;
        std::optional<std::size_t> onlyAxis; ///< of a handle that goes one way
    };

    bool press(const QMouseEvent& event);
    bool move(const QMouseEvent& event);
    bool release(const QMouseEvent& event);
    bool doubleClick(const QMouseEvent& event);
    bool key(const QKeyEvent& event);
    bool walk(bool next);
    void drag(const QPointF& to, bool fine);
    void drop(bool keep);
    void finishNudging();
    void nudge(const Handle& handle, QPointF direction, bool fine);
    void emitEdit(const Handle& handle, const std::vector<double>& values);
    void openExactEntry(const Handle& handle);
    const Handle* handleOf(int index) const;
    bool isFree(const Grip& grip, std::size_t axis) const;
    bool isApproached(const Handle& handle) const;
    const Handle* named() const;
    void paintHint(QPainter& painter, const Handle& handle) const;
    void paintHandle(QPainter& painter, const Handle& handle, bool strong) const;
    void paintTag(QPainter& painter, const Handle& handle) const;
    void announce();
    void freshen() const;

    QWidget& on_;
    const Shown shown_;
    std::function<void()> freshen_;
    double approach_ = 0.0;
    bool isWalking_ = true;
    std::vector<Handle> handles_;
    int hovered_ = -1;
    int chosen_ = -1;
    std::string chosenKey_;
    bool pointerInside_ = false;
    QPointF pointer_; ///< where it was last seen inside
    std::optional<Grip> grip_;
    bool isBusyBeside_ = false; ///< a button was pressed beside the handles and is still held
    bool nudging_ = false;
    bool byKeyboard_ = false; ///< the chosen handle was last chosen or moved with keys
    std::string released_;    ///< handle let go of: no tag until the pointer has left it
    QString said_;            ///< description that the widget has of the hand
    QPointer<ExactEntry> entry_;
};

} // namespace lobewright::ui
