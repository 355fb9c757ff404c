#pragma once

#include "core/claims/claims_check.h"
#include "core/unknowns/bands.h"
#include "core/unknowns/consistent.h"
#include "core/unknowns/decides.h"
#include "core/unknowns/tolerances.h"
#include "ui/base/background_work.h"
#include "ui/base/shown.h"
#include "ui/plots/base/bands_behind.h"

#include <QObject>
#include <QTimer>

#include <memory>
#include <mutex>
#include <optional>
#include <vector>

namespace lobewright::ui {

/// The study over what is not known of the design, for all views that show it. Runs in the
/// background while one of them can be seen; what has been computed so far is shown meanwhile.
class BandsModel : public QObject {
    Q_OBJECT

  public:
    using EnsemblePointer = std::shared_ptr<const unknowns::Ensemble>;

    explicit BandsModel(QObject* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showClaims(const study::Claims& claims);
    void setPurpose(unknowns::Purpose purpose);
    /// Of the scatter of manufacture.
    void setTolerances(const unknowns::Tolerances& tolerances);
    unknowns::Purpose purpose() const { return purpose_; }
    /// Name of the result that is looked at closely.
    void setResult(const std::string& name);
    const std::string& result() const { return result_; }

    /// Computes; stopped, what is there stays.
    void stop();
    void start();
    /// Looks for engines that keep to the published figures.
    void search();

    /// The same bands behind other plots; they are computed while they are shown anywhere.
    BandsBehind& behind() { return behind_; }
    /// Whether the ensemble is whole, of this design, and of what is not known of it.
    bool isOfUnknownsOf(const design::Design& design) const;

    const SolutionPointer& solution() const { return solution_; }
    /// So far; null before the first engines have come.
    const EnsemblePointer& ensemble() const { return ensemble_; }
    bool isWhole() const { return isWhole_; }
    /// Of the result looked at; absent until it is known, or where nothing decides it.
    const std::optional<unknowns::DecidedResult>& decided() const { return decided_; }
    const std::vector<unknowns::Condition>& conditions() const { return conditions_; }
    const std::optional<unknowns::Requirement>& requirement() const { return requirement_; }
    const std::vector<study::ClaimedPoint>& claimedPoints() const { return claimed_; }
    /// Why there is nothing to show; empty: there is.
    const Problems& problems() const { return problems_; }
    /// No input of the design has a range.
    bool hasNothingToVary() const {
        return !problems_.empty() && problems_.front().path == "/knowledge";
    }

    bool isBusy() const { return engines_.isBusy(); }
    bool isSearching() const { return searching_.isBusy(); }
    double progress() const { return isSearching() ? searching_.progress() : engines_.progress(); }

  Q_SIGNALS:
    void changed();     ///< engines, decision or requirement
    void busyChanged(); ///< also as work proceeds

  private:
    /// Engines on their way from the threads that compute them.
    struct Basket {
        std::mutex mutex;
        std::optional<unknowns::Ensemble> soFar;
        std::size_t taken = 0;
    };
    void takeSoFar();
    void takeEnsemble(Result<unknowns::Ensemble> answer);
    void decide();
    void wantTurn();
    void fillBehind();
    bool isOfPresentDesign() const;

    SolutionPointer solution_;
    std::optional<design::Design> computed_; ///< the design that the engines are of
    unknowns::Purpose purpose_ = unknowns::Purpose::unknown;
    unknowns::Tolerances tolerances_;
    std::string result_ = "peak_torque_speed_rpm";
    std::vector<unknowns::Condition> conditions_;
    std::vector<study::ClaimedPoint> claimed_;
    EnsemblePointer ensemble_;
    std::optional<design::Design> ensembleOf_; ///< the design that it is of
    bool isWhole_ = false;
    std::optional<unknowns::DecidedResult> decided_;
    std::optional<unknowns::Requirement> requirement_;
    Problems problems_;
    std::shared_ptr<Basket> basket_;
    QTimer refreshing_;
    BandsBehind behind_;
    BandsBehind::TurnPointer turn_;
    std::optional<design::Design> turnOf_; ///< the design that `turn_` is of, or that is computed
    BackgroundWork engines_, deciding_, searching_, turning_;
};

} // namespace lobewright::ui
