#include "ui/window/snapshot_commands.h"

#include "core/design/snapshot.h"
#include "ui/base/core_text.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/window/session.h"

#include <QDateTime>

namespace lobewright::ui {

namespace {

QString nameOf(const design::Snapshot& snapshot) {
    return QString::fromStdString(snapshot.name);
}

const design::Snapshot& snapshotOf(const Session& session, int index) {
    return session.document.design().snapshots.at(static_cast<size_t>(index));
}

void change(Session& session, const QString& text,
            const Result<std::vector<design::Snapshot>>& list) {
    if (!list) {
        session.say(coreText(list.problems().front().message));
        return;
    }
    Edit edit;
    edit.text = text;
    edit.snapshots = *list;
    session.document.apply(edit);
}

} // namespace

SnapshotCommands::SnapshotCommands(Session& session, SnapshotsPanel& panel)
    : QObject(&panel), session_(session) {
    connect(&panel, &SnapshotsPanel::taken, this, &SnapshotCommands::take);
    connect(&panel, &SnapshotsPanel::renamed, this, &SnapshotCommands::rename);
    connect(&panel, &SnapshotsPanel::deleteWanted, this, &SnapshotCommands::remove);
    connect(&panel, &SnapshotsPanel::restoreWanted, this, &SnapshotCommands::restore);
    connect(&panel, &SnapshotsPanel::compareWanted, this, &SnapshotCommands::compare);
}

void SnapshotCommands::take(const QString& name) {
    const QString now = QDateTime::currentDateTimeUtc().toString(Qt::ISODate);
    change(session_, tr("Take snapshot “%1”").arg(name),
           design::withSnapshot(session_.document.design(), name.toStdString(), now.toStdString()));
}

void SnapshotCommands::rename(int index, const QString& name) {
    change(session_, tr("Rename snapshot “%1”").arg(nameOf(snapshotOf(session_, index))),
           design::withName(session_.document.design().snapshots, static_cast<size_t>(index),
                            name.toStdString()));
}

void SnapshotCommands::remove(int index) {
    auto list = session_.document.design().snapshots;
    const QString name = nameOf(snapshotOf(session_, index));
    list.erase(list.begin() + index);
    change(session_, tr("Delete snapshot “%1”").arg(name), list);
}

void SnapshotCommands::restore(int index) {
    const design::Snapshot& snapshot = snapshotOf(session_, index);
    const QString name = nameOf(snapshot);
    session_.document.apply({tr("Restore snapshot “%1”").arg(name), {}, snapshot.design, {}});
    session_.say(tr("“%1” is the present design again").arg(name));
}

void SnapshotCommands::compare(int index) {
    const design::Snapshot& snapshot = snapshotOf(session_, index);
    const QString name = nameOf(snapshot);
    session_.baseline.keep(snapshot.design, name);
    session_.say(tr("“%1” is shown behind every plot as the baseline").arg(name));
}

} // namespace lobewright::ui
