#pragma once

#include "ui/base/shown.h"

#include <QStringList>
#include <QWidget>

class QLabel;
class QTextBrowser;
class QToolButton;
class QUrl;

namespace lobewright::ui {

/// How a figure came about: the formula in symbols, with this design's numbers, and every input
/// with a way back to where it comes from.
class WorkingView : public QWidget {
    Q_OBJECT

  public:
    explicit WorkingView(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    /// Shows the working of a figure; one that stands there already can be gone back to.
    void showFigure(const QString& name);
    /// Name of the figure shown; empty: none.
    QString figure() const { return trail_.isEmpty() ? QString() : trail_.last(); }
    /// What is shown, as plain text.
    QString text() const;
    /// As a click on an input: "figure:…", "field:…", "angle:…".
    void follow(const QUrl& link);

  public Q_SLOTS:
    void goBack();

  Q_SIGNALS:
    void fieldWanted(const QString& path);
    void angleWanted(double theta);
    /// The view of this key shows what the working speaks of.
    void viewWanted(const QString& key);
    void closed();

  private:
    void refill();

    SolutionPointer solution_;
    QStringList trail_; ///< figures on the way here
    QLabel* title_;
    QToolButton* back_;
    QTextBrowser* text_;
};

} // namespace lobewright::ui
