#pragma once

#include "core/claims/claims_check.h"

#include <QTextBrowser>

class QPagedPaintDevice;

namespace lobewright::ui {

struct Palette;

/// What follows from claims, to be read and copied: conflicts, findings with their arithmetic,
/// statements, and what is missing.
class ClaimsReportView : public QTextBrowser {
    Q_OBJECT

  public:
    explicit ClaimsReportView(QWidget* parent = nullptr);

    void show(const study::ClaimsReport& report);

    /// Everything in the tones of paper.
    void printOn(QPagedPaintDevice& device);

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void write();
    void makePage();
    const Palette& tones() const;
    void addConflicts();
    void addFindings();
    void addStatements();
    void addMissing();
    void addHeading(const QString& title);
    /// A line with what it is about, its value, and the verdict; then details.
    void addRow(const QString& what, const QString& value, TextId verdict, bool isBad);
    /// A quiet line; nothing for an empty text.
    void addDetail(const QString& label, const QString& text);

    study::ClaimsReport report_;
    QString page_;
    bool onPaper_ = false;
};

} // namespace lobewright::ui
