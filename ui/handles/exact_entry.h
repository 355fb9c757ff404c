#pragma once

#include "ui/base/units.h"
#include "ui/handles/handle.h"

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
    struct Box {
        QDoubleSpinBox* box;
        Unit unit;
        double value;  ///< in the unit of the axis
        double before; ///< what the box shows of it
    };
    void accept();
    std::vector<Box> boxes_;
};

} // namespace lobewright::ui
