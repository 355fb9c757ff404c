#include "ui/panels/snapshots_panel.h"

#include "core/design/snapshot.h"
#include "ui/base/layouts.h"
#include "ui/base/plain_message.h"

#include <QAction>
#include <QDateTime>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>
#include <QToolButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {

enum Column { nameColumn, takenColumn };

QString takenText(const std::string& taken) {
    const QString text = QString::fromStdString(taken);
    const QDateTime when = QDateTime::fromString(text, Qt::ISODate);
    return when.isValid() ? QLocale().toString(when.toLocalTime(), QLocale::ShortFormat) : text;
}

} // namespace

SnapshotsPanel::SnapshotsPanel(QWidget* parent) : QWidget(parent) {
    columnOf(this, {8, 8, 8, 8}, 8, {});
    buildEntry();
    buildList();
    buildActions();
    updateActions();
}

void SnapshotsPanel::buildEntry() {
    auto* line = new QHBoxLayout;
    name_ = new QLineEdit(this);
    name_->setAccessibleName(tr("Name of a new snapshot"));
    name_->setPlaceholderText(tr("Name of a new snapshot"));
    name_->setMaxLength(100);
    name_->setToolTip(tr("The present design is kept in the file under this name"));
    auto* take = new QToolButton(this);
    take->setText(tr("Take"));
    take->setToolTip(tr("Keep the present design under this name"));
    connect(take, &QToolButton::clicked, this, &SnapshotsPanel::take);
    connect(name_, &QLineEdit::returnPressed, this, &SnapshotsPanel::take);
    line->addWidget(name_, 1);
    line->addWidget(take);
    static_cast<QVBoxLayout*>(layout())->addLayout(line);
}

void SnapshotsPanel::buildList() {
    list_ = new QTreeWidget(this);
    list_->setColumnCount(2);
    list_->setHeaderLabels({tr("Snapshot"), tr("Taken")});
    list_->setRootIsDecorated(false);
    list_->setUniformRowHeights(true);
    list_->setAccessibleName(tr("Snapshots"));
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    list_->setContextMenuPolicy(Qt::ActionsContextMenu);
    list_->header()->setStretchLastSection(false);
    list_->header()->setSectionResizeMode(nameColumn, QHeaderView::Stretch);
    list_->header()->setSectionResizeMode(takenColumn, QHeaderView::ResizeToContents);
    layout()->addWidget(list_);
    connect(list_, &QTreeWidget::currentItemChanged, this, &SnapshotsPanel::updateActions);
    connect(list_, &QTreeWidget::itemDoubleClicked, this, [this] { restore_->trigger(); });
    connect(list_, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item, int column) {
        const int index = list_->indexOfTopLevelItem(item);
        const QString name = item->text(column).trimmed();
        const QString before =
            QString::fromStdString(snapshots_.at(static_cast<size_t>(index)).name);
        if (column != nameColumn || name == before)
            return;
        {
            // What is refused must not stay in the list; what is accepted comes back by show().
            const QSignalBlocker quiet(list_);
            item->setText(nameColumn, before);
        }
        // The list is made anew: not while its editor is still closing.
        QMetaObject::invokeMethod(
            this, [this, index, name] { Q_EMIT renamed(index, name); }, Qt::QueuedConnection);
    });
}

void SnapshotsPanel::buildActions() {
    auto* grid = new QGridLayout;
    grid->setSpacing(4);
    int count = 0;
    const auto add = [&](const QString& text, const QString& hint, const QKeySequence& key) {
        auto* action = new QAction(text, this);
        action->setToolTip(tr("%1 (%2)").arg(hint, key.toString(QKeySequence::NativeText)));
        action->setShortcut(key);
        action->setShortcutContext(Qt::WidgetShortcut);
        list_->addAction(action);
        auto* button = new QToolButton(this);
        button->setDefaultAction(action);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        grid->addWidget(button, count / 2, count % 2);
        ++count;
        return action;
    };
    compare_ = add(tr("Compare"), tr("Make it the baseline, behind every plot and result"),
                   QKeySequence(Qt::SHIFT | Qt::Key_Return));
    restore_ = add(tr("Restore"), tr("Make it the present design again; can be undone"),
                   QKeySequence(Qt::Key_Return));
    rename_ = add(tr("Rename"), tr("Give it another name"), QKeySequence(Qt::Key_F2));
    delete_ = add(tr("Delete"), tr("Remove it from the file; can be undone"),
                  QKeySequence(Qt::Key_Delete));
    connect(compare_, &QAction::triggered, this, [this] { Q_EMIT compareWanted(current()); });
    connect(restore_, &QAction::triggered, this, [this] { Q_EMIT restoreWanted(current()); });
    connect(rename_, &QAction::triggered, this,
            [this] { list_->editItem(list_->currentItem(), nameColumn); });
    connect(delete_, &QAction::triggered, this, [this] { Q_EMIT deleteWanted(current()); });
    static_cast<QVBoxLayout*>(layout())->addLayout(grid);
}

void SnapshotsPanel::showBaseline(const SolutionPointer& baseline) {
    baseline_.reset();
    if (baseline)
        baseline_ = design::withoutSnapshots(baseline->design);
    markRows();
}

void SnapshotsPanel::show(const design::Design& design) {
    const int before = current();
    const bool isSame = snapshots_ == design.snapshots;
    snapshots_ = design.snapshots;
    present_ = design::withoutSnapshots(design);
    const QSignalBlocker quiet(list_);
    if (!isSame) {
        list_->clear();
        for (const design::Snapshot& snapshot : snapshots_) {
            auto* item = new QTreeWidgetItem(list_, {QString::fromStdString(snapshot.name)});
            item->setFlags(item->flags() | Qt::ItemIsEditable);
        }
        const int last = list_->topLevelItemCount() - 1;
        list_->setCurrentItem(list_->topLevelItem(before < 0 ? last : std::min(before, last)));
    }
    markRows();
    updateActions();
}

/// What each snapshot is besides a snapshot.
void SnapshotsPanel::markRows() {
    const QSignalBlocker quiet(list_);
    for (size_t i = 0; i < snapshots_.size(); ++i) {
        QTreeWidgetItem* item = list_->topLevelItem(static_cast<int>(i));
        const bool isPresent = snapshots_[i].design == present_;
        QFont weight = font();
        weight.setBold(isPresent);
        item->setFont(nameColumn, weight);
        const bool isBaseline = baseline_ && snapshots_[i].design == *baseline_;
        QStringList states;
        if (isBaseline)
            states << tr("baseline");
        if (isPresent)
            states << tr("as now");
        item->setText(takenColumn, states.isEmpty() ? takenText(snapshots_[i].taken)
                                                    : states.join(QStringLiteral(", ")));
        item->setToolTip(
            nameColumn,
            plainToolTip(tr("%1, taken %2%3")
                             .arg(item->text(nameColumn), takenText(snapshots_[i].taken),
                                  isPresent ? tr("; equal to the present design") : QString()) +
                         (isBaseline ? tr("; shown behind every plot as baseline") : QString())));
    }
}

void SnapshotsPanel::startTaking() {
    name_->setText(
        QString::fromStdString(design::freeName(snapshots_, tr("Snapshot").toStdString())));
    name_->selectAll();
    name_->setFocus(Qt::ShortcutFocusReason);
}

void SnapshotsPanel::take() {
    QString name = name_->text().trimmed();
    if (name.isEmpty())
        name = QString::fromStdString(design::freeName(snapshots_, tr("Snapshot").toStdString()));
    const size_t before = snapshots_.size();
    Q_EMIT taken(name);
    if (snapshots_.size() <= before)
        return; // refused: the name stays to be mended
    name_->clear();
    list_->setCurrentItem(list_->topLevelItem(list_->topLevelItemCount() - 1));
}

void SnapshotsPanel::updateActions() {
    for (QAction* action : {restore_, compare_, rename_, delete_}) {
        if (action)
            action->setEnabled(current() >= 0);
    }
}

int SnapshotsPanel::current() const {
    return list_->currentItem() ? list_->indexOfTopLevelItem(list_->currentItem()) : -1;
}

} // namespace lobewright::ui
