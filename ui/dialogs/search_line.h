#pragma once

#include <QWidget>

#include <functional>

class QDialogButtonBox;
class QLabel;
class QPushButton;

namespace lobewright::ui {

class BackgroundWork;

/// How far the search of a dialog is and what it says, with the button that starts and stops it.
class SearchLine : public QWidget {
    Q_OBJECT

  public:
    /// `work`: that the search is done by.
    SearchLine(BackgroundWork& work, QWidget* parent);

    void say(const QString& text);
    /// The default button of the dialog; pressed while the search runs it stops it.
    QPushButton* addButton(QDialogButtonBox& buttons, std::function<void()> search);

  private:
    BackgroundWork& work_;
    QLabel* message_;
};

} // namespace lobewright::ui
