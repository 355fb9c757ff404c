#pragma once

#include "core/claims/claims_check.h"
#include "core/result.h"
#include "ui/base/shown.h"

#include <QUndoStack>
#include <QWidget>

class QMenu;
class QVBoxLayout;

namespace lobewright::ui {

class ClaimsForm;
class ClaimsReportView;

/// Published figures of an engine, held against arithmetic: a form, and beside it what follows.
/// What is filled in is kept between runs and can be saved as a claims file.
class ClaimsPane : public QWidget {
    Q_OBJECT

  public:
    explicit ClaimsPane(QWidget* parent = nullptr);

    /// Claims do not depend on the design, but where it is the engine claimed they are answered
    /// from it.
    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);
    /// Writes the findings as text, or as JSON or PDF where the file is called so.
    std::optional<Problem> saveFindings(const QString& file);
    /// The claims as a file holds them.
    QString state() const;
    void restoreState(const QString& state);

    const study::Claims& claims() const { return claims_; }
    const study::ClaimsReport& report() const { return report_; }
    ClaimsForm& form() { return *form_; }
    QUndoStack& undoStack() { return undoStack_; }
    /// Every problem when the file cannot be used; the present claims then stay.
    Problems open(const QString& file);
    std::optional<Problem> save(const QString& file);
    void fillInExample();

  Q_SIGNALS:
    void claimsChanged(const lobewright::study::Claims& claims);
    void stateChanged();

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
    void askForFile();
    void askWhereToSave();
    void askWhereToSaveFindings();

    study::Claims claims_;
    study::ClaimsReport report_;
    SolutionPointer design_; ///< only of the engine claimed
    QUndoStack undoStack_;
    ClaimsForm* form_;
    ClaimsReportView* view_;
};

} // namespace lobewright::ui
