#pragma once

#include "core/claims/claims_keys.h"

#include <QWidget>

#include <functional>
#include <optional>
#include <string>
#include <vector>

class QFormLayout;
class QLabel;

namespace lobewright::ui {

/// One entry of the claims file, whatever group it stands in: what it is and how to get at it.
struct ClaimEntry {
    using Kind = study::ClaimKind;
    std::string path; ///< "/figures/power"
    TextId label, help;
    Kind kind = Kind::amount;
    study::Dimension dimension = study::Dimension::fraction; ///< of an amount
    bool isWhole = false;                                    ///< of a count
    std::vector<study::ClaimWord> words = {};                ///< of a choice
    // Of the kind it is.
    std::function<std::optional<study::Amount>&(study::Claims&)> amount = {};
    std::function<std::optional<double>&(study::Claims&)> count = {};
    std::function<std::optional<bool>&(study::Claims&)> flag = {};
    std::function<std::string&(study::Claims&)> text = {};
    std::function<std::optional<std::size_t>(const study::Claims&)> chosen = {};
    std::function<void(study::Claims&, std::optional<std::size_t>)> choose = {};
};

/// access: the group of the key in the claims, const or not.
template <class Group, class Access>
// NOLINTNEXTLINE(performance-unnecessary-value-param): moved on, unseen in a template
ClaimEntry claimEntry(std::string path, const study::ClaimKey<Group>& key, Access access) {
    ClaimEntry entry{.path = std::move(path),
                     .label = key.label,
                     .help = key.help,
                     .kind = key.kind,
                     .dimension = key.dimension,
                     .isWhole = key.whole,
                     .words = key.words};
    entry.amount = [ =, member = key.amount ](study::Claims & all) -> auto& {
        return access(all).*member;
    };
    entry.count = [ =, member = key.count ](study::Claims & all) -> auto& {
        return access(all).*member;
    };
    entry.flag = [ =, member = key.flag ](study::Claims & all) -> auto& {
        return access(all).*member;
    };
    entry.text = [ =, member = key.text ](study::Claims & all) -> auto& {
        return access(all).*member;
    };
    entry.chosen = [=, of = key.chosen](const study::Claims& all) { return of(access(all)); };
    entry.choose = [=, set = key.choose](study::Claims& all, std::optional<std::size_t> word) {
        set(access(all), word);
    };
    return entry;
}

/// A row of a form for one entry: its editor with room for the rule that an entry broke and for
/// what it would decide. What cannot be read is marked and not taken.
class ClaimsLine : public QWidget {
    Q_OBJECT

  public:
    /// Adds itself to the form. claims: those that are shown; they outlive the line, which leaves
    /// them as they are.
    ClaimsLine(ClaimEntry entry, study::Claims& claims, QFormLayout& form, QWidget* parent);

    const std::string& path() const { return entry_.path; }
    QWidget& editor() const { return *editor_; }
    bool isFilled() const;
    bool isMarked() const;
    /// Brings what is shown up to date; unless all shall be, what was typed in vain stays, to be
    /// corrected.
    void refresh(bool all);
    void setShown(bool isShown);
    /// What the entry would decide; empty: nothing.
    void setHint(const QString& hint);

  Q_SIGNALS:
    /// The claims as they shall be.
    void edited(const lobewright::study::Claims& claims, const QString& label);

  private:
    QWidget* makeEditor();
    QWidget* makeText();
    QWidget* makeAmount();
    QWidget* makeCount();
    QWidget* makeChoice();
    QWidget* makeFlag();
    QString help() const;
    bool accept(const QString& broken);
    /// Changes a copy of the claims and hands it on, unless that breaks a rule of the file.
    void change(const std::function<void(study::Claims&)>& edit);

    const ClaimEntry entry_;
    study::Claims& claims_;
    QFormLayout& form_;
    QWidget* editor_ = nullptr;
    QLabel *rule_ = nullptr, *hint_ = nullptr;
    std::function<void()> fill_; ///< the editor, of the claims
};

} // namespace lobewright::ui
