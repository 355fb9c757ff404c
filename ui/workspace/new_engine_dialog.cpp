#include "ui/workspace/new_engine_dialog.h"

#include "core/design/file.h"
#include "core/draft/build.h"
#include "core/study/claims_check.h"
#include "core/units.h"
#include "ui/core_words.h"
#include "ui/editing/origin_words.h"
#include "ui/palette.h"
#include "ui/units.h"
#include "ui/workspace/claims_form.h"
#include "ui/workspace/draft_picture.h"
#include "ui/workspace/samples.h"

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
#include <QRadioButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <QtConcurrent>

#include <atomic>

namespace lobewright::ui {

namespace {

enum StepColumn { quantityColumn, valueColumn, unitColumn, rangeColumn, originColumn, ruleColumn };

QString number(double value) {
    return QLocale().toString(value, 'g', 5);
}

/// A value of a step in the units on screen.
QString shown(double value, const std::string& unit) {
    return number(unitFor(unit).shown(value));
}

QString figureOf(const draft::Draft& made, const char* name) {
    const auto* figure = made.solution.figure(name);
    if (!figure || !figure->value)
        return NewEngineDialog::tr("not available");
    const Unit unit = unitFor(figure->unit);
    return QLocale().toString(unit.shown(*figure->value), 'g', 4) + QChar(0xA0) + unit.text;
}

QString millimetres(double metres) {
    const Unit unit = unitFor(QStringLiteral("mm"));
    return QLocale().toString(unit.shown(metres / units::millimetre), 'g', 4) + QChar(0xA0) +
           unit.text;
}

/// The six figures by which candidates are told apart.
QString sixFigures(const draft::Draft& made) {
    const auto row = [](const QString& label, const QString& value) {
        return QStringLiteral("<tr><td>%1&nbsp;</td><td align=right>%2</td></tr>")
            .arg(label, value);
    };
    const double stress =
        std::max(made.solution.figure("peak_contact_pressure_inlet_MPa")->value.value_or(0.0),
                 made.solution.figure("peak_contact_pressure_exhaust_MPa")->value.value_or(0.0));
    const Unit pressure = unitFor(QStringLiteral("MPa"));
    return QStringLiteral("<table cellspacing=0>") +
           row(NewEngineDialog::tr("Power"), figureOf(made, "brake_power_kW")) +
           row(NewEngineDialog::tr("Speed"),
               number(made.design.running.speed / units::revPerMinute) + QChar(0xA0) +
                   NewEngineDialog::tr("rpm")) +
           row(NewEngineDialog::tr("Displacement"), figureOf(made, "displacement_cm3")) +
           row(NewEngineDialog::tr("Outer diameter"),
               millimetres(draft::outerDiameter(made.design))) +
           row(NewEngineDialog::tr("Supply pressure"),
               QLocale().toString(unitFor(QStringLiteral("bar"))
                                      .shown(made.design.gas.supply.pressure / units::bar),
                                  'g', 3) +
                   QChar(0xA0) + unitFor(QStringLiteral("bar")).text) +
           row(NewEngineDialog::tr("Contact stress"),
               QLocale().toString(pressure.shown(stress), 'g', 4) + QChar(0xA0) + pressure.text) +
           QStringLiteral("</table>");
}

/// One cylinder, one lobe, nothing but what a design must have.
Result<design::Design> smallestEngine() {
    auto brief = draft::readDuty("power=2 kW, speed=3000 rpm, fuel=petrol, cylinders=1, lobes=1, "
                                 "supply=1.2 bar");
    SilentMonitor monitor;
    auto made = draft::draft(*brief, {.lobes = 1, .own = {}}, monitor);
    if (!made)
        return made.problems();
    design::Design design = made->design;
    design.title.clear();
    design.knowledge.clear();
    return design;
}

} // namespace

class NewEngineDialog::Stop final : public Monitor {
  public:
    explicit Stop(size_t parts) : parts_(static_cast<double>(parts)) {}
    bool step(double fraction, std::string_view) override {
        fraction_ = (part_ + fraction) / parts_;
        return !stopped_;
    }
    void nextPart() { ++part_; }
    void stop() { stopped_ = true; }
    bool isStopped() const { return stopped_; }
    double fraction() const { return fraction_; }

  private:
    double parts_;
    std::atomic<int> part_ = 0;
    std::atomic<bool> stopped_ = false;
    std::atomic<double> fraction_ = 0.0;
};

NewEngineDialog::NewEngineDialog(QWidget* parent) : QDialog(parent) {
    setObjectName(QStringLiteral("newEngine"));
    setWindowTitle(tr("New engine"));
    auto* column = new QVBoxLayout(this);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    column->addWidget(split, 1);
    ways_ = new QListWidget(split);
    ways_->setObjectName(QStringLiteral("ways"));
    ways_->setAccessibleName(tr("What is known"));
    ways_->addItems({tr("Published figures"), tr("A duty"), tr("A sample"), tr("Blank")});
    ways_->setMaximumWidth(170);
    pages_ = new QStackedWidget(split);
    pages_->addWidget(buildPublished());
    pages_->addWidget(buildDuty());
    pages_->addWidget(buildSamples());
    pages_->addWidget(buildBlank());
    results_ = new QWidget(split);
    auto* results = new QVBoxLayout(results_);
    results->setContentsMargins(0, 0, 0, 0);
    buildResults(*results);
    split->setStretchFactor(0, 0);
    split->setStretchFactor(1, 2);
    split->setStretchFactor(2, 3);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    draft_ = buttons->addButton(tr("&Make drafts"), QDialogButtonBox::ActionRole);
    draft_->setObjectName(QStringLiteral("draft"));
    open_ = buttons->addButton(tr("&Open"), QDialogButtonBox::AcceptRole);
    open_->setObjectName(QStringLiteral("open"));
    column->addWidget(buttons);
    connect(draft_, &QPushButton::clicked, this, [this] { isBusy() ? stop() : makeDrafts(); });
    connect(buttons, &QDialogButtonBox::accepted, this, &NewEngineDialog::useCandidate);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(ways_, &QListWidget::currentRowChanged, this, &NewEngineDialog::wayChanged);
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, this,
            &NewEngineDialog::made);
    ways_->setCurrentRow(0);
    resize(1120, 700);
}

NewEngineDialog::~NewEngineDialog() {
    stop();
    watcher_.waitForFinished();
}

QWidget* NewEngineDialog::buildPublished() {
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    auto* hint = new QLabel(tr("Fill in what is published, with its unit; leave the rest empty. "
                               "Three to ten figures are enough."),
                            page);
    hint->setWordWrap(true);
    column->addWidget(hint);
    form_ = new ClaimsForm(page);
    auto* scroll = new QScrollArea(page);
    scroll->setWidget(form_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(scroll, 1);
    conflicts_ = new QLabel(page);
    conflicts_->setObjectName(QStringLiteral("conflicts"));
    conflicts_->setWordWrap(true);
    conflicts_->hide();
    column->addWidget(conflicts_);
    connect(form_, &ClaimsForm::edited, this, [this](const study::Claims& claims) {
        form_->show(claims);
        showConflicts();
    });
    connect(conflicts_, &QLabel::linkActivated, this, [this](const QString& path) {
        form_->show(draft::without(form_->claims(), path.toStdString()));
        showConflicts();
    });
    return page;
}

QWidget* NewEngineDialog::buildDuty() {
    auto* page = new QWidget(this);
    auto* form = new QFormLayout(page);
    const std::pair<QString, std::pair<QString, QString>> lines[] = {
        {QStringLiteral("power"), {tr("&Power"), QStringLiteral("12 kW")}},
        {QStringLiteral("speed"), {tr("&Speed"), QStringLiteral("1800 rpm")}},
        {QStringLiteral("torque"), {tr("or &torque"), QStringLiteral("64 N·m")}},
        {QStringLiteral("diameter"), {tr("&Diameter below"), QStringLiteral("400 mm")}},
        {QStringLiteral("length"), {tr("&Length below"), QStringLiteral("800 mm")}},
        {QStringLiteral("life"), {tr("L&ife above"), QStringLiteral("2000 h")}},
        {QStringLiteral("cylinders"), {tr("&Cylinders"), QStringLiteral("3")}},
        {QStringLiteral("supply"), {tr("S&upply pressure"), QStringLiteral("1.4 bar")}}};
    for (const auto& [key, words] : lines) {
        auto* line = new QLineEdit(page);
        line->setObjectName(key);
        line->setPlaceholderText(tr("e.g. %1").arg(words.second));
        form->addRow(words.first, line);
        duty_[key] = line;
    }
    fuel_ = new QComboBox(page);
    fuel_->setObjectName(QStringLiteral("fuel"));
    const std::pair<QString, QString> fuels[] = {{QString(), tr("not decided")},
                                                 {QStringLiteral("petrol"), tr("petrol")},
                                                 {QStringLiteral("methane"), tr("methane")},
                                                 {QStringLiteral("hydrogen"), tr("hydrogen")},
                                                 {QStringLiteral("diesel"), tr("diesel")},
                                                 {QStringLiteral("ethanol"), tr("ethanol")}};
    for (const auto& [key, word] : fuels)
        fuel_->addItem(word, key);
    form->addRow(tr("&Fuel"), fuel_);
    return page;
}

QWidget* NewEngineDialog::buildSamples() {
    samples_ = new QListWidget(this);
    samples_->setObjectName(QStringLiteral("samples"));
    for (const Sample& sample : samples())
        samples_->addItem(coreText(sample.title.toStdString()));
    samples_->setCurrentRow(0);
    connect(samples_, &QListWidget::itemActivated, this, &NewEngineDialog::useCandidate);
    return samples_;
}

QWidget* NewEngineDialog::buildBlank() {
    auto* text = new QLabel(tr("The smallest engine that is valid: one cylinder on tracks of one "
                               "lobe. Every number is yours to change."),
                            this);
    text->setWordWrap(true);
    text->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    return text;
}

void NewEngineDialog::buildResults(QVBoxLayout& column) {
    message_ = new QLabel(results_);
    message_->setObjectName(QStringLiteral("message"));
    message_->setWordWrap(true);
    column.addWidget(message_);
    progress_ = new QProgressBar(results_);
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(6);
    column.addWidget(progress_);
    cards_ = new QWidget(results_);
    cardLine_ = new QHBoxLayout(cards_);
    cardLine_->setContentsMargins(0, 0, 0, 0);
    column.addWidget(cards_);
    steps_ = new QTableWidget(0, 6, results_);
    steps_->setObjectName(QStringLiteral("steps"));
    steps_->setHorizontalHeaderLabels(
        {tr("Quantity"), tr("Value"), tr("Unit"), tr("Range"), tr("Origin"), tr("Rule")});
    steps_->verticalHeader()->hide();
    steps_->horizontalHeader()->setSectionResizeMode(ruleColumn, QHeaderView::Stretch);
    steps_->setToolTip(tr("Type your own number over a value: the rest of the draft follows"));
    connect(steps_, &QTableWidget::cellChanged, this, &NewEngineDialog::stepEdited);
    column.addWidget(steps_, 1);
}

void NewEngineDialog::choose(Way way) {
    ways_->setCurrentRow(static_cast<int>(way));
}

void NewEngineDialog::wayChanged(int row) {
    stop();
    way_ = static_cast<Way>(row);
    pages_->setCurrentIndex(row);
    const bool isDrafted = way_ == Way::published || way_ == Way::duty;
    results_->setVisible(isDrafted);
    draft_->setVisible(isDrafted);
    own_.clear();
    drafts_.clear();
    showCandidates();
    say(isDrafted ? tr("The candidates appear here, with the rule behind every number.")
                  : QString());
}

void NewEngineDialog::setClaims(const study::Claims& claims) {
    form_->show(claims);
    showConflicts();
}

void NewEngineDialog::setDuty(const QString& key, const QString& value) {
    if (key == QLatin1String("fuel"))
        fuel_->setCurrentIndex(fuel_->findData(value));
    else
        duty_.at(key)->setText(value);
}

void NewEngineDialog::showConflicts() {
    QStringList lines;
    for (const auto& conflict : study::checkClaims(form_->claims()).conflicts) {
        QStringList links;
        for (const std::string& path : conflict.paths) {
            const QString key = QString::fromStdString(path);
            links << QStringLiteral("<a href=\"%1\">%2</a>")
                         .arg(key, key.section(QLatin1Char('/'), -1)
                                       .replace(QLatin1Char('_'), QLatin1Char(' '))
                                       .toHtmlEscaped());
        }
        lines << inShownUnits(coreText(conflict.message)).toHtmlEscaped() + QStringLiteral(" ") +
                     tr("Leave out: %1").arg(links.join(QStringLiteral(", ")));
    }
    conflicts_->setText(lines.join(QStringLiteral("<br>")));
    conflicts_->setVisible(!lines.isEmpty());
}

std::optional<draft::Brief> NewEngineDialog::brief() {
    if (way_ == Way::published)
        return draft::briefOf(form_->claims());
    QStringList entries;
    for (const auto& [key, line] : duty_) {
        const QString value = line->text().trimmed();
        const bool isLimit = key == QLatin1String("diameter") || key == QLatin1String("length");
        const QChar sign = QLatin1Char(isLimit ? '<' : key == QLatin1String("life") ? '>' : '=');
        if (!value.isEmpty())
            entries << key + sign + value;
    }
    if (!fuel_->currentData().toString().isEmpty())
        entries << QStringLiteral("fuel=") + fuel_->currentData().toString();
    const auto duty = draft::readDuty(entries.join(QStringLiteral(", ")).toStdString());
    if (duty)
        return *duty;
    const Problem& first = duty.problems().front();
    say(coreText(first.message));
    if (const auto line = duty_.find(QString::fromStdString(first.path)); line != duty_.end())
        line->second->setFocus();
    return std::nullopt;
}

void NewEngineDialog::makeDrafts() {
    const auto wanted = brief();
    if (!wanted || isBusy())
        return;
    draft_->setText(tr("&Stop"));
    say(tr("Drafting…"));
    const std::vector<int> lobes = draft::candidateLobes(*wanted);
    stop_ = std::make_shared<Stop>(lobes.size());
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this,
            [this] { progress_->setValue(static_cast<int>(100.0 * stop_->fraction())); });
    connect(&watcher_, &QFutureWatcher<std::shared_ptr<Answer>>::finished, timer,
            &QObject::deleteLater);
    timer->start(100);
    watcher_.setFuture(QtConcurrent::run(
        [brief = *wanted, lobes, own = own_, monitor = stop_]() -> std::shared_ptr<Answer> {
            auto answer = std::make_shared<Answer>();
            for (const int count : lobes) {
                auto made = draft::draft(brief, {.lobes = count, .own = own}, *monitor);
                if (monitor->isStopped())
                    break;
                if (made)
                    answer->drafts.push_back(std::move(made).value());
                else
                    answer->problems.push_back(made.problems().front());
                monitor->nextPart();
            }
            return answer;
        }));
}

void NewEngineDialog::stop() {
    if (stop_)
        stop_->stop();
}

void NewEngineDialog::made() {
    draft_->setText(tr("&Make drafts"));
    progress_->setValue(0);
    const auto answer = watcher_.result();
    if (stop_->isStopped()) {
        say(tr("Stopped."));
        return;
    }
    drafts_ = answer->drafts;
    QStringList words;
    for (const Problem& problem : answer->problems)
        words << inShownUnits(coreText(problem.message));
    words.removeDuplicates();
    say(words.isEmpty()
            ? tr("Choose a candidate; every number can be replaced by your own.")
            : tr("Not every candidate can be made: %1").arg(words.join(QStringLiteral("; "))));
    const int before = selected_;
    showCandidates();
    if (!drafts_.empty())
        select(before >= 0 && before < static_cast<int>(drafts_.size())
                   ? before
                   : static_cast<int>(drafts_.size() / 2));
}

void NewEngineDialog::showCandidates() {
    while (QLayoutItem* item = cardLine_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    double largest = 0.0;
    for (const draft::Draft& made : drafts_)
        largest = std::max(largest, draft::outerDiameter(made.design));
    for (size_t i = 0; i < drafts_.size(); ++i) {
        const draft::Draft& made = drafts_[i];
        auto* card = new QWidget(cards_);
        auto* column = new QVBoxLayout(card);
        column->setContentsMargins(2, 2, 2, 2);
        auto* choose = new QRadioButton(
            tr("%n lobe(s), %1", nullptr, made.design.tracks.inlet.lobes)
                .arg(tr("%n cylinder(s)", nullptr, made.design.mechanism.cylinders)),
            card);
        choose->setObjectName(QStringLiteral("candidate%1").arg(i));
        choose->setAutoExclusive(false);
        connect(choose, &QRadioButton::clicked, this, [this, i] { select(static_cast<int>(i)); });
        column->addWidget(choose);
        column->addWidget(new DraftPicture(made.design, largest, card));
        auto* figures = new QLabel(sixFigures(made), card);
        figures->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(figures);
        cardLine_->addWidget(card);
    }
    cardLine_->addStretch(1);
    selected_ = -1;
    showSteps();
    open_->setEnabled(way_ == Way::sample || way_ == Way::blank);
}

void NewEngineDialog::select(int candidate) {
    selected_ = candidate;
    for (size_t i = 0; i < drafts_.size(); ++i) {
        if (auto* button = cards_->findChild<QRadioButton*>(QStringLiteral("candidate%1").arg(i)))
            button->setChecked(static_cast<int>(i) == candidate);
    }
    showSteps();
    open_->setEnabled(candidate >= 0);
}

void NewEngineDialog::showSteps() {
    isFilling_ = true;
    steps_->setRowCount(0);
    if (selected_ >= 0) {
        const draft::Draft& made = drafts_[static_cast<size_t>(selected_)];
        const auto add = [&](const QStringList& texts, const QString& tip, bool isEditable) {
            const int row = steps_->rowCount();
            steps_->insertRow(row);
            for (int column = 0; column < texts.size(); ++column) {
                auto* item = new QTableWidgetItem(texts[column]);
                item->setToolTip(tip);
                if (column != valueColumn || !isEditable)
                    item->setFlags(item->flags() & ~Qt::ItemIsEditable);
                if (column == valueColumn)
                    item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
                steps_->setItem(row, column, item);
            }
        };
        for (const draft::Comparison& row : made.comparisons) {
            if (!row.why.empty()) {
                add({coreText(row.label), shown(row.reached, row.unit), unitFor(row.unit).text,
                     tr("wanted: %1").arg(shown(row.wanted, row.unit)), tr("missed"),
                     inShownUnits(coreText(row.why))},
                    inShownUnits(coreText(row.why)), false);
                steps_->item(steps_->rowCount() - 1, 0)->setForeground(Palette::of(*this).warning);
            }
        }
        for (const draft::Step& step : made.steps) {
            const bool hasRange = step.span.low < step.span.high;
            const QString rule = step.rule ? coreText(std::string(step.rule->formula))
                                           : QString::fromStdString(step.working);
            QString tip = rule;
            if (step.rule) {
                tip += QLatin1Char('\n') + QString::fromStdString(step.working) +
                       QLatin1Char('\n') +
                       tr("Source: %1").arg(coreText(std::string(step.rule->source)));
            }
            add({coreText(step.label), shown(step.span.value, step.unit), unitFor(step.unit).text,
                 hasRange ? QStringLiteral("%1 … %2").arg(shown(step.span.low, step.unit),
                                                          shown(step.span.high, step.unit))
                          : QString(),
                 originWord(step.origin), rule},
                tip, step.rule != nullptr);
            steps_->item(steps_->rowCount() - 1, valueColumn)
                ->setData(Qt::UserRole,
                          step.rule
                              ? QString::fromUtf8(step.rule->id.data(),
                                                  static_cast<qsizetype>(step.rule->id.size()))
                              : QString());
            steps_->item(steps_->rowCount() - 1, valueColumn)
                ->setData(Qt::UserRole + 1, QString::fromStdString(step.unit));
        }
        for (int column = 0; column < ruleColumn; ++column)
            steps_->resizeColumnToContents(column);
    }
    isFilling_ = false;
}

void NewEngineDialog::stepEdited(int row, int column) {
    if (isFilling_ || column != valueColumn)
        return;
    const QTableWidgetItem* item = steps_->item(row, column);
    const std::string rule = item->data(Qt::UserRole).toString().toStdString();
    bool isNumber = false;
    double value = QLocale().toDouble(item->text(), &isNumber);
    if (!isNumber)
        value = QLocale::c().toDouble(item->text(), &isNumber);
    if (item->text().trimmed().isEmpty())
        own_.erase(rule);
    else if (isNumber)
        own_[rule] = unitFor(item->data(Qt::UserRole + 1).toString().toStdString()).metric(value);
    else
        return;
    makeDrafts();
}

void NewEngineDialog::useCandidate() {
    if (way_ == Way::sample) {
        sample_ = samples_->currentRow();
        accept();
        return;
    }
    if (way_ == Way::blank) {
        const auto design = smallestEngine();
        if (!design) {
            say(coreText(design.problems().front().message));
            return;
        }
        chosen_ = *design;
        name_ = tr("New engine");
        accept();
        return;
    }
    if (selected_ < 0)
        return;
    chosen_ = drafts_[static_cast<size_t>(selected_)].design;
    name_ = chosen_->title.empty() ? tr("Draft") : coreText(chosen_->title);
    accept();
}

void NewEngineDialog::say(const QString& text) {
    message_->setText(text);
}

} // namespace lobewright::ui
