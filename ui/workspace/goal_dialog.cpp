#include "ui/workspace/goal_dialog.h"

#include "ui/core_words.h"
#include "ui/editing/figure_change.h"
#include "ui/units.h"
#include "ui/workspace/document.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent>

#include <atomic>
#include <cmath>

namespace lobewright::ui {

namespace {

std::optional<double> readNumber(const QLineEdit& line) {
    bool isNumber = false;
    const QString text = line.text().trimmed();
    double value = QLocale().toDouble(text, &isNumber);
    if (!isNumber)
        value = QLocale::c().toDouble(text, &isNumber);
    return isNumber ? std::optional(value) : std::nullopt;
}

QString withUnit(double value, const std::string& unit) {
    const Unit shown = unitFor(unit);
    const QString number = QLocale().toString(shown.shown(value), 'g', 6);
    return shown.text.isEmpty() ? number : number + QChar(0xA0) + shown.text;
}

/// The section a field stands in, so that two "Edge" differ.
QString longName(const design::Field& field) {
    return field.groupLabel.empty()
               ? coreText(field.label)
               : coreText(field.groupLabel) + QStringLiteral(": ") + coreText(field.label);
}

bool canVary(const design::Field& field) {
    for (const char* fixed : {"/limits/", "/reference/", "/track_blank/"}) {
        if (field.path.starts_with(fixed))
            return false;
    }
    return field.kind == design::FieldKind::number && std::holds_alternative<double>(field.value);
}

} // namespace

/// Stops the search from the window, and tells it how far it is.
class GoalDialog::Stop final : public Monitor {
  public:
    bool step(double fraction, std::string_view) override {
        fraction_ = fraction;
        return !stopped_;
    }
    void stop() { stopped_ = true; }
    double fraction() const { return fraction_; }

  private:
    std::atomic<bool> stopped_ = false;
    std::atomic<double> fraction_ = 0.0;
};

GoalDialog::GoalDialog(Document& document, SolutionPointer solution, const QString& figure,
                       QWidget* parent)
    : QDialog(parent), document_(document), solution_(std::move(solution)),
      figure_(figure.toStdString()) {
    setObjectName(QStringLiteral("goal"));
    setWindowTitle(tr("Make this…"));
    auto* column = new QVBoxLayout(this);
    auto* form = new QWidget(this);
    column->addWidget(form);
    buildForm(*form);
    progress_ = new QProgressBar(this);
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(6);
    progress_->setRange(0, 100);
    column->addWidget(progress_);
    message_ = new QLabel(this);
    message_->setObjectName(QStringLiteral("message"));
    message_->setWordWrap(true);
    message_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column->addWidget(message_);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("solutions"));
    list_->setMaximumHeight(84);
    list_->setAccessibleName(tr("Values that reach the target"));
    column->addWidget(list_);
    changes_ = new QTableWidget(0, 4, this);
    changes_->setObjectName(QStringLiteral("changes"));
    changes_->setHorizontalHeaderLabels(
        {tr("What else changes"), tr("Now"), tr("Then"), tr("Change")});
    changes_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    changes_->verticalHeader()->hide();
    changes_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    changes_->setSelectionMode(QAbstractItemView::NoSelection);
    column->addWidget(changes_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    search_ = buttons->addButton(tr("&Search"), QDialogButtonBox::ActionRole);
    search_->setObjectName(QStringLiteral("search"));
    search_->setDefault(true);
    apply_ = buttons->addButton(tr("&Apply"), QDialogButtonBox::AcceptRole);
    apply_->setObjectName(QStringLiteral("apply"));
    apply_->setEnabled(false);
    column->addWidget(buttons);
    connect(search_, &QPushButton::clicked, this, [this] { isBusy() ? stop() : search(); });
    connect(buttons, &QDialogButtonBox::accepted, this, &GoalDialog::apply);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, this,
            &GoalDialog::found);
    connect(list_, &QListWidget::currentRowChanged, this, &GoalDialog::showChanges);
    resize(560, 620);
    target_->setFocus();
    target_->selectAll();
}

GoalDialog::~GoalDialog() {
    stop();
    watcher_.waitForFinished();
}

void GoalDialog::buildForm(QWidget& widget) {
    auto* form = new QFormLayout(&widget);
    form->setContentsMargins(0, 0, 0, 0);
    const auto* figure = solution_->figure(figure_);
    const std::string unit = figure ? figure->unit : std::string();
    const QString label = figure ? coreText(figure->label) : QString::fromStdString(figure_);
    target_ = new QLineEdit(this);
    target_->setObjectName(QStringLiteral("target"));
    if (figure && figure->value)
        target_->setText(QLocale().toString(unitFor(unit).shown(*figure->value), 'g', 5));
    const QString symbol = unitFor(unit).text;
    auto* name = new QLabel(symbol.isEmpty() ? label : tr("%1 [%2]").arg(label, symbol), this);
    name->setWordWrap(true);
    name->setBuddy(target_);
    form->addRow(name, target_);
    input_ = new QComboBox(this);
    input_->setObjectName(QStringLiteral("input"));
    input_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    input_->setMinimumContentsLength(30);
    form->addRow(tr("by &varying"), input_);
    auto* range = new QWidget(this);
    auto* line = new QHBoxLayout(range);
    line->setContentsMargins(0, 0, 0, 0);
    from_ = new QLineEdit(range);
    from_->setObjectName(QStringLiteral("from"));
    from_->setAccessibleName(tr("Lower end of the range"));
    to_ = new QLineEdit(range);
    to_->setObjectName(QStringLiteral("to"));
    to_->setAccessibleName(tr("Upper end of the range"));
    fromUnit_ = new QLabel(range);
    line->addWidget(from_);
    line->addWidget(new QLabel(tr("to"), range));
    line->addWidget(to_);
    line->addWidget(fromUnit_);
    form->addRow(tr("&between"), range);
    fillInputs();
    connect(input_, &QComboBox::currentIndexChanged, this, &GoalDialog::proposeRange);
    proposeRange();
}

void GoalDialog::fillInputs() {
    int preferred = 0;
    for (design::Field& field : design::fields(document_.design())) {
        if (!canVary(field))
            continue;
        if (field.path == "/gas/supply/pressure_bar")
            preferred = static_cast<int>(inputs_.size());
        input_->addItem(longName(field), QString::fromStdString(field.path));
        inputs_.push_back(std::move(field));
    }
    input_->setCurrentIndex(preferred);
}

/// The range that is known of the input, else from half to twice its value.
void GoalDialog::proposeRange() {
    if (input_->currentIndex() < 0)
        return;
    const design::Field& field = inputs_[static_cast<size_t>(input_->currentIndex())];
    const Unit unit = unitFor(field.unit);
    const double value = std::get<double>(field.value);
    const design::Known known = design::knownOf(document_.design(), field.path);
    double low = known.low.value_or(value - 0.5 * std::abs(value));
    double high = known.high.value_or(value + (value == 0.0 ? 1.0 : std::abs(value)));
    low = std::max(low, field.range.min);
    high = std::min(high, field.range.max);
    from_->setText(QLocale().toString(unit.shown(low), 'g', 5));
    to_->setText(QLocale().toString(unit.shown(high), 'g', 5));
    fromUnit_->setText(unit.text);
}

void GoalDialog::search() {
    const auto target = readNumber(*target_), from = readNumber(*from_), to = readNumber(*to_);
    if (!target || !from || !to || input_->currentIndex() < 0) {
        say(tr("Target and range must be numbers."));
        return;
    }
    const design::Field& field = inputs_[static_cast<size_t>(input_->currentIndex())];
    const auto* figure = solution_->figure(figure_);
    goal_ = {figure_, unitFor(figure ? figure->unit : std::string()).metric(*target), field.path,
             unitFor(field.unit).metric(*from), unitFor(field.unit).metric(*to)};
    list_->clear();
    changes_->setRowCount(0);
    apply_->setEnabled(false);
    search_->setText(tr("&Stop"));
    say(tr("Searching…"));
    stop_ = std::make_shared<Stop>();
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this,
            [this] { progress_->setValue(static_cast<int>(100.0 * stop_->fraction())); });
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, timer,
            &QObject::deleteLater);
    timer->start(100);
    watcher_.setFuture(QtConcurrent::run([design = document_.design(), goal = goal_,
                                          monitor = stop_]() -> std::shared_ptr<Answer> {
        auto answer = std::make_shared<Answer>(Answer{study::solveFor(design, goal, *monitor), {}});
        for (size_t i = 0; answer->answer && i < answer->answer->solutions.size(); ++i) {
            const double input = answer->answer->solutions[i].input;
            auto solved = solution::solve(study::withGoal(design, goal, input), *monitor);
            if (solved)
                answer->made.push_back(std::move(solved).value());
        }
        return answer;
    }));
}

void GoalDialog::stop() {
    if (stop_)
        stop_->stop();
}

void GoalDialog::found() {
    search_->setText(tr("&Search"));
    progress_->setValue(0);
    const auto answer = watcher_.result();
    if (!answer->answer) {
        const QString why = coreText(answer->answer.problems().front().message);
        say(why == QLatin1String("cancelled") ? tr("Stopped.") : inShownUnits(why));
        return;
    }
    made_ = std::move(answer->made);
    showAnswer(*answer->answer);
}

void GoalDialog::showAnswer(const study::GoalAnswer& answer) {
    solutions_ = answer.solutions;
    if (made_.size() != solutions_.size())
        solutions_.clear(); // stopped between
    QString text;
    if (answer.solutions.empty()) {
        const auto& nearest = answer.nearest;
        text =
            (goal_.target > answer.highest.result  ? tr("Not reachable: the largest is %1 at %2.")
             : goal_.target < answer.lowest.result ? tr("Not reachable: the smallest is %1 at %2.")
                                                   : tr("Not reachable: the nearest is %1 at %2."))
                .arg(withUnit(nearest.result, answer.result.unit),
                     withUnit(nearest.input, answer.input.unit));
    } else if (answer.solutions.size() > 1) {
        text = tr("%1 values reach it.").arg(answer.solutions.size());
    }
    if (answer.failed > 0) {
        text += QLatin1Char(' ') + tr("%1 of %2 values in the range cannot be built or run: %3")
                                       .arg(answer.failed)
                                       .arg(study::sweepPoints)
                                       .arg(inShownUnits(coreText(answer.failure)));
    }
    say(text.trimmed());
    for (const auto& trial : solutions_) {
        list_->addItem(tr("%1: %2").arg(coreText(answer.input.label),
                                        withUnit(trial.input, answer.input.unit)));
    }
    list_->setCurrentRow(solutions_.empty() ? -1 : 0);
    apply_->setEnabled(!solutions_.empty());
}

void GoalDialog::showChanges(int index) {
    changes_->setRowCount(0);
    if (index < 0 || index >= static_cast<int>(made_.size()))
        return;
    const auto& made = made_[static_cast<size_t>(index)];
    const double period = 360.0 / made.pair.cyclesPerTurn();
    for (const auto& difference : study::figureDifferences(*solution_, made)) {
        if (difference.after.group == "solver")
            continue;
        const int row = changes_->rowCount();
        changes_->insertRow(row);
        const QString texts[] = {coreText(difference.after.label), figureText(difference.before),
                                 figureText(difference.after),
                                 figureChange(difference.after, difference.before, period).text};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(texts[column]);
            if (column > 0)
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            changes_->setItem(row, column, item);
        }
    }
    changes_->resizeColumnsToContents();
    changes_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
}

int GoalDialog::solutionCount() const {
    return static_cast<int>(solutions_.size());
}

void GoalDialog::apply() {
    const int row = list_->currentRow();
    if (row < 0)
        return;
    const auto* figure = solution_->figure(figure_);
    Edit edit;
    edit.text = tr("Make %1 %2")
                    .arg(inSentence(coreText(figure->label)), withUnit(goal_.target, figure->unit));
    edit.changes.push_back({goal_.input, solutions_[static_cast<size_t>(row)].input});
    if (document_.apply(edit).empty())
        accept();
}

void GoalDialog::say(const QString& text) {
    message_->setText(text);
}

} // namespace lobewright::ui
