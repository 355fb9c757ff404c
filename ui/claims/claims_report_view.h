#pragma once

#include "core/claims/verdict.h"

#include <QTextBrowser>

#include <set>

class QPagedPaintDevice;

namespace lobewright::ui {

struct Palette;

/// The verdict on a published sheet, to be read and copied: each figure and statement beside
/// arithmetic, the open design and its band, the weightiest on top. Every cell opens what stands
/// behind it; formulas are folded away until asked for.
class ClaimsReportView : public QTextBrowser {
    Q_OBJECT

  public:
    explicit ClaimsReportView(QWidget* parent = nullptr);

    void show(const study::VerdictPage& page);
    /// Every formula, every band and what is missing.
    void unfoldAll(bool isUnfolded);

    /// Everything in the tones of paper.
    void printOn(QPagedPaintDevice& device);

  Q_SIGNALS:
    void entryWanted(const QString& path);
    void figureWanted(const QString& name);
    void fieldWanted(const QString& path);
    void resultWanted(const QString& name);

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void open(const QUrl& link);
    void write();
    void makePage();
    const Palette& tones() const;
    void addRows();
    void addOthers();
    void addMissing();
    void addAssumed();
    /// A heading that folds what is below it; whether that is shown.
    bool addHeading(const char* key, const QString& title, bool isOpenAtFirst);
    /// A quiet line; nothing for an empty text.
    void addDetail(const QString& label, const QString& text);

    study::VerdictPage verdict_;
    std::set<std::string> unfolded_; ///< rows, by id
    std::set<std::string> turned_;   ///< headings that are not as they were at first
    bool isAllUnfolded_ = false;
    QString page_;
    bool onPaper_ = false;
};

} // namespace lobewright::ui
