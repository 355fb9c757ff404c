#pragma once

#include "ui/base/shown.h"

#include <QSet>
#include <QTreeWidget>

#include <array>

class QMenu;

namespace lobewright::ui {

/// Every figure of the summary in its group, with the baseline and the difference to it.
class FiguresPanel : public QTreeWidget {
    Q_OBJECT

  public:
    /// "Forces and torque" for "loads".
    static QString groupTitle(const QString& key);

    explicit FiguresPanel(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void addOptions(QMenu& menu);
    /// What a figure is: its name or remark, its formula in symbols, and where that is from.
    QString helpOn(const QString& figure) const;
    /// Only figures whose name holds the text; empty: all.
    void setFilter(const QString& text);
    /// Only figures that read otherwise than in the baseline.
    void setChangedOnly(bool only);
    /// Name of the figure that is selected; empty: none.
    QString selectedFigure() const;
    /// Makes this figure the current one of the list and brings it into sight.
    void choose(const QString& figure);

  Q_SIGNALS:
    /// The person wants to see how the figure of this name came about.
    void workingWanted(const QString& figure);
    /// The person wants to give the figure of this name another value.
    void goalWanted(const QString& figure);

  protected:
    /// Made when it is asked for: a drag fills the panel many times a second.
    bool viewportEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

    void showEvent(QShowEvent* event) override;

  private:
    /// In the order of the model; the baseline stands before the present value on screen.
    enum Column { nameColumn, nowColumn, changeColumn, baselineColumn };
    void refill();
    void refillOnceSeen();
    void put(QTreeWidgetItem& item, Column column, const QString& text);
    void fitColumns();
    void filterRows();
    static bool isFold(const QTreeWidgetItem& item);
    void unfold(const QTreeWidgetItem& group);
    static bool isUnused(const solution::Solution& of, const solution::Figure& figure);
    void addFold(QTreeWidgetItem& group);
    QTreeWidgetItem* groupItem(const QString& key);
    SolutionPointer solution_, baseline_;
    std::array<QString, 4> longest_; ///< text of each column
    QString filter_;
    QSet<QString> unfolded_; ///< keys of groups that show everything
    bool changedOnly_ = false;
    bool isStale_ = false; ///< filled when it is next seen
};

} // namespace lobewright::ui
