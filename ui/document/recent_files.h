#pragma once

#include <QMenu>

namespace lobewright::ui {

/// The files opened or saved last, newest first, as a menu.
class RecentFiles : public QMenu {
    Q_OBJECT

  public:
    explicit RecentFiles(QWidget* parent = nullptr);

    static QStringList files();
    void add(const QString& file);
    void remove(const QString& file);

  Q_SIGNALS:
    void fileChosen(const QString& file);

  private:
    void rebuild();
    void keep(const QStringList& files);
};

} // namespace lobewright::ui
