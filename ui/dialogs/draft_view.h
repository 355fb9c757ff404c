#pragma once

#include "core/draft/draft.h"
#include "ui/base/background_work.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QProgressBar;

namespace lobewright::ui {

class CandidateTable;
class DraftSteps;

/// The candidates that the rules make of what is known, side by side, with the numbers of the
/// chosen one. Made in the background, anew at every change.
class DraftView : public QWidget {
    Q_OBJECT

  public:
    explicit DraftView(QWidget* parent = nullptr);

    /// Drafts every candidate; nothing: shows `hint` instead.
    void follow(const std::optional<draft::Brief>& brief, const QString& hint);
    bool isBusy() const { return work_.isBusy(); }
    const std::vector<draft::Draft>& candidates() const { return drafts_; }
    void select(int candidate);
    /// Null: none.
    const draft::Draft* selected() const;

  Q_SIGNALS:
    void changed();
    /// The power that an engine within the limits on its size has [W].
    void nearestPowerWanted(double power);

  private:
    struct Answer {
        std::vector<draft::Draft> drafts;
        Problems problems; ///< of candidates that cannot be made
    };
    void start();
    void show(Answer answer);
    QString whatIsOpen() const;
    QString remarks() const;
    void take(const std::string& rule, std::optional<double> number);

    std::optional<draft::Brief> brief_;
    draft::OwnNumbers own_;
    std::vector<draft::Draft> drafts_;
    int selected_ = -1;
    /// The candidate to be chosen again when the drafts are made anew.
    int wantedLobes_ = 2;
    std::optional<study::Charging> wantedCharging_;
    BackgroundWork work_;
    QLabel *message_, *remarks_;
    QProgressBar* progress_;
    CandidateTable* table_;
    DraftSteps* steps_;
};

} // namespace lobewright::ui
