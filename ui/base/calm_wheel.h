#pragma once

#include <QObject>

namespace lobewright::ui {

/// Lets the wheel change a list or a number only while that has the keyboard: who scrolls past it
/// changes nothing, and what lies behind it scrolls. For the whole program.
class CalmWheel : public QObject {
    Q_OBJECT

  public:
    explicit CalmWheel(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace lobewright::ui
