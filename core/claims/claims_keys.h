#pragma once

#include "core/claims/claims.h"

#include <fmt/format.h>

#include <functional>
#include <span>
#include <string_view>
#include <variant>
#include <vector>

/// The one description of the claims file, used by reader, writer and form.
namespace lobewright::study {

/// A word of the file with the words of the trade for it.
struct ClaimWord {
    std::string_view key;
    TextId label;
};

/// What a key holds.
enum class ClaimKind { amount, count, choice, flag, text };

/// Access to one key of a group. Texts are the file's: choices are keys, amounts "120 hp".
template <class Group>
struct ClaimKey {
    using Kind = ClaimKind;
    std::string_view name{};
    TextId label{}, help{};
    Kind kind = Kind::amount;
    Dimension dimension = Dimension::fraction; ///< amounts
    std::vector<ClaimWord> words{};            ///< choices
    /// Admissible values in SI. The widest span keeps every product of claims finite.
    double least = 1e-12, most = 1e12;
    bool whole = false;                 ///< counts: whole numbers only
    std::vector<StatementKind> kinds{}; ///< statements that have the key; empty: all

    std::optional<Amount> Group::*amount = nullptr;
    std::optional<double> Group::*count = nullptr;
    std::optional<bool> Group::*flag = nullptr;
    std::string Group::*text = nullptr;
    /// Choices: the chosen index into `words`, or nothing.
    std::function<std::optional<std::size_t>(const Group&)> chosen{};
    std::function<void(Group&, std::optional<std::size_t>)> choose{};
};

std::span<const ClaimKey<Claims>> claimHeadKeys();
std::span<const ClaimKey<ClaimedEngine>> claimEngineKeys();
std::span<const ClaimKey<ClaimedFigures>> claimFigureKeys();
std::span<const ClaimKey<ClaimedConditions>> claimConditionKeys();
std::span<const ClaimKey<Statement>> statementKeys();

/// Whether a statement of this kind has the key.
bool belongsTo(const ClaimKey<Statement>& key, StatementKind kind);

/// Shows every key of one group with the group: f(key, group).
template <class F>
void forEachGroup(F f) {
    f("engine", claimEngineKeys(), &Claims::engine);
    f("figures", claimFigureKeys(), &Claims::figures);
    f("conditions", claimConditionKeys(), &Claims::conditions);
}

/// f(key, group) for the key at a path of the file, "/figures/torque"; not called for any other.
template <class ClaimsType, class F>
void withKey(ClaimsType& claims, std::string_view path, F f) {
    forEachGroup([&](std::string_view group, const auto& keys, auto member) {
        for (const auto& key : keys) {
            if (path == fmt::format("/{}/{}", group, key.name)) {
                f(key, claims.*member);
            }
        }
    });
}

/// The claims without the number at the path of the file, "/figures/torque". Unknown paths change
/// nothing.
Claims without(Claims claims, std::string_view path);

/// What the key at a path of the file is called, "Torque"; empty: no such key.
TextId claimLabel(std::string_view path);

} // namespace lobewright::study
