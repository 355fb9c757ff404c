#pragma once

#include "core/draft/draft.h"

#include <QWidget>

#include <vector>

class QButtonGroup;
class QGridLayout;

namespace lobewright::ui {

/// The candidates of a draft side by side, a column each: a small drawing and the six figures by
/// which they are told apart. A click anywhere in a column chooses it.
class CandidateTable : public QWidget {
    Q_OBJECT

  public:
    explicit CandidateTable(QWidget* parent = nullptr);

    void show(const std::vector<draft::Draft>& drafts);
    /// -1: none.
    void choose(int candidate);
    int chosen() const;

  Q_SIGNALS:
    void chosenChanged(int candidate);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    void clear();
    void addLabels();
    void addColumn(const draft::Draft& made, double largest);
    QRect columnRect(int candidate) const;

    QGridLayout* grid_;
    QButtonGroup* buttons_ = nullptr;
    std::vector<std::vector<QWidget*>> columns_; ///< what stands in each, from top to bottom
};

} // namespace lobewright::ui
