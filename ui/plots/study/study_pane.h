#pragma once

#include "ui/plots/base/readout_strip.h"
#include "ui/plots/study/study_runner.h"

#include <QWidget>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QMenu;
class QToolButton;

namespace lobewright::ui {

/// A view of studies that run in the background while somebody can see them: values above its plot,
/// and below it how far they are and a button that stops them.
class StudyPane : public QWidget {
    Q_OBJECT

  public:
    const QString& title() const { return title_; }
    bool isBusy() const;
    /// What the line below the plot says.
    QString stateText() const;
    virtual void addOptions(QMenu& menu) = 0;

  protected:
    StudyPane(const QString& title, QWidget* parent);

    /// What becomes of one study.
    struct Taker {
        std::function<void()> start; ///< as soon as the pane can be seen
        std::function<void(const study::Point&)> takePoint;
        std::function<void(const study::Table&)> takeTable;
    };
    /// The runner must live as long as the pane is shown.
    void watch(StudyRunner& runner, Taker taker);
    /// Whether a study may start now. Else whatever runs is stopped; a study that there is
    /// something for starts when the pane is seen.
    bool mayStart(const StudyRunner& runner, bool hasSubject);
    void sayState();

    /// Shows what has come of the studies so far.
    virtual void refill() = 0;
    struct Count {
        qsizetype done = 0, wanted = 0;  ///< points of the study that runs
        qsizetype failed = 0, shown = 0; ///< points shown
    };
    virtual Count count() const = 0;
    /// What is said while nothing runs and nothing is missing.
    virtual QString restingWords() const { return {}; }

    /// Puts the plot between its values and the line below it.
    void setPlot(QWidget& plot);
    /// The line below the plot; what says how far the study is stands last.
    QHBoxLayout& foot() const { return *foot_; }
    QLabel& stateLabel() const { return *state_; }
    QToolButton& stopButton() const { return *stop_; }
    ReadoutStrip& readout() const { return *readout_; }

    void hideEvent(QHideEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    struct Watched {
        StudyRunner* runner;
        Taker taker;
        bool isWanted = false; ///< to be run as soon as the pane can be seen
    };
    void stop();

    QString title_, problem_;
    bool isStopped_ = false;
    std::vector<Watched> watched_;
    QLabel* state_;
    QToolButton* stop_;
    ReadoutStrip* readout_;
    QHBoxLayout* foot_;
};

} // namespace lobewright::ui
