#pragma once

#include <QWidget>

class QLineEdit;
class QTextBrowser;
class QToolButton;
class QTreeWidget;

namespace lobewright::ui {

/// The help in a window of its own: contents and search beside the page, back and forward.
class HelpWindow : public QWidget {
    Q_OBJECT

  public:
    explicit HelpWindow(QWidget* parent = nullptr);

    /// Shows a page, by its file name, and comes to the front; an unknown name: the contents.
    void open(const QString& file);
    /// Comes to the front with the pages that hold these words, the best one open.
    void searchFor(const QString& words);
    /// File name of the page shown.
    QString page() const;

  private:
    void buildBar();
    void comeToFront();
    void listPages();
    void showPage(const QString& file);
    void markPage(const QString& file);
    /// The page that fits the search best.
    void showFirstFound();

    QToolButton *back_, *forward_, *home_;
    QLineEdit* search_;
    QTreeWidget* list_;
    QTextBrowser* text_;
};

} // namespace lobewright::ui
