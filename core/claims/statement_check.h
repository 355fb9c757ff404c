#pragma once

#include "core/claims/claims_basis.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

/// Statements in words: each becomes a row with what arithmetic says to it. Internal to the claims
/// check.
namespace lobewright::study {

/// A ratio stated to a digit or two agrees within this much [own estimate].
inline constexpr double looseness = 0.10;

inline bool isAbout(double one, double other, double tolerance = roundingOfFigures) {
    return std::abs(one - other) <= tolerance * std::max(std::abs(one), std::abs(other));
}

class StatementCheck {
  public:
    StatementCheck(const Statement& statement, const ClaimsReport& report, const ClaimBasis& basis,
                   const solution::Solution* design)
        : report_(report), basis_(basis), engine_(report.claims.engine), design_(design) {
        row_.statement = statement;
    }

    StatementRow check();

  private:
    void strokes();
    void eventsPerChamber();
    void events();
    void boost();
    void boostFromFigures(bool saysBoosted);
    void balance();
    void timesUsual();
    void powerStrokes(double times);
    void other();
    void firingInterval();
    void compressionRange();
    void size();
    void friction();
    void lowSpeedTorque();
    void oilConsumption();
    /// A figure of the open design where that is the engine claimed.
    std::optional<double> own(std::string_view figure) const {
        const auto* found = design_ != nullptr ? design_->figure(figure) : nullptr;
        return found != nullptr ? found->value : std::nullopt;
    }

    void open(Message why, Message overturnedBy) {
        row_.computed = std::move(why);
        row_.outcome = Outcome::open;
        row_.confidence = Confidence::low;
        row_.overturnedBy = std::move(overturnedBy);
    }
    /// One more figure that speaks to the statement.
    void say(const Message& sentence, const Message& arithmetic) {
        row_.computed = joined(row_.computed, sentence);
        row_.arithmetic = joined(row_.arithmetic, arithmetic);
    }
    void decide(bool agrees, Confidence confidence) {
        row_.outcome = agrees ? Outcome::agrees : Outcome::disagrees;
        row_.confidence = confidence;
    }

    const ClaimsReport& report_;
    const ClaimBasis& basis_;
    const ClaimedEngine& engine_;
    const solution::Solution* design_; ///< of the same engine, or null
    StatementRow row_;
};

} // namespace lobewright::study
