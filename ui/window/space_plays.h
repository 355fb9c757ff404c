#pragma once

#include <QObject>

class QWidget;

namespace lobewright::ui {

class TurnCursor;

/// Space turns or stops the shaft wherever the keyboard and the pointer are in a window, except
/// where it means something else already: in text, and on what it presses.
class SpacePlays final : public QObject {
    Q_OBJECT

  public:
    SpacePlays(TurnCursor& cursor, QWidget& window);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    TurnCursor& cursor_;
    QWidget& window_;
};

} // namespace lobewright::ui
