#pragma once

#include <QObject>

namespace lobewright::ui {

class SnapshotsPanel;
struct Session;

/// Does what the list of snapshots asks for.
class SnapshotCommands : public QObject {
    Q_OBJECT

  public:
    SnapshotCommands(Session& session, SnapshotsPanel& panel);

  private:
    void take(const QString& name);
    void rename(int index, const QString& name);
    void remove(int index);
    void restore(int index);
    void compare(int index);

    Session& session_;
};

} // namespace lobewright::ui
