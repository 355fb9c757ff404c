#pragma once

#include "core/reference/comparison.h"

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

    /// Width that shows all engines and names of two lines [px]; 0 while there is nothing.
    int wholeWidth() const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void shareWidth();
    study::Comparison comparison_;
};

} // namespace lobewright::ui
