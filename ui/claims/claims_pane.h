#pragma once

#include "core/claims/verdict.h"
#include "core/result.h"
#include "ui/base/shown.h"

#include <QUndoStack>
#include <QWidget>

class QMenu;
class QVBoxLayout;

namespace lobewright::ui {

class ClaimsForm;
class ClaimsReportView;

/// Published figures of an engine, held against arithmetic and against the open design: the sheet
/// at the left, the verdict at the right. What is filled in is kept between runs and can be saved
/// as a claims file.
class ClaimsPane : public QWidget {
    Q_OBJECT

  public:
    explicit ClaimsPane(QWidget* parent = nullptr);

    /// Claims do not depend on the design, but where it is the engine claimed they are answered
    /// from it.
    void showSolution(const SolutionPointer& solution);
    /// Of the possible engines of the open design; absent: not computed.
    void showBands(const std::optional<study::ResultQuantileMap>& bands);
    void addOptions(QMenu& menu);
    /// Writes the findings as text, or as JSON or PDF where the file is called so.
    std::optional<Problem> saveFindings(const QString& file);
    /// The claims as a file holds them.
    QString state() const;
    void restoreState(const QString& state);

    const study::Claims& claims() const { return claims_; }
    const study::ClaimsReport& report() const { return verdict_.report; }
    const study::VerdictPage& verdict() const { return verdict_; }
    /// The same with this design, whether the pane has been shown it or not.
    study::VerdictPage verdictOn(const SolutionPointer& solution) const;
    ClaimsForm& form() { return *form_; }
    QUndoStack& undoStack() { return undoStack_; }
    /// Every problem when the file cannot be used; the present claims then stay.
    Problems open(const QString& file);
    std::optional<Problem> save(const QString& file);
    void fillInExample();
    /// Figures typed in elsewhere, undone like those typed in here.
    void fillIn(const study::Claims& claims);

  Q_SIGNALS:
    void claimsChanged(const lobewright::study::Claims& claims);
    void stateChanged();
    /// What stands behind a cell of the verdict shall be shown.
    void figureWanted(const QString& name);
    void fieldWanted(const QString& path);
    void resultWanted(const QString& name);

  protected:
    /// Undo and redo are those of the claims as long as the keys are typed in here: not of the
    /// design.
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    class Change;
    bool takeUndoKeys(QEvent* event);
    void buildBar(QVBoxLayout& column);
    void take(const study::Claims& claims, const QString& what);
    void set(const study::Claims& claims);
    void judge();
    void askForFile();
    void askWhereToSave();
    void askWhereToSaveFindings();

    study::Claims claims_;
    study::VerdictPage verdict_;
    SolutionPointer design_;
    std::optional<study::ResultQuantileMap> bands_;
    QUndoStack undoStack_;
    ClaimsForm* form_;
    ClaimsReportView* view_;
};

} // namespace lobewright::ui
