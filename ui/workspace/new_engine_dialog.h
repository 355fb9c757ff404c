#pragma once

#include "core/draft/draft.h"
#include "core/study/claims.h"

#include <QDialog>
#include <QFutureWatcher>

#include <map>
#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QComboBox;
class QListWidget;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTableWidget;
class QHBoxLayout;
class QVBoxLayout;

namespace lobewright::ui {

class ClaimsForm;

/// A new engine from what is known: published figures, a duty, a sample, or the smallest engine
/// that is valid. Figures and duties are completed by the rules of the draft; the candidates stand
/// side by side, each number with the rule behind it.
class NewEngineDialog : public QDialog {
    Q_OBJECT

  public:
    enum class Way { published, duty, sample, blank };

    explicit NewEngineDialog(QWidget* parent = nullptr);
    ~NewEngineDialog() override;

    void choose(Way way);
    void setClaims(const study::Claims& claims);
    /// Sets one line of the duty, "power" to "12 kW".
    void setDuty(const QString& key, const QString& value);
    /// Starts the drafts of all candidates.
    void makeDrafts();
    bool isBusy() const { return watcher_.isRunning(); }
    const std::vector<draft::Draft>& candidates() const { return drafts_; }
    void select(int candidate);
    /// The engine to open once the dialog is accepted, and its name.
    const std::optional<design::Design>& chosen() const { return chosen_; }
    const QString& name() const { return name_; }
    /// Index of the sample to open instead; −1: none.
    int sample() const { return sample_; }

  private:
    struct Answer {
        std::vector<draft::Draft> drafts;
        Problems problems; ///< of candidates that cannot be made
    };
    class Stop;

    QWidget* buildPublished();
    QWidget* buildDuty();
    QWidget* buildSamples();
    QWidget* buildBlank();
    void buildResults(QVBoxLayout& column);
    void wayChanged(int row);
    std::optional<draft::Brief> brief();
    void showConflicts();
    void made();
    void showCandidates();
    void showSteps();
    void stepEdited(int row, int column);
    void useCandidate();
    void stop();
    void say(const QString& text);

    Way way_ = Way::published;
    std::vector<draft::Draft> drafts_;
    draft::OwnNumbers own_;
    int selected_ = -1;
    std::optional<design::Design> chosen_;
    QString name_;
    int sample_ = -1;
    QFutureWatcher<std::shared_ptr<Answer>> watcher_;
    std::shared_ptr<Stop> stop_;

    QListWidget *ways_ = nullptr, *samples_ = nullptr;
    QStackedWidget* pages_ = nullptr;
    ClaimsForm* form_ = nullptr;
    std::map<QString, QLineEdit*> duty_;
    QComboBox* fuel_ = nullptr;
    QLabel *conflicts_ = nullptr, *message_ = nullptr;
    QWidget *results_ = nullptr, *cards_ = nullptr;
    QHBoxLayout* cardLine_ = nullptr;
    QTableWidget* steps_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton *draft_ = nullptr, *open_ = nullptr;
    bool isFilling_ = false; ///< the table is being filled, not edited
};

} // namespace lobewright::ui
