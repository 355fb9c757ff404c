#pragma once

#include "core/study/law_comparison.h"
#include "ui/base/shown.h"
#include "ui/editing/edit.h"

#include <QFutureWatcher>
#include <QTimer>
#include <QWidget>

#include <optional>

class QCheckBox;
class QComboBox;
class QLabel;
class QMenu;
class QPushButton;

namespace lobewright::ui {

class LawFrames;
class LobeTable;

/// All motion laws for the same lift and span side by side: normalised curves, handbook factors,
/// and what each would mean for this design, solved in the background. Beside a free-form lobe
/// stand the laws for its longest rise.
class LawPane : public QWidget {
    Q_OBJECT

  public:
    explicit LawPane(QWidget* parent = nullptr);
    /// Stops what runs.
    ~LawPane() override;

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);

    LawFrames& frames() { return *frames_; }
    LobeTable& table() { return *table_; }
    bool isBusy() const { return watcher_.isRunning() || settle_.isActive(); }
    const std::vector<study::ComparedLaw>& laws() const { return laws_; }
    /// The rise of a free-form lobe, judged like a law; absent for segments.
    const std::optional<study::ComparedLaw>& lobe() const { return lobe_; }

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();

  private:
    using Answer = Result<std::vector<study::ComparedLaw>>;
    /// What takes the law.
    struct Target {
        End end = End::inlet;
        std::optional<int> segment;
        bool operator==(const Target&) const = default;
    };

    void buildBar();
    void listTargets();
    std::optional<Target> target() const;
    void compare();
    void compared();
    void compareFreely();
    void fillTable();
    void markBest();
    void choose(int law);
    void use(int law);
    void say(const QString& text);

    SolutionPointer solution_;
    std::vector<Target> targets_;
    std::vector<study::ComparedLaw> laws_;
    std::optional<study::ComparedLaw> lobe_; ///< a free-form rise in the same figures
    QFutureWatcher<Answer> watcher_;
    QTimer settle_;
    QComboBox* target_;
    std::vector<QCheckBox*> curves_;
    QPushButton* use_;
    LawFrames* frames_;
    LobeTable* table_;
    QLabel* message_;
};

} // namespace lobewright::ui
