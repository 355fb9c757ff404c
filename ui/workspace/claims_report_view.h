#pragma once

#include "core/study/claims_check.h"

#include <QTreeWidget>

namespace lobewright::ui {

/// What follows from claims: conflicts, findings with their arithmetic, statements, and what is
/// missing.
class ClaimsReportView : public QTreeWidget {
    Q_OBJECT

  public:
    explicit ClaimsReportView(QWidget* parent = nullptr);

    void show(const study::ClaimsReport& report);

  private:
    QTreeWidgetItem* addHeading(const QString& title);
    QTreeWidgetItem* addRow(QTreeWidgetItem& heading, const QString& what, const QString& value,
                            const QString& verdict, bool isBad);
    /// A quiet line below a row; nothing for an empty text.
    void addDetail(QTreeWidgetItem& row, const QString& label, const std::string& text);
};

} // namespace lobewright::ui
