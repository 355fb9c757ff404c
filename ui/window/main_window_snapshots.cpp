#include "core/design/snapshot.h"
#include "ui/base/core_text.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/window/main_window.h"

#include <QDateTime>
#include <QMenu>
#include <QStatusBar>
#include <QTabWidget>

namespace lobewright::ui {

namespace {

constexpr int messageTime = 8000; // [ms]

QString nameOf(const design::Design& design, int index) {
    return QString::fromStdString(design.snapshots.at(static_cast<size_t>(index)).name);
}

} // namespace

void MainWindow::buildSnapshots() {
    snapshots_ = new SnapshotsPanel(side_);
    side_->addTab(snapshots_, tr("Snapshots"));
    using List = Result<std::vector<design::Snapshot>>;
    const auto change = [this](const QString& text, const List& list) {
        if (!list) {
            statusBar()->showMessage(coreText(list.problems().front().message), messageTime);
            return;
        }
        Edit edit;
        edit.text = text;
        edit.snapshots = *list;
        document_.apply(edit);
    };
    connect(snapshots_, &SnapshotsPanel::taken, this, [this, change](const QString& name) {
        const QString now = QDateTime::currentDateTimeUtc().toString(Qt::ISODate);
        change(tr("Take snapshot “%1”").arg(name),
               design::withSnapshot(document_.design(), name.toStdString(), now.toStdString()));
    });
    connect(snapshots_, &SnapshotsPanel::renamed, this,
            [this, change](int index, const QString& name) {
                const auto& present = document_.design();
                change(tr("Rename snapshot “%1”").arg(nameOf(present, index)),
                       design::withName(present.snapshots, static_cast<size_t>(index),
                                        name.toStdString()));
            });
    connect(snapshots_, &SnapshotsPanel::deleteWanted, this, [this, change](int index) {
        auto list = document_.design().snapshots;
        const QString name = nameOf(document_.design(), index);
        list.erase(list.begin() + index);
        change(tr("Delete snapshot “%1”").arg(name), list);
    });
    connect(snapshots_, &SnapshotsPanel::restoreWanted, this, [this](int index) {
        const auto& snapshot = document_.design().snapshots.at(static_cast<size_t>(index));
        const QString name = nameOf(document_.design(), index);
        document_.apply({tr("Restore snapshot “%1”").arg(name), {}, snapshot.design, {}});
        statusBar()->showMessage(tr("“%1” is the present design again").arg(name), messageTime);
    });
    connect(snapshots_, &SnapshotsPanel::compareWanted, this, [this](int index) {
        const auto& snapshot = document_.design().snapshots.at(static_cast<size_t>(index));
        const QString name = nameOf(document_.design(), index);
        baseline_.keep(snapshot.design, name);
        statusBar()->showMessage(tr("“%1” is shown behind every plot as the baseline").arg(name),
                                 messageTime);
    });
}

void MainWindow::addSnapshotActions(QMenu& menu) {
    QAction* take =
        menu.addAction(tr("&Take a snapshot"), QKeySequence(tr("Ctrl+T")), this, [this] {
            sideShown_->setChecked(true);
            side_->setCurrentWidget(snapshots_);
            snapshots_->startTaking();
        });
    take->setStatusTip(tr("Keep the present design in the file under a name"));
}

} // namespace lobewright::ui
