#pragma once

#include <QScrollArea>
#include <QToolButton>

#include <vector>

namespace lobewright::ui {

/// What the window shows between its bars: as large as there is room for, scrolled on a screen that
/// is smaller than its parts need. The keys that scroll stay with the parts.
class CentreScroll final : public QScrollArea {
  public:
    CentreScroll(QWidget* content, QWidget* parent);
    QSize minimumSizeHint() const override { return {200, 100}; }

  protected:
    void keyPressEvent(QKeyEvent* event) override { event->ignore(); }
};

/// A button whose text is shortened where it does not fit; the full text is its tool tip then.
class ElidedButton final : public QToolButton {
  public:
    using QToolButton::QToolButton;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    QString shownText() const;
};

/// Makes dialogs no larger than their screen as they open; what needs more room scrolls.
class DialogFit final : public QObject {
  public:
    explicit DialogFit(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

/// Hides what does not fit into a width beside the parts before it: the first parts stay longest.
/// @param used width [px] that is taken already
void showWhatFits(const std::vector<QWidget*>& parts, int used, int width, int spacing);

} // namespace lobewright::ui
