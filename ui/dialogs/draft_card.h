#pragma once

#include "core/draft/draft.h"

#include <QWidget>

class QRadioButton;

namespace lobewright::ui {

/// One candidate: a small drawing with the figures by which candidates are told apart. A click
/// anywhere chooses it.
class DraftCard : public QWidget {
    Q_OBJECT

  public:
    /// `largest`: outer diameter of the largest candidate [m].
    DraftCard(const draft::Draft& made, double largest, QWidget* parent);

    QRadioButton& button() { return *button_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    QRadioButton* button_;
};

} // namespace lobewright::ui
