#pragma once

#include "core/study/comparison.h"

#include <QTableWidget>

namespace lobewright::ui {

/// Figures of all engines of a comparison, a line for each figure.
class ComparisonTable : public QTableWidget {
    Q_OBJECT

  public:
    explicit ComparisonTable(QWidget* parent = nullptr);

    void show(study::Comparison comparison);
    /// The table as tab-separated text, for spreadsheets.
    QString text() const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    /// What the columns leave over goes to the names.
    void shareWidth();

    study::Comparison comparison_;
};

} // namespace lobewright::ui
