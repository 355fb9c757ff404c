#pragma once

#include "ui/base/shown.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;

namespace lobewright::ui {

class ResultCard;

/// The results that matter to the person as cards in the status bar, with their change against the
/// baseline. A click shows the working, the menu of a card or the last button which of them stand
/// here; the choice is kept between runs.
class FiguresBar : public QWidget {
    Q_OBJECT

  public:
    explicit FiguresBar(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    /// Names of the figures shown, in their order.
    const QStringList& chosen() const { return chosen_; }
    void choose(const QStringList& names);
    static constexpr int most = 7;
    /// A narrow window leaves out the last cards.
    QSize minimumSizeHint() const override;
    QSize sizeHint() const override;

  Q_SIGNALS:
    /// The person wants to see how the figure of this name came about.
    void workingWanted(const QString& figure);

  protected:
    void contextMenuEvent(QContextMenuEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void rebuild();
    void refill();
    void fold();
    void openChoice(const QPoint& place);
    void fill(ResultCard& card, const QString& name) const;
    /// "Needs 1.04 N·m to turn" of a motored engine whose brake value is negative; else empty.
    QString neededText(const solution::Figure& figure) const;
    SolutionPointer solution_, baseline_;
    QStringList chosen_;
    QHBoxLayout* layout_;
    std::vector<ResultCard*> cards_;
    int hinted_ = 0; ///< width asked for last [px]
};

} // namespace lobewright::ui
