#include "ui/plots/comparison_pane.h"

#include "core/study/operating_points.h"
#include "ui/core_words.h"
#include "ui/plots/comparison_table.h"
#include "ui/plots/plot_export.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QProgressBar>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {

constexpr double slowest = 0.4, fastest = 1.6; ///< of the design's speed, in curves against speed
constexpr int speedPoints = 9;                 ///< the design's speed is one of them
constexpr double wide = 1.6; ///< width over height from which the table stands beside the plot

} // namespace

ComparisonPane::ComparisonPane(QWidget* parent)
    : QWidget(parent), basis_(new QComboBox(this)), quantity_(new QComboBox(this)),
      message_(new QLabel(this)), progress_(new QProgressBar(this)), cancel_(new QToolButton(this)),
      split_(new QSplitter(Qt::Vertical, this)), plot_(new ComparisonPlot(split_)),
      table_(new ComparisonTable(split_)) {
    setAccessibleName(tr("Comparison with cranks and a four-stroke"));
    buildBar();
    split_->addWidget(plot_);
    split_->addWidget(table_);
    split_->setChildrenCollapsible(true);
    split_->setStretchFactor(0, 1);
    split_->setStretchFactor(1, 1);
    layout()->addWidget(split_);
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
        message_->setText(tr("Stopped: shown is an earlier comparison"));
    });
    showBusy(false);
}

void ComparisonPane::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const auto wanted = width() > wide * height() ? Qt::Horizontal : Qt::Vertical;
    if (split_->orientation() == wanted)
        return;
    split_->setOrientation(wanted);
    split_->setSizes({1000, 1000}); // halves
}

void ComparisonPane::buildBar() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 2, 4, 2);
    auto* bar = new QHBoxLayout;
    for (const study::BasisWord& word : study::basisWords)
        basis_->addItem(coreText(word.label), QString::fromUtf8(word.key.data()));
    basis_->setToolTip(
        tr("What is made equal between this design and the four-stroke. Cranks stand "
           "at the same shaft speed and at the same piston speed in any case."));
    basis_->setAccessibleName(tr("Made equal"));
    for (const ComparedQuantityWord& word : comparedQuantities())
        quantity_->addItem(word.title, QString::fromLatin1(word.key));
    quantity_->setAccessibleName(tr("Shown"));
    quantity_->setToolTip(tr("The quantity in which the engines are laid over each other"));
    basis_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    basis_->setMinimumContentsLength(18);
    progress_->setRange(0, 1000);
    progress_->setTextVisible(false);
    progress_->setMaximumWidth(120);
    cancel_->setText(tr("Cancel"));
    cancel_->setToolTip(tr("Stop comparing; what is shown stays"));
    message_->setWordWrap(true);
    bar->addWidget(quantity_);
    bar->addWidget(basis_, 1);
    bar->addWidget(progress_);
    bar->addWidget(cancel_);
    column->addLayout(bar);
    column->addWidget(message_);
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
    if (!isSpeedCurve(quantity())) {
        worker_.compare(solution_, basis());
        return;
    }
    const double speed = solution_->design.running.speed;
    worker_.compareSpeeds(solution_, basis(),
                          study::evenlySpaced(slowest * speed, fastest * speed, speedPoints));
}

void ComparisonPane::arrived(const ComparisonWorker::Comparisons& comparisons) {
    plot_->show(comparisons, quantity());
    // Of many speeds the table shows that of the design, or the nearest that could be solved.
    const double speed = solution_->design.running.speed;
    const auto nearest =
        std::ranges::min_element(comparisons, {}, [speed](const study::Comparison& comparison) {
            return std::abs(comparison.speed - speed);
        });
    table_->show(*nearest);
    QStringList reasons;
    for (const study::ComparedEngine& engine : nearest->engines) {
        if (!engine.problem.empty())
            reasons << coreText(study::label(engine.engine)) + QStringLiteral(": ") +
                           coreText(engine.problem);
    }
    message_->setText(reasons.join(QLatin1Char('\n')));
    message_->setVisible(!reasons.isEmpty());
}

void ComparisonPane::showBusy(bool busy) {
    progress_->setVisible(busy);
    cancel_->setVisible(busy);
    progress_->setValue(0);
    message_->setVisible(!message_->text().isEmpty());
}

void ComparisonPane::addOptions(QMenu& menu) {
    for (int i = 0; i < 5; ++i) {
        const auto engine = static_cast<study::Compared>(i);
        QAction* action = menu.addAction(coreText(study::label(engine)));
        action->setCheckable(true);
        action->setChecked(plot_->isEngineShown(engine));
        connect(action, &QAction::toggled, plot_,
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
