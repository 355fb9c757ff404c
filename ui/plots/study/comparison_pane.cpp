#include "ui/plots/study/comparison_pane.h"

#include "core/study/operating_points.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/menus.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/study/comparison_table.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QProgressBar>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lobewright::ui {

namespace {

std::string_view key(study::Basis basis) {
    return std::ranges::find(study::basisWords, basis, &study::BasisWord::basis)->key;
}

constexpr double slowest = 0.4, fastest = 1.6; ///< of the design's speed, in curves against speed
constexpr int speedPoints = 9;                 ///< the design's speed is one of them
constexpr int leastPlotWidth = 320;            ///< [px] beside the table
constexpr double wide = 1.6; ///< width over height from which the table stands beside the plot

} // namespace

ComparisonPane::ComparisonPane(QWidget* parent)
    : QWidget(parent), basis_(new QComboBox(this)), quantity_(new QComboBox(this)),
      heading_(new QLabel(this)), message_(new QLabel(this)), progress_(new QProgressBar(this)),
      cancel_(new QToolButton(this)), split_(new QSplitter(Qt::Vertical, this)),
      plot_(new ComparisonPlot(split_)), table_(new ComparisonTable(split_)) {
    setAccessibleName(tr("Comparison with crank engines"));
    buildBar();
    split_->addWidget(plot_);
    split_->addWidget(table_);
    split_->setChildrenCollapsible(true);
    split_->setStretchFactor(0, 1);
    split_->setStretchFactor(1, 1);
    static_cast<QVBoxLayout*>(layout())->addWidget(split_, 1);
    connect(&worker_, &ComparisonWorker::finished, this, &ComparisonPane::arrived);
    connect(&worker_, &ComparisonWorker::failed, this, [this](const Problems& problems) {
        message_->setText(coreText(problems.front().message));
    });
    connect(&worker_, &ComparisonWorker::busyChanged, this, &ComparisonPane::showBusy);
    connect(&worker_, &ComparisonWorker::progressed, this,
            [this](double fraction, const QString& what) {
                progress_->setValue(static_cast<int>(1000.0 * fraction));
                progress_->setToolTip(what);
            });
    connect(cancel_, &QToolButton::clicked, this, [this] {
        worker_.cancel();
        backToShown();
        message_->setText(tr("Stopped: an earlier comparison is shown"));
        message_->show();
    });
    showBusy(false);
}

void ComparisonPane::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const auto wanted = width() > wide * height() ? Qt::Horizontal : Qt::Vertical;
    if (split_->orientation() == wanted)
        return;
    split_->setOrientation(wanted);
    shareRoom();
}

/// Beside the plot the table has the width that shows all engines, below it half the height.
void ComparisonPane::shareRoom() {
    const int table = table_->wholeWidth();
    if (split_->orientation() == Qt::Horizontal && table > 0 && width() > 2 * leastPlotWidth)
        split_->setSizes({std::max(leastPlotWidth, width() - table), table});
    else
        split_->setSizes({1000, 1000}); // halves
}

void ComparisonPane::buildBar() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    auto* bar = new QHBoxLayout;
    for (const study::BasisWord& word : study::basisWords)
        basis_->addItem(coreText(word.label), QString::fromUtf8(word.key.data()));
    describe(*basis_, tr("Made equal"),
             tr("What is made equal between this design and the four-stroke. Cranks stand "
                "at the same shaft speed and at the same piston speed in any case."));
    for (const ComparedQuantityWord& word : comparedQuantities())
        quantity_->addItem(word.title, QString::fromLatin1(word.key));
    describe(*quantity_, tr("Shown"), tr("The quantity compared"));
    basis_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    basis_->setMinimumContentsLength(18);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setMaximumWidth(120);
    cancel_->setText(tr("Cancel"));
    cancel_->setToolTip(tr("Stop comparing; what is shown stays"));
    message_->setWordWrap(true);
    heading_->setWordWrap(true);
    heading_->setObjectName(QStringLiteral("comparisonHeading"));
    // Their places stay: who goes for Cancel must not meet the lists when the work ends.
    for (QWidget* transient : {static_cast<QWidget*>(progress_), static_cast<QWidget*>(cancel_)}) {
        QSizePolicy policy = transient->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        transient->setSizePolicy(policy);
    }
    int longest = 0;
    for (int i = 0; i < basis_->count(); ++i)
        longest = std::max(longest, fontMetrics().horizontalAdvance(basis_->itemText(i)));
    basis_->setMaximumWidth(longest + 60); // its list is as wide as itself
    bar->addWidget(quantity_);
    bar->addWidget(basis_, 1);
    bar->addStretch(0);
    bar->addWidget(progress_);
    bar->addWidget(cancel_);
    column->addLayout(bar);
    column->addWidget(message_);
    column->addWidget(heading_);
    connect(basis_, &QComboBox::activated, this, [this] {
        request();
        Q_EMIT stateChanged();
    });
    connect(quantity_, &QComboBox::activated, this, [this] {
        request();
        Q_EMIT stateChanged();
    });
}

study::Basis ComparisonPane::basis() const {
    return study::basisWords[basis_->currentIndex()].basis;
}

ComparedQuantity ComparisonPane::quantity() const {
    return comparedQuantities()[static_cast<std::size_t>(quantity_->currentIndex())].quantity;
}

QString ComparisonPane::message() const {
    return message_->text();
}

void ComparisonPane::setQuantity(ComparedQuantity quantity) {
    const auto& words = comparedQuantities();
    const auto found = std::ranges::find(words, quantity, &ComparedQuantityWord::quantity);
    quantity_->setCurrentIndex(static_cast<int>(found - words.begin()));
    request();
}

void ComparisonPane::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    request();
}

void ComparisonPane::showClaims(const std::vector<study::ClaimedPoint>& points) {
    plot_->showClaims(points);
}

void ComparisonPane::request() {
    if (!solution_)
        return;
    message_->clear();
    wanted_ = {solution_, basis(), quantity()};
    sayWhatIsShown();
    if (!isSpeedCurve(quantity())) {
        worker_.compare(solution_, basis());
        return;
    }
    const double speed = solution_->design.running.speed;
    worker_.compareSpeeds(solution_, basis(),
                          study::evenlySpaced(slowest * speed, fastest * speed, speedPoints));
}

void ComparisonPane::arrived(const ComparisonWorker::Comparisons& comparisons) {
    const bool isFirst = !shown_.solution;
    shown_ = wanted_;
    plot_->show(comparisons, shown_.quantity);
    // Of many speeds the table shows that of the design, or the nearest that could be solved.
    const double speed = shown_.solution->design.running.speed;
    const auto nearest =
        std::ranges::min_element(comparisons, {}, [speed](const study::Comparison& comparison) {
            return std::abs(comparison.speed - speed);
        });
    table_->show(*nearest);
    if (isFirst)
        shareRoom();
    sayWhatIsShown();
    QStringList reasons;
    for (const study::ComparedEngine& engine : nearest->engines) {
        if (!engine.problem.empty()) {
            reasons << coreText(study::label(engine.engine)) + QStringLiteral(": ") +
                           coreText(engine.problem);
        }
    }
    message_->setText(reasons.join(QLatin1Char('\n')));
    message_->setVisible(!reasons.isEmpty());
}

/// The choices say again what plot and table show.
void ComparisonPane::backToShown() {
    if (!shown_.solution)
        return;
    basis_->setCurrentIndex(basis_->findData(QString::fromUtf8(key(shown_.basis).data())));
    const auto& words = comparedQuantities();
    const auto found = std::ranges::find(words, shown_.quantity, &ComparedQuantityWord::quantity);
    quantity_->setCurrentIndex(static_cast<int>(found - words.begin()));
    wanted_ = {solution_, shown_.basis, shown_.quantity};
    sayWhatIsShown();
    Q_EMIT stateChanged();
}

void ComparisonPane::sayWhatIsShown() {
    const bool isCurrent = shown_ == wanted_;
    table_->setEnabled(isCurrent);
    heading_->setVisible(shown_.solution != nullptr);
    if (!shown_.solution)
        return;
    const QString speed =
        QLocale().toString(shown_.solution->design.running.speed / units::revPerMinute, 'g', 5);
    const QString what = tr("%1 at %2 rpm").arg(coreText(study::label(shown_.basis)), speed);
    heading_->setText(isCurrent ? tr("Shown: %1").arg(what)
                                : tr("Shown until the new comparison is ready: %1").arg(what));
}

void ComparisonPane::showBusy(bool busy) {
    progress_->setVisible(busy);
    cancel_->setVisible(busy);
    progress_->setValue(0);
    message_->setVisible(!message_->text().isEmpty());
}

void ComparisonPane::setBands(BandsBehind& bands) {
    bands_ = &bands;
    plot_->setBands(bands);
}

void ComparisonPane::addOptions(QMenu& menu) {
    if (bands_)
        bands_->addAction(menu);
    for (int i = 0; i < 5; ++i) {
        const auto engine = static_cast<study::Compared>(i);
        addCheck(menu, coreText(study::label(engine)), plot_->isEngineShown(engine), plot_,
                 [this, engine](bool shown) { plot_->setEngineShown(engine, shown); });
    }
    menu.addSeparator();
    menu.addAction(tr("Copy the &table"), this,
                   [this] { QApplication::clipboard()->setText(table_->text()); });
    menu.addSeparator();
    addPictureActions(menu, *plot_, plot_->accessibleName());
}

QString ComparisonPane::state() const {
    return basis_->currentData().toString() + QLatin1Char('|') +
           quantity_->currentData().toString();
}

void ComparisonPane::restoreState(const QString& state) {
    const QStringList parts = state.split(QLatin1Char('|'));
    const auto choose = [](QComboBox& box, const QString& key) {
        if (const int index = box.findData(key); index >= 0)
            box.setCurrentIndex(index);
    };
    choose(*basis_, parts.value(0));
    choose(*quantity_, parts.value(1));
    request();
}

} // namespace lobewright::ui
