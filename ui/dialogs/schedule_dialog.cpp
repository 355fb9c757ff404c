#include "ui/dialogs/schedule_dialog.h"

#include "core/design/schedule_edits.h"
#include "core/design/schedules.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/dialogs/search_line.h"
#include "ui/document/document.h"
#include "ui/panels/number_edit.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/end_labels.h"
#include "ui/plots/base/plot_tones.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::ui {

namespace {

constexpr int usualSpeeds = 9, mostSpeeds = 40;
const std::string adjusterSetting = "/mechanism/adjuster/setting_deg";

QString longName(const design::Field& field) {
    return field.groupLabel.empty()
               ? coreText(field.label)
               : coreText(field.groupLabel) + QStringLiteral(": ") + coreText(field.label);
}

/// What somebody would search in: for the adjuster both ways, else from half to twice the value.
std::pair<double, double> usualRange(const design::Field& field) {
    const auto* number = std::get_if<double>(&field.value);
    const double value = number ? *number : 0.0;
    const double reach = field.path == adjusterSetting ? 20.0
                         : value == 0.0                ? 1.0
                                                       : 0.5 * std::abs(value);
    return {std::max(value - reach, field.range.min), std::min(value + reach, field.range.max)};
}

} // namespace

ScheduleDialog::ScheduleDialog(Document& document, const std::string& input,
                               std::pair<double, double> speeds, QWidget* parent)
    : QDialog(parent), document_(document) {
    setObjectName(QStringLiteral("schedule"));
    setWindowTitle(tr("Schedule over speed"));
    auto* form = new QWidget(this);
    buildForm(*form, input, speeds);
    line_ = new SearchLine(work_, this);
    auto* results = buildResults();
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    line_->addButton(*buttons, [this] { search(); })
        ->setToolTip(tr("Search for the value with the highest torque at each speed"));
    draw_ = addButton(*buttons, tr("&Draw by hand"), QDialogButtonBox::ActionRole, "draw");
    draw_->setToolTip(tr("Begin with a level schedule at the fixed value; its points are dragged "
                         "below the torque curve"));
    apply_ = addButton(*buttons, tr("&Apply"), QDialogButtonBox::AcceptRole, "apply");
    apply_->setToolTip(tr("Let the input follow the speed as found"));
    apply_->setEnabled(false);
    columnOf(this, {form, line_, {results, 1}, buttons});
    connect(draw_, &QPushButton::clicked, this, &ScheduleDialog::drawByHand);
    connect(buttons, &QDialogButtonBox::accepted, this,
            [this] { apply(answer_->schedule(), tr("Find the schedule of %1")); });
    whenLookChanges(*this, [this] {
        applyTones();
        plot_->replot(QCustomPlot::rpQueuedReplot);
    });
    applyTones();
    resize(640, 640);
}

QLineEdit* ScheduleDialog::addNumber(QWidget& line, const char* name, const QString& label,
                                     double value) {
    auto* edit = new QLineEdit(proposedNumber(value), &line);
    edit->setObjectName(QLatin1String(name));
    describe(*edit, label, label);
    line.layout()->addWidget(edit);
    return edit;
}

void ScheduleDialog::buildForm(QWidget& widget, const std::string& input,
                               std::pair<double, double> speeds) {
    auto* form = new QFormLayout(&widget);
    form->setContentsMargins(0, 0, 0, 0);
    input_ = new QComboBox(this);
    input_->setObjectName(QStringLiteral("input"));
    describe(*input_, tr("Input that follows the speed"),
             tr("A number of the adjuster, of the gas side or of the operating point"));
    input_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    input_->setMinimumContentsLength(30);
    int first = 0;
    const std::string wanted = input.empty() ? adjusterSetting : input;
    for (design::Field& field : design::inputsThatCanFollowSpeed(document_.design())) {
        if (field.path == wanted)
            first = static_cast<int>(inputs_.size());
        input_->addItem(longName(field), QString::fromStdString(field.path));
        inputs_.push_back(std::move(field));
    }
    input_->setCurrentIndex(first);
    form->addRow(tr("&Vary"), input_);
    const auto newLine = [&](const QString& label) {
        auto* line = new QWidget(this);
        auto* layout = new QHBoxLayout(line);
        layout->setContentsMargins(0, 0, 0, 0);
        form->addRow(label, line);
        return line;
    };
    QWidget* range = newLine(tr("&between"));
    from_ = addNumber(*range, "from", tr("Lower end of the range"), 0.0);
    range->layout()->addWidget(new QLabel(tr("and"), range));
    to_ = addNumber(*range, "to", tr("Upper end of the range"), 0.0);
    unit_ = new QLabel(range);
    range->layout()->addWidget(unit_);
    if (!(speeds.first < speeds.second)) {
        const double own = document_.design().running.speed / units::revPerMinute;
        speeds = {std::round(0.4 * own), std::round(1.6 * own)};
    }
    QWidget* over = newLine(tr("at s&peeds from"));
    slowest_ = addNumber(*over, "slowest", tr("Lowest speed, rpm"), speeds.first);
    over->layout()->addWidget(new QLabel(tr("to"), over));
    fastest_ = addNumber(*over, "fastest", tr("Highest speed, rpm"), speeds.second);
    over->layout()->addWidget(new QLabel(tr("rpm, number:"), over));
    count_ = new QSpinBox(over);
    count_->setRange(2, mostSpeeds);
    count_->setValue(usualSpeeds);
    describe(*count_, tr("Number of speeds"), tr("Number of speeds"));
    over->layout()->addWidget(count_);
    const design::Limits& limits = document_.design().limits;
    QWidget* within = newLine(tr("with &knock integral up to"));
    knock_ = addNumber(*within, "knock", tr("Largest knock integral; empty: no limit"),
                       limits.knockIntegral.warning);
    within->layout()->addWidget(new QLabel(tr("and peak pressure up to"), within));
    const Unit bar = unitFor(QStringLiteral("bar"));
    pressure_ = addNumber(*within, "pressure", tr("Largest peak pressure; empty: no limit"),
                          bar.shown(limits.peakPressure.warning / units::bar));
    within->layout()->addWidget(new QLabel(bar.text, within));
    connect(input_, &QComboBox::currentIndexChanged, this, &ScheduleDialog::proposeRange);
    proposeRange();
}

QWidget* ScheduleDialog::buildResults() {
    auto* results = new QWidget(this);
    plot_ = new QCustomPlot(results);
    plot_->setAccessibleName(tr("Torque with the fixed value and with the schedule"));
    plot_->setMinimumSize(160, 150);
    fixedCurve_ = plot_->addGraph();
    fixedCurve_->setName(tr("fixed value"));
    bestCurve_ = plot_->addGraph();
    bestCurve_->setName(tr("schedule"));
    names_ = new EndLabels(*plot_);
    plot_->xAxis->setLabel(tr("shaft speed, rpm"));
    plot_->xAxis->setTickLabels(false); // until there is something to read
    plot_->yAxis->setTickLabels(false);
    rows_ = new QTableWidget(0, 6, results);
    rows_->setObjectName(QStringLiteral("rows"));
    rows_->setAccessibleName(tr("Fixed value and schedule at each speed"));
    rows_->setHorizontalHeaderLabels({tr("Speed"), tr("Torque, fixed"), tr("Torque, schedule"),
                                      tr("Change"), tr("Value"), tr("Limits")});
    rows_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    rows_->horizontalHeader()->setStretchLastSection(true);
    rows_->verticalHeader()->hide();
    rows_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    rows_->setWordWrap(false);
    rows_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    rows_->setSelectionMode(QAbstractItemView::NoSelection);
    columnOf(results, {0, 0, 0, 0}, -1, {{plot_, 1}, {rows_, 1}});
    return results;
}

const design::Field& ScheduleDialog::field() const {
    return inputs_[static_cast<std::size_t>(std::max(0, input_->currentIndex()))];
}

/// The range that is known of the input, else a usual one.
void ScheduleDialog::proposeRange() {
    const Unit unit = unitFor(field().unit);
    const auto [low, high] = usualRange(field());
    const design::Known known = design::knownOf(document_.design(), field().path);
    from_->setText(proposedNumber(unit.shown(known.low.value_or(low))));
    to_->setText(proposedNumber(unit.shown(known.high.value_or(high))));
    unit_->setText(unit.text);
    answer_.reset();
    if (apply_)
        apply_->setEnabled(false);
}

std::optional<study::ScheduleGoal> ScheduleDialog::goal() {
    const auto from = readNumber(from_->text()), to = readNumber(to_->text());
    const auto slowest = readNumber(slowest_->text()), fastest = readNumber(fastest_->text());
    const auto limit = [](const QLineEdit& edit, std::optional<double>& into) {
        into = readNumber(edit.text());
        return into.has_value() || edit.text().trimmed().isEmpty();
    };
    study::ScheduleGoal goal;
    if (!from || !to || !slowest || !fastest || !limit(*knock_, goal.knockIntegral) ||
        !limit(*pressure_, goal.peakPressure)) {
        line_->say(tr("Ranges and limits must be numbers."));
        return std::nullopt;
    }
    if (*slowest >= *fastest) {
        line_->say(tr("The lowest speed must be below the highest."));
        return std::nullopt;
    }
    const Unit unit = unitFor(field().unit);
    goal.input = field().path;
    goal.from = unit.metric(*from);
    goal.to = unit.metric(*to);
    goal.speeds = study::evenlySpaced(*slowest, *fastest, count_->value());
    if (goal.peakPressure)
        goal.peakPressure = unitFor(QStringLiteral("bar")).metric(*goal.peakPressure);
    return goal;
}

void ScheduleDialog::search() {
    const auto wanted = goal();
    if (!wanted)
        return;
    answer_.reset();
    rows_->setRowCount(0);
    apply_->setEnabled(false);
    line_->say(tr("Searching…"));
    work_.wantAnswer([design = document_.design(), goal = *wanted](
                         Monitor& monitor) { return study::findSchedule(design, goal, monitor); },
                     [this](Result<study::ScheduleAnswer> answer) { takeUp(std::move(answer)); });
}

void ScheduleDialog::takeUp(Result<study::ScheduleAnswer> answer) {
    if (!answer) {
        line_->say(coreText(answer.problems().front().message));
        return;
    }
    answer_ = std::move(answer).value();
    showRows();
    showCurves();
    const bool isFound = !answer_->schedule().speed.empty();
    apply_->setEnabled(isFound);
    line_->say(isFound ? coreText(study::scheduleInWords(*answer_))
                       : tr("The engine runs at none of these speeds: %1")
                             .arg(coreText(answer_->rows.front().failure)));
}

void ScheduleDialog::showRows() {
    const auto torque = [](const std::optional<study::ScheduledValue>& value) {
        return value ? quantityText(value->torque, QStringLiteral("N·m")) : tr("does not run");
    };
    for (const study::ScheduleRow& row : answer_->rows) {
        const int line = rows_->rowCount();
        rows_->insertRow(line);
        const auto gain = row.gain();
        const QString change = gain ? (*gain > 0.0 ? QStringLiteral("+") : QString()) +
                                          QLocale()
                                              .toString(withoutNoise(100.0 * *gain), 'f', 1)
                                              .replace(QLatin1Char('-'), QChar(0x2212)) +
                                          QStringLiteral(" %")
                                    : QString();
        QStringList limits;
        if (row.fixed && !row.fixed->isWithin)
            limits << tr("fixed value exceeds one");
        if (row.best && !row.best->isWithin)
            limits << tr("no value keeps them");
        const QString texts[] = {
            tr("%1 rpm").arg(QLocale().toString(row.speed, 'g', 5)),
            torque(row.fixed),
            torque(row.best),
            change,
            row.best ? quantityText(row.best->value, QString::fromStdString(field().unit))
                     : QString(),
            limits.join(QStringLiteral("; "))};
        for (int column = 0; column < 6; ++column) {
            auto* item = new QTableWidgetItem(texts[column]);
            if (column < 5)
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            rows_->setItem(line, column, item);
        }
    }
}

/// Beside their ends, where the engine runs.
void ScheduleDialog::nameCurves() {
    std::vector<EndLabels::Label> labels;
    for (QCPGraph* graph : {fixedCurve_, bestCurve_}) {
        for (auto point = graph->data()->constEnd(); point != graph->data()->constBegin();) {
            --point;
            if (std::isfinite(point->value)) {
                labels.push_back({graph->name(), graph->pen().color(), point->key, point->value});
                break;
            }
        }
    }
    names_->setLabels(std::move(labels));
}

void ScheduleDialog::showCurves() {
    constexpr double gap = std::numeric_limits<double>::quiet_NaN();
    const Unit unit = unitFor(QStringLiteral("N·m"));
    for (QCPGraph* graph : {fixedCurve_, bestCurve_})
        graph->data()->clear();
    for (const study::ScheduleRow& row : answer_->rows) {
        fixedCurve_->addData(row.speed, row.fixed ? unit.shown(row.fixed->torque) : gap);
        bestCurve_->addData(row.speed, row.best ? unit.shown(row.best->torque) : gap);
    }
    plot_->yAxis->setLabel(axisText(tr("brake torque"), QStringLiteral("N·m")));
    plot_->xAxis->setTickLabels(true);
    plot_->yAxis->setTickLabels(true);
    plot_->rescaleAxes();
    plot_->yAxis->scaleRange(1.2, plot_->yAxis->range().center());
    nameCurves();
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void ScheduleDialog::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*plot_, tones);
    fixedCurve_->setPen(QPen(tones.quiet, 1.6, Qt::DashLine));
    bestCurve_->setPen(QPen(tones.ink, 1.8));
    bestCurve_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, tones.ink, 4.0));
    nameCurves();
}

void ScheduleDialog::apply(const design::Schedule& schedule, const QString& text) {
    Edit edit;
    edit.text = text.arg(inSentence(coreText(field().label)));
    edit.replacement = study::withSchedule(document_.design(), schedule);
    if (const Problems problems = document_.apply(edit); problems.empty()) {
        accept();
    } else {
        line_->say(coreText(problems.front().message));
    }
}

void ScheduleDialog::drawByHand() {
    const auto slowest = readNumber(slowest_->text()), fastest = readNumber(fastest_->text());
    const auto* value = std::get_if<double>(&field().value);
    if (!slowest || !fastest || *slowest >= *fastest) {
        line_->say(tr("The lowest speed must be below the highest."));
        return;
    }
    if (!value) {
        line_->say(tr("The input has no number to begin with."));
        return;
    }
    work_.stop();
    apply(design::levelSchedule(field().path, *value, *slowest * units::revPerMinute,
                                *fastest * units::revPerMinute),
          tr("Schedule of %1"));
}

} // namespace lobewright::ui
