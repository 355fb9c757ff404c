#include "ui/base/watching.h"

#include <QHelpEvent>
#include <QToolTip>
#include <QWidget>

#include <utility>

namespace lobewright::ui {

namespace {

/// Sees the events of a widget before it does; true: it shall not see this one.
class Watcher final : public QObject {
  public:
    using Filter = std::function<bool(QEvent&)>;

    Watcher(QWidget& widget, Filter filter) : QObject(&widget), filter_(std::move(filter)) {
        widget.installEventFilter(this);
    }

  protected:
    bool eventFilter(QObject*, QEvent* event) override { return filter_(*event); }

  private:
    Filter filter_;
};

} // namespace

void whenLookChanges(QWidget& widget, std::function<void()> act) {
    new Watcher(widget, [act = std::move(act)](QEvent& event) {
        if (event.type() == QEvent::PaletteChange || event.type() == QEvent::FontChange)
            act();
        return false;
    });
}

void helpByPlace(QWidget& widget, std::function<QString(const QPoint&)> textAt) {
    new Watcher(widget, [&widget, textAt = std::move(textAt)](QEvent& event) {
        if (event.type() != QEvent::ToolTip)
            return false;
        const auto& help = static_cast<QHelpEvent&>(event);
        const QString text = textAt(help.pos());
        if (text.isEmpty() && widget.toolTip().isEmpty())
            QToolTip::hideText();
        else if (!text.isEmpty())
            QToolTip::showText(help.globalPos(), text, &widget);
        return !text.isEmpty();
    });
}

} // namespace lobewright::ui
