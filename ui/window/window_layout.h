#pragma once

#include <QObject>

class QAction;
class QActionGroup;
class QMainWindow;
class QMenu;
class QSplitter;

namespace lobewright::ui {

class PaneGrid;
class SidePanel;
class Views;
struct Session;

/// How the window is divided: the side panel, the panes and their arrangement; kept between runs.
class WindowLayout : public QObject {
    Q_OBJECT

  public:
    /// Puts side panel and panes into the split.
    WindowLayout(Session& session, QSplitter& split, SidePanel& side, Views& views);

    /// Brings a view to sight: where it stands already, or in the last pane.
    void reveal(const QString& key);
    /// Views from left to right, top to bottom.
    QStringList shownViews() const;
    void arrange(const QString& key);
    /// Key of the present arrangement.
    const QString& arrangement() const { return arrangement_; }
    /// The sheet of arrangements, beside this button.
    void offerArrangements(const QWidget& beside);

    void save() const;
    void restore();
    /// The side panel as wide as the window asks for, unless the person moved its edge.
    void fitSide();

    /// Arrangements, all views, the side panel.
    void addTo(QMenu& menu);
    void addFullScreen(QMenu& menu);

  private:
    void addArrangements(QMenu& menu);

    QMainWindow& window_;
    QSplitter& split_;
    SidePanel& side_;
    Views& views_;
    PaneGrid* grid_;
    QActionGroup* arrangements_;
    QAction* sideShown_;
    QString arrangement_;
    bool isSideChosen_ = false; ///< the person moved its edge
};

} // namespace lobewright::ui
