#pragma once

#include "core/design/design.h"
#include "ui/base/shown.h"

#include <QWidget>

#include <optional>
#include <vector>

class QAction;
class QLineEdit;
class QTreeWidget;

namespace lobewright::ui {

/// The designs kept in the file under a name: taken, compared, restored, renamed and deleted here.
/// Asks; the document decides.
class SnapshotsPanel : public QWidget {
    Q_OBJECT

  public:
    explicit SnapshotsPanel(QWidget* parent = nullptr);

    void show(const design::Design& design);
    using QWidget::show;
    /// Marks the snapshot that the present design is compared with; null: none.
    void showBaseline(const SolutionPointer& baseline);
    /// Proposes a name for a new snapshot and puts the keyboard there.
    void startTaking();

  Q_SIGNALS:
    void taken(const QString& name);
    void restoreWanted(int index);
    void compareWanted(int index);
    void renamed(int index, const QString& name);
    void deleteWanted(int index);

  private:
    void buildEntry();
    void buildList();
    void buildActions();
    void take();
    void markRows();
    void updateActions();
    int current() const;

    std::vector<design::Snapshot> snapshots_;
    design::Design present_;
    std::optional<design::Design> baseline_;
    QLineEdit* name_ = nullptr;
    QTreeWidget* list_ = nullptr;
    QAction *restore_ = nullptr, *compare_ = nullptr, *rename_ = nullptr, *delete_ = nullptr;
};

} // namespace lobewright::ui
