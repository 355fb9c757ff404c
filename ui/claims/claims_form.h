#pragma once

#include "core/claims/verdict.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QFormLayout;
class QLabel;
class QToolButton;
class QVBoxLayout;

namespace lobewright::ui {

class ClaimsLine;
struct ClaimEntry;

/// A published sheet as short lines to be filled in; empty stands for "not given". What cannot be
/// read is marked with the rule it breaks and not taken. Only what is filled in or wanted next is
/// open; the rest is a click away.
class ClaimsForm : public QWidget {
    Q_OBJECT

  public:
    /// Everything of a claims file, folded; or only what the draft of an engine can follow, figures
    /// first, all of it open.
    enum class Extent { everything, draft };

    explicit ClaimsForm(QWidget* parent = nullptr, Extent extent = Extent::everything);
    ~ClaimsForm() override;

    void show(const study::Claims& claims);
    const study::Claims& claims() const { return claims_; }
    /// What is missing, that which decides most first: the first few lines are opened.
    void setWanted(const std::vector<study::WantedNumber>& wanted);
    /// Opens the line at this path of the claims file, "/figures/power" or "/statements/0", and
    /// gives it the keyboard.
    void focusEntry(const QString& path);

  Q_SIGNALS:
    /// The claims as they shall be, and what was changed.
    void edited(const lobewright::study::Claims& claims, const QString& what);
    /// This part of the form wants to be seen.
    void shown(QWidget* entry);

  private:
    struct Line {
        ClaimsLine* row = nullptr;
        bool isAlwaysOpen = false;
        std::function<bool()> belongs = [] { return true; }; ///< to the kind of a statement
    };
    /// Lines under one heading, which hides those that nobody asks for.
    struct Section {
        QFormLayout* form = nullptr;
        QToolButton* more = nullptr;
        std::string path; ///< in front of its keys
        std::vector<Line> lines;
        bool isOpen = false;
        QWidget* box = nullptr; ///< of a statement
    };

    void buildEverything();
    void buildDraft();
    void buildSource();
    void buildStatements();
    Line& addLine(Section& section, ClaimEntry entry);
    Section& addSection(const QString& title, const std::string& path, QVBoxLayout& column,
                        QWidget* parent, std::vector<std::unique_ptr<Section>>& to);
    void rebuildStatements();
    void addStatement(std::size_t index);
    void refresh(bool all);
    /// Shows of every section what is filled in, wanted or asked for.
    void fold();
    void fold(Section& section);
    bool isOpen(const Section& section, const Line& line) const;
    QString hintFor(const std::string& path) const;
    void sayNext();
    void change(study::Claims claims, const QString& what);

    const Extent extent_;
    study::Claims claims_;
    std::vector<study::WantedNumber> wanted_; ///< the first few
    QVBoxLayout* column_;
    QLabel* next_ = nullptr;
    QWidget* statements_ = nullptr;
    std::vector<std::unique_ptr<Section>> sections_, statementSections_;
};

} // namespace lobewright::ui
