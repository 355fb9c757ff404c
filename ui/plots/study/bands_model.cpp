#include "ui/plots/study/bands_model.h"

#include "ui/base/core_text.h"

namespace lobewright::ui {

namespace {
constexpr int settlingTime = 400;  // after the last edit [ms]
constexpr int refreshTime = 150;   // between pictures while engines come [ms]
constexpr std::size_t fewest = 24; ///< engines before the first picture
} // namespace

BandsModel::BandsModel(QObject* parent) : QObject(parent) {
    refreshing_.setInterval(refreshTime);
    connect(&refreshing_, &QTimer::timeout, this, &BandsModel::takeSoFar);
    // The progress of a search shows nothing else.
    connect(&searching_, &BackgroundWork::progressed, this, &BandsModel::busyChanged);
    connect(this, &BandsModel::changed, this, &BandsModel::fillBehind);
    connect(&behind_, &BandsBehind::shownChanged, this, &BandsModel::wantTurn);
}

bool BandsModel::isOfPresentDesign() const {
    return solution_ && computed_ && *computed_ == solution_->design;
}

void BandsModel::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    if (!isOfPresentDesign())
        start();
    wantTurn();
}

void BandsModel::showClaims(const study::Claims& claims) {
    conditions_ = unknowns::conditionsOf(claims);
    claimed_ = study::claimedPoints(claims);
    searching_.stop();
    requirement_.reset();
    Q_EMIT changed();
}

void BandsModel::setPurpose(unknowns::Purpose purpose) {
    if (purpose == purpose_)
        return;
    purpose_ = purpose;
    turnOf_.reset();
    start();
    wantTurn();
}

void BandsModel::setTolerances(const unknowns::Tolerances& tolerances) {
    tolerances_ = tolerances;
    if (purpose_ != unknowns::Purpose::scatter)
        return;
    turnOf_.reset();
    start();
    wantTurn();
}

void BandsModel::setResult(const std::string& name) {
    if (name == result_)
        return;
    result_ = name;
    decided_.reset();
    decide();
    Q_EMIT changed();
}

void BandsModel::start() {
    stop();
    deciding_.stop();
    if (!solution_)
        return;
    computed_ = solution_->design;
    basket_ = std::make_shared<Basket>();
    refreshing_.start();
    engines_.wantAnswer(
        [basket = basket_, design = *computed_, purpose = purpose_,
         tolerances = tolerances_](Monitor& monitor) -> Result<unknowns::Ensemble> {
            const auto ranged = unknowns::withRangesFor(design, purpose, tolerances);
            if (!ranged)
                return ranged.problems();
            unknowns::Plan plan;
            plan.speeds = unknowns::usualSpeeds(*ranged);
            return unknowns::computeEnsemble(
                *ranged, plan, monitor,
                [&](const unknowns::Run& run) {
                    const std::scoped_lock lock(basket->mutex);
                    basket->soFar->runs.push_back(run);
                },
                [&](const unknowns::Ensemble& empty) {
                    const std::scoped_lock lock(basket->mutex);
                    basket->soFar = empty;
                });
        },
        [this](Result<unknowns::Ensemble> answer) { takeEnsemble(std::move(answer)); },
        settlingTime);
    Q_EMIT busyChanged();
}

void BandsModel::wantTurn() {
    fillBehind(); // those of another design go
    if (!behind_.isShown() || !solution_ || (turnOf_ && *turnOf_ == solution_->design))
        return;
    turnOf_ = solution_->design;
    turn_.reset();
    turning_.wantAnswer(
        [design = solution_->design, purpose = purpose_,
         tolerances = tolerances_](Monitor& monitor) -> Result<unknowns::TurnBands> {
            const auto ranged = unknowns::withRangesFor(design, purpose, tolerances);
            if (!ranged)
                return ranged.problems();
            return unknowns::turnBands(*ranged, unknowns::turnSamples, unknowns::Plan().seed,
                                       monitor);
        },
        [this](Result<unknowns::TurnBands> answer) {
            if (answer)
                turn_ = std::make_shared<const unknowns::TurnBands>(std::move(answer).value());
            fillBehind();
        },
        settlingTime);
}

bool BandsModel::isOfUnknownsOf(const design::Design& design) const {
    return isWhole_ && ensemble_ && ensembleOf_ && *ensembleOf_ == design &&
           purpose_ == unknowns::Purpose::unknown;
}

void BandsModel::fillBehind() {
    const bool isTurnOfPresent = turn_ && turnOf_ && solution_ && *turnOf_ == solution_->design;
    const bool isNothingKnown = !problems_.empty() && problems_.front().path == "/knowledge";
    const bool isOfPresent =
        ensemble_ && ensembleOf_ && solution_ && *ensembleOf_ == solution_->design;
    behind_.set(isOfPresent ? unknowns::curveBands(*ensemble_)
                            : std::vector<unknowns::CurvePoint>(),
                isTurnOfPresent ? turn_ : nullptr,
                isNothingKnown      ? tr("none: no input has a range")
                : problems_.empty() ? QString()
                                    : coreText(problems_.front().message));
}

void BandsModel::stop() {
    refreshing_.stop();
    engines_.stop();
    searching_.stop();
    Q_EMIT busyChanged();
}

void BandsModel::takeSoFar() {
    {
        const std::scoped_lock lock(basket_->mutex);
        const std::size_t come = basket_->soFar ? basket_->soFar->runs.size() : 0;
        if (come < fewest || come == basket_->taken)
            return;
        basket_->taken = come;
        ensemble_ = std::make_shared<const unknowns::Ensemble>(*basket_->soFar);
        ensembleOf_ = computed_;
    }
    isWhole_ = false;
    problems_.clear();
    decided_.reset();
    requirement_.reset();
    Q_EMIT changed();
    Q_EMIT busyChanged();
}

void BandsModel::takeEnsemble(Result<unknowns::Ensemble> answer) {
    refreshing_.stop();
    decided_.reset();
    requirement_.reset();
    isWhole_ = static_cast<bool>(answer);
    if (answer) {
        problems_.clear();
        ensemble_ = std::make_shared<const unknowns::Ensemble>(std::move(answer).value());
        ensembleOf_ = computed_;
        decide();
    } else {
        problems_ = answer.problems();
        ensemble_.reset();
    }
    Q_EMIT changed();
    Q_EMIT busyChanged();
}

void BandsModel::decide() {
    if (!isWhole_ || !ensemble_)
        return;
    using Answer = Result<std::optional<unknowns::DecidedResult>>;
    deciding_.wantAnswer(
        [ensemble = ensemble_, result = result_](Monitor& monitor) -> Answer {
            const auto library = unknowns::statistics();
            if (!library)
                return library.problems();
            const auto all = unknowns::decideAll(**library, *ensemble, {result}, monitor);
            return all && !all->empty() ? std::optional(all->front()) : std::nullopt;
        },
        [this](Answer answer) {
            decided_ = answer ? std::move(answer).value() : std::nullopt;
            Q_EMIT changed();
        });
}

void BandsModel::search() {
    if (!isWhole_ || !ensemble_ || conditions_.empty())
        return;
    searching_.wantAnswer(
        [ensemble = ensemble_, conditions = conditions_, design = *computed_, purpose = purpose_,
         tolerances = tolerances_](Monitor& monitor) -> Result<unknowns::Requirement> {
            const auto ranged = unknowns::withRangesFor(design, purpose, tolerances);
            if (!ranged)
                return ranged.problems();
            return unknowns::whatWouldHaveToBeTrue(*ranged, *ensemble, conditions, {}, monitor);
        },
        [this](Result<unknowns::Requirement> answer) {
            if (answer)
                requirement_ = std::move(answer).value();
            Q_EMIT changed();
            Q_EMIT busyChanged();
        });
    refreshing_.stop();
    Q_EMIT busyChanged();
}

} // namespace lobewright::ui
