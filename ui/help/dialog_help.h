#pragma once

#include <QObject>

class QDialog;

namespace lobewright::ui {

/// F1 in every modal dialog: while one is open the window behind it takes no keys.
class DialogHelp : public QObject {
    Q_OBJECT

  public:
    explicit DialogHelp(QObject* parent = nullptr);

    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    static void open(QDialog& dialog);
};

} // namespace lobewright::ui
