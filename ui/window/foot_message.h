#pragma once

#include <QLabel>

class QStatusBar;

namespace lobewright::ui {

/// What the status bar has to say for a while, whole, over what stands in it always: nothing moves
/// when a message comes, and nothing is left when it goes.
class FootMessage final : public QLabel {
    Q_OBJECT

  public:
    explicit FootMessage(QStatusBar& bar);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void say(const QString& text);
    void place();
};

} // namespace lobewright::ui
