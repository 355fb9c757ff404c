#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace lobewright::ui {

/// A line or two over the panes that offers something and asks nothing: gone when it is closed,
/// when what it offers is taken, and when it no longer holds.
class HintBar : public QFrame {
    Q_OBJECT

  public:
    struct Offer {
        QString text;
        std::function<void()> act;
    };

    explicit HintBar(QWidget* parent = nullptr);

    /// Takes the place of what was said before. `more` is what the mouse shows.
    void say(const QString& text, const QString& more, const std::vector<Offer>& offers);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QHBoxLayout* line_;
    QLabel* text_;
    std::vector<QWidget*> offers_;
};

} // namespace lobewright::ui
