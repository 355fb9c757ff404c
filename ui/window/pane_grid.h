#pragma once

#include "ui/window/arrangement.h"
#include "ui/window/views.h"

#include <QSplitter>

#include <vector>

class QMenu;

namespace lobewright::ui {

class Pane;

/// The panes of the window: columns that are divided into rows, as an arrangement says. What the
/// person changes (other views, other sizes) is kept for each arrangement.
class PaneGrid : public QSplitter {
    Q_OBJECT

  public:
    PaneGrid(Views& views, QWidget* parent);

    void arrange(const Arrangement& arrangement);
    /// Brings a view to sight: where it stands already, or in the last pane.
    void reveal(const QString& key);
    /// Views from left to right, top to bottom.
    QStringList shownViews() const;

    void save() const;
    /// Forgets what the person changed in the present arrangement.
    void reset();

  private:
    void build(const std::vector<Arrangement::Column>& columns);
    void takeDown();
    void restoreSizes();
    void addChoices(QMenu& menu, Pane& pane);
    void setView(Pane& pane, const QString& key);
    void enlarge(Pane& pane);
    QString keptUnder() const;
    QString setting(const char* name) const;

    Views& views_;
    Arrangement arrangement_;
    std::vector<QSplitter*> columns_;
    std::vector<Pane*> panes_;
    Pane* enlarged_ = nullptr;
};

} // namespace lobewright::ui
