#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace lobewright::ui {

/// A line or two that offers something and asks nothing. It lies over the foot of the panes, so
/// that nothing moves when it comes or goes: when it is closed, when what it offers is taken, and
/// when it no longer holds.
class HintBar : public QFrame {
    Q_OBJECT

  public:
    struct Offer {
        QString text;
        std::function<void()> act;
    };

    /// `panes`: over whose foot it lies, of the same parent.
    explicit HintBar(QWidget& panes);

    /// Takes the place of what was said before. `more` is what the mouse shows.
    void say(const QString& text, const QString& more, const std::vector<Offer>& offers);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void place();
    QWidget& panes_;
    QHBoxLayout* line_;
    QLabel* text_;
    std::vector<QWidget*> offers_;
};

} // namespace lobewright::ui
