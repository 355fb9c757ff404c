#pragma once

#include "ui/window/arrangement.h"

#include <QFrame>

namespace lobewright::ui {

/// A small drawing of how an arrangement divides the window, in the tones of a widget.
QPixmap arrangementPicture(const Arrangement& arrangement, const QWidget& widget);

/// The arrangements as a sheet of small drawn pictures, named by their tasks. A click, or the arrow
/// keys and Enter, choose one; Escape leaves.
class ArrangementSheet : public QFrame {
    Q_OBJECT

  public:
    /// `present`: key of the arrangement in the window.
    explicit ArrangementSheet(const QString& present, QWidget* parent = nullptr);

    /// Over `place`, its lower edge on the upper one of that.
    void popUp(const QWidget& place);

  Q_SIGNALS:
    void chosen(const QString& key);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    std::vector<QWidget*> buttons_;
};

} // namespace lobewright::ui
