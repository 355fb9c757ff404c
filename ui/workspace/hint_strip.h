#pragma once

#include <QFrame>

namespace lobewright::ui {

/// A line above the panes for whoever opens the program for the first time.
class HintStrip : public QFrame {
    Q_OBJECT

  public:
    explicit HintStrip(QWidget* parent = nullptr);

    /// Whether it was never shown on this account.
    static bool isNew();
    /// Shows it, and remembers that it was shown.
    void open();

  Q_SIGNALS:
    void firstStepsWanted();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace lobewright::ui
