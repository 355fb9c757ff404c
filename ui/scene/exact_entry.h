#pragma once

#include "ui/scene/handle.h"

#include <QFrame>

class QDoubleSpinBox;

namespace lobewright::ui {

/// Small panel beside a handle to type its exact value. Enter accepts, Escape or leaving closes.
class ExactEntry : public QFrame {
    Q_OBJECT

  public:
    ExactEntry(const Handle& handle, QWidget* parent);

  Q_SIGNALS:
    void accepted(const std::vector<double>& values);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void accept();
    std::vector<QDoubleSpinBox*> boxes_;
};

} // namespace lobewright::ui
