#pragma once

#include "ui/base/shown.h"

#include <QListView>

namespace lobewright::ui {

/// "38.2°, limit 35°"; of a remark "usual limit"; the value alone where the limit is 0.
QString valueAndLimit(const solution::Check& check);

/// The checks of a solution, worst first, each with its value, its limit and what to change.
/// Choosing one asks for the field to look at and the angle of the worst place.
class LimitsList : public QListView {
    Q_OBJECT

  public:
    explicit LimitsList(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    /// "2 errors, 1 warning, 3 remarks".
    QString summary() const { return summary_; }
    int count(solution::Severity severity) const;

  Q_SIGNALS:
    void fieldWanted(const QString& path);
    void angleWanted(double theta);
    /// The person wants to see how the value of a check came about.
    void workingWanted(const QString& figure);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    class Model;
    class Delegate;
    void follow(const QModelIndex& index);
    void askForWorking();
    Model* model_;
    QString summary_;
};

} // namespace lobewright::ui
