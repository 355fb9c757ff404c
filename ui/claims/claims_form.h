#pragma once

#include "core/claims/claims.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QFormLayout;
class QVBoxLayout;

namespace lobewright::ui {

/// Every key of a claims file to be filled in; empty stands for "not given". What cannot be read is
/// marked with the rule it breaks and not taken.
class ClaimsForm : public QWidget {
    Q_OBJECT

  public:
    /// Everything of a claims file; or only what the draft of an engine can follow, figures first.
    enum class Extent { everything, draft };

    explicit ClaimsForm(QWidget* parent = nullptr, Extent extent = Extent::everything);
    ~ClaimsForm() override;

    void show(const study::Claims& claims);
    const study::Claims& claims() const { return claims_; }

  Q_SIGNALS:
    /// The claims as they shall be, and what was changed.
    void edited(const lobewright::study::Claims& claims, const QString& what);

  private:
    /// One line of the form.
    struct Line {
        /// Brings what is shown up to date with the claims; unless all shall be, what was typed in
        /// vain stays, to be corrected.
        std::function<void(bool all)> refresh;
    };
    template <class Group, class Access>
    void addGroup(QFormLayout& form, std::vector<Line>& lines, const Group& keys, Access access);
    template <class Key, class Access>
    void addKey(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);
    void buildEverything();
    void buildDraft();
    void buildStatements();
    template <class Key, class Access>
    void addText(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);
    template <class Key, class Access>
    void addAmount(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);
    template <class Key, class Access>
    void addCount(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);
    template <class Key, class Access>
    void addChoice(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);
    template <class Key, class Access>
    void addFlag(QFormLayout& form, std::vector<Line>& lines, const Key& key, Access access);

    QFormLayout* addHeading(const QString& title);
    void rebuildStatements();
    void addStatement(std::size_t index);
    void change(study::Claims claims, const QString& what);

    study::Claims claims_;
    QVBoxLayout* column_;
    QWidget* statements_ = nullptr;
    std::vector<Line> lines_, statementLines_;
};

} // namespace lobewright::ui
