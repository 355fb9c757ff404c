#include "ui/dialogs/goal_dialog.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"
#include "ui/dialogs/search_line.h"
#include "ui/document/document.h"
#include "ui/panels/number_edit.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableWidget>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

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

GoalDialog::GoalDialog(Document& document, SolutionPointer solution, const QString& figure,
                       QWidget* parent)
    : QDialog(parent), document_(document), solution_(std::move(solution)) {
    setObjectName(QStringLiteral("goal"));
    setWindowTitle(tr("Make this…"));
    auto* form = new QWidget(this);
    buildForm(*form, figure);
    line_ = new SearchLine(work_, this);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("solutions"));
    list_->setMaximumHeight(4 * fontMetrics().lineSpacing());
    list_->setAccessibleName(tr("Values that reach the target"));
    changes_ = new QTableWidget(0, 4, this);
    changes_->setObjectName(QStringLiteral("changes"));
    changes_->setHorizontalHeaderLabels(
        {tr("What else changes"), tr("Now"), tr("Then"), tr("Change")});
    changes_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    changes_->verticalHeader()->hide();
    changes_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    changes_->setWordWrap(false);
    changes_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    changes_->setSelectionMode(QAbstractItemView::NoSelection);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    line_->addButton(*buttons, [this] { search(); });
    apply_ = addButton(*buttons, tr("&Apply"), QDialogButtonBox::AcceptRole, "apply");
    apply_->setEnabled(false);
    columnOf(this, {form, line_, list_, {changes_, 1}, buttons});
    connect(buttons, &QDialogButtonBox::accepted, this, &GoalDialog::apply);
    connect(list_, &QListWidget::currentRowChanged, this, &GoalDialog::showChanges);
    resize(560, 620);
    target_->setFocus();
    target_->selectAll();
}

void GoalDialog::buildForm(QWidget& widget, const QString& figure) {
    auto* form = new QFormLayout(&widget);
    form->setContentsMargins(0, 0, 0, 0);
    const auto chooser = [&](const char* name) {
        auto* box = new QComboBox(this);
        box->setObjectName(QLatin1String(name));
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(30);
        return box;
    };
    const auto withUnitLabel = [&](QWidget& parent, QLabel*& unit) {
        auto* line = new QHBoxLayout(&parent);
        line->setContentsMargins(0, 0, 0, 0);
        unit = new QLabel(&parent);
        return line;
    };
    result_ = chooser("result");
    form->addRow(tr("&Make"), result_);
    auto* aim = new QWidget(this);
    auto* aimLine = withUnitLabel(*aim, targetUnit_);
    target_ = new QLineEdit(aim);
    target_->setObjectName(QStringLiteral("target"));
    target_->setAccessibleName(tr("Target"));
    aimLine->addWidget(target_, 1);
    aimLine->addWidget(targetUnit_);
    form->addRow(tr("&equal to"), aim);
    input_ = chooser("input");
    form->addRow(tr("by &varying"), input_);
    auto* range = new QWidget(this);
    auto* line = withUnitLabel(*range, fromUnit_);
    from_ = new QLineEdit(range);
    from_->setObjectName(QStringLiteral("from"));
    from_->setAccessibleName(tr("Lower end of the range"));
    to_ = new QLineEdit(range);
    to_->setObjectName(QStringLiteral("to"));
    to_->setAccessibleName(tr("Upper end of the range"));
    line->addWidget(from_);
    line->addWidget(new QLabel(tr("to"), range));
    line->addWidget(to_);
    line->addWidget(fromUnit_);
    form->addRow(tr("&between"), range);
    fillResults(figure);
    fillInputs();
    connect(result_, &QComboBox::currentIndexChanged, this, &GoalDialog::proposeTarget);
    connect(input_, &QComboBox::currentIndexChanged, this, &GoalDialog::proposeRange);
    proposeTarget();
    proposeRange();
}

/// What is a number now: a search needs a value to start from.
void GoalDialog::fillResults(const QString& first) {
    for (const solution::Figure& figure : solution_->figures) {
        if (figure.value && figure.group != "solver" && !figure.isYesNo)
            result_->addItem(coreText(figure.label), QString::fromStdString(figure.name));
    }
    result_->setCurrentIndex(std::max(0, result_->findData(first)));
}

const solution::Figure& GoalDialog::figure() const {
    return *solution_->figure(result_->currentData().toString().toStdString());
}

void GoalDialog::proposeTarget() {
    const Unit unit = unitFor(*figure().unit);
    target_->setText(proposedNumber(unit.shown(*figure().value)));
    targetUnit_->setText(unit.text);
    target_->selectAll();
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
    from_->setText(proposedNumber(unit.shown(low)));
    to_->setText(proposedNumber(unit.shown(high)));
    fromUnit_->setText(unit.text);
}

void GoalDialog::search() {
    const auto target = readNumber(target_->text()), from = readNumber(from_->text()),
               to = readNumber(to_->text());
    if (!target || !from || !to || input_->currentIndex() < 0) {
        line_->say(tr("Target and range must be numbers."));
        return;
    }
    const design::Field& field = inputs_[static_cast<size_t>(input_->currentIndex())];
    goal_ = {figure().name, unitFor(*figure().unit).metric(*target), field.path,
             unitFor(field.unit).metric(*from), unitFor(field.unit).metric(*to)};
    list_->clear();
    changes_->setRowCount(0);
    apply_->setEnabled(false);
    line_->say(tr("Searching…"));
    work_.want([this, design = document_.design(),
                goal = goal_](Monitor& monitor) -> BackgroundWork::Delivery {
        Answer answer{study::solveFor(design, goal, monitor), {}};
        for (size_t i = 0; answer.answer && i < answer.answer->solutions.size(); ++i) {
            const double input = answer.answer->solutions[i].input;
            auto solved = solution::solve(study::withGoal(design, goal, input), monitor);
            if (solved)
                answer.made.push_back(std::move(solved).value());
        }
        return [this, answer = std::move(answer)]() mutable { takeUp(std::move(answer)); };
    });
}

void GoalDialog::takeUp(Answer answer) {
    if (!answer.answer) {
        line_->say(coreText(answer.answer.problems().front().message));
        return;
    }
    made_ = std::move(answer.made);
    showAnswer(*answer.answer);
}

void GoalDialog::showAnswer(const study::GoalAnswer& answer) {
    solutions_ = answer.solutions;
    if (made_.size() != solutions_.size())
        solutions_.clear(); // one cannot be solved after all
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
                                       .arg(coreText(answer.failure));
    }
    line_->say(text.trimmed());
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

void GoalDialog::apply() {
    const int row = list_->currentRow();
    if (row < 0)
        return;
    Edit edit;
    edit.text = tr("Make %1 %2")
                    .arg(inSentence(coreText(figure().label)),
                         withUnit(goal_.target, figure().symbolOfUnit()));
    edit.changes.push_back({goal_.input, solutions_[static_cast<size_t>(row)].input});
    if (document_.apply(edit).empty())
        accept();
}

} // namespace lobewright::ui
