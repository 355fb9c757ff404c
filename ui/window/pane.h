#pragma once

#include "ui/window/views.h"

#include <QFrame>

#include <array>

class QLabel;
class QMenu;
class QToolButton;
class QVBoxLayout;

namespace lobewright::ui {

/// A place in the window that shows one view, with its name and its choices above it.
class Pane : public QFrame {
    Q_OBJECT

  public:
    explicit Pane(QWidget* parent = nullptr);

    /// Takes the view's widget into this pane; null: empty.
    void setView(const Views::View* view);
    const Views::View* view() const { return view_; }
    /// Lets go of the widget, which then belongs to `owner`.
    void release(QWidget* owner);
    /// Whether it stands alone in the window: its button then leads back.
    void setEnlarged(bool enlarged);

    /// Everything under *Options*; the menu belongs to the caller.
    void fillOptions(QMenu& menu);

  Q_SIGNALS:
    /// Fill the menu with the views that this pane can show instead.
    void choicesWanted(QMenu* menu);
    void enlargeWanted();

  protected:
    void mouseDoubleClickEvent(QMouseEvent* event) override;

  private:
    QVBoxLayout* layout_;
    QLabel* title_;
    QToolButton* options_;
    QToolButton* enlarge_;
    const Views::View* view_ = nullptr;
};

/// The pane with a view in it that the widget lies in; null: none, or no widget.
const Pane* paneOf(const QWidget* widget);
/// The widget that has the keyboard, then the one under the pointer; either may be null.
std::array<const QWidget*, 2> widgetsHere();
/// The view that has the keyboard, else the one under the pointer; null: neither is a view.
const Views::View* viewHere();

} // namespace lobewright::ui
