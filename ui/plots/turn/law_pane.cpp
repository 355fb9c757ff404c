#include "ui/plots/turn/law_pane.h"

#include "core/editing/knot_edits.h"
#include "core/motion/motion_law.h"
#include "core/motion/strokes.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/faults.h"
#include "ui/base/figure_text.h"
#include "ui/base/layouts.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/turn/law_frames.h"
#include "ui/plots/turn/lobe_factors.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>
#include <QtConcurrentRun>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr int settleTime = 150; ///< [ms], so that a drag does not start one at every step

class CancelMonitor final : public Monitor {
  public:
    template <class Promise>
    explicit CancelMonitor(const Promise& promise)
        : isStopped_([&promise] { return promise.isCanceled(); }) {}
    bool step(double, const Message&) override { return !isStopped_(); }

  private:
    std::function<bool()> isStopped_;
};

/// One column of the table: how a law is read and which end is good.
struct Column {
    QString quantity;
    QString unit;                               ///< metric; empty: a pure number
    double (*value)(const study::ComparedLaw&); ///< not-a-number: not available
    bool moreIsBetter = false;
};

constexpr double absent = std::numeric_limits<double>::quiet_NaN();

std::vector<Column> columns() {
    using Row = study::ComparedLaw;
    return {
        {QStringLiteral("C_v"), {}, [](const Row& row) { return row.factors.velocity; }},
        {QStringLiteral("C_a"), {}, [](const Row& row) { return row.factors.acceleration; }},
        {QStringLiteral("C_j"), {}, [](const Row& row) { return row.factors.jerk; }},
        {QStringLiteral("C_m"), {}, [](const Row& row) { return row.factors.torque; }},
        {QStringLiteral("v"), QStringLiteral("m/s"), [](const Row& row) { return row.velocity; }},
        {QStringLiteral("a"), QStringLiteral("m/s²"),
         [](const Row& row) { return row.acceleration; }},
        {LawPane::tr("Angle, middle"), QStringLiteral("°"),
         [](const Row& row) { return row.pressureAngle / units::degree; }},
        {LawPane::tr("R_rel, min"), QStringLiteral("mm"),
         [](const Row& row) { return row.relativeRadius / units::millimetre; }, true},
        {QStringLiteral("p"), QStringLiteral("MPa"),
         [](const Row& row) {
             return row.contactPressure ? *row.contactPressure / units::megapascal : absent;
         }},
        {LawPane::tr("N min"), QStringLiteral("N"),
         [](const Row& row) { return row.leastContactForce.value_or(absent); }, true},
    };
}

QString cellText(double value, int column) {
    if (std::isnan(value))
        return QStringLiteral("–");
    if (std::isinf(value))
        return QString(QChar(0x221E));
    return column < 4 ? localNumbers(QString::number(value, 'f', 3)) : figureText(value);
}

} // namespace

LawPane::LawPane(QWidget* parent) : QWidget(parent), frames_(new LawFrames(this)) {
    QStringList titles{tr("Law")};
    for (const Column& column : columns())
        titles << axisText(column.quantity, column.unit);
    table_ = new LobeTable(titles, this);
    describe(
        *table_, tr("Factors of the laws and what they mean for this design"),
        tr("Factors for unit lift over unit span; peak velocity and acceleration of the segments "
           "that take the law; of the whole track: largest pressure angle at the middle of the "
           "roller, smallest relative radius of curvature anywhere on its width, nominal contact "
           "stress and minimum contact force of the design solved with it. Bold: best of its "
           "column. Ctrl+C copies."));
    connect(&Units::instance(), &Units::changed, this, &LawPane::fillTable);
    message_ = new QLabel(this);
    message_->setWordWrap(true);
    message_->hide();
    auto* split = new QSplitter(Qt::Vertical, this);
    split->addWidget(frames_);
    split->addWidget(table_);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    split->setSizes({200, 300});
    auto* layout = columnOf(this, {0, 0, 0, 0}, 4, {});
    buildBar();
    layout->addWidget(message_);
    layout->addWidget(split, 1);
    settle_.setSingleShot(true);
    settle_.setInterval(settleTime);
    connect(&settle_, &QTimer::timeout, this, &LawPane::compare);
    connect(&watcher_, &QFutureWatcherBase::finished, this, &LawPane::compared);
    connect(frames_, &LawFrames::lawChosen, this, &LawPane::choose);
    connect(frames_, &LawFrames::lawWanted, this, &LawPane::use);
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int row) { choose(row); });
    connect(table_, &QTableWidget::cellDoubleClicked, this, [this](int row) { use(row); });
}

LawPane::~LawPane() {
    watcher_.disconnect(this);
    watcher_.cancel();
    watcher_.waitForFinished();
}

void LawPane::buildBar() {
    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(8, 4, 8, 0);
    target_ = new QComboBox(this);
    target_->setObjectName(QStringLiteral("target"));
    describe(*target_, tr("Segments that take the law"),
             tr("The segments whose law is exchanged; lifts and spans stay"));
    target_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    target_->setMinimumContentsLength(12);
    bar->addWidget(target_, 1);
    const std::pair<QString, QString> shown[] = {{tr("s"), tr("Lift")},
                                                 {tr("v"), tr("Velocity")},
                                                 {tr("a"), tr("Acceleration")},
                                                 {tr("j"), tr("Jerk")}};
    for (const auto& [letter, word] : shown) {
        auto* box = new QCheckBox(letter, this);
        describe(*box, word, tr("%1 in the frames").arg(word));
        box->setChecked(frames_->curves() & (1 << curves_.size()));
        const int flag = 1 << curves_.size();
        connect(box, &QCheckBox::toggled, this, [this, flag](bool on) {
            frames_->setCurves(on ? frames_->curves() | flag : frames_->curves() & ~flag);
        });
        curves_.push_back(box);
        bar->addWidget(box);
    }
    use_ = new QPushButton(tr("Use this law"), this);
    use_->setObjectName(QStringLiteral("use"));
    use_->setToolTip(tr("Gives the chosen law to these segments"));
    use_->setEnabled(false);
    bar->addWidget(use_);
    static_cast<QVBoxLayout*>(layout())->addLayout(bar);
    connect(use_, &QPushButton::clicked, this, [this] { use(frames_->chosen()); });
    connect(target_, &QComboBox::activated, this, [this] { settle_.start(); });
}

void LawPane::listTargets() {
    const auto before = target();
    const design::Design& design = solution_->design;
    targets_.clear();
    QStringList words;
    for (const End end : bothEnds) {
        const auto* shape = std::get_if<motion::SegmentShape>(&design.tracks[end].shape);
        if (!shape || (end == End::exhaust && !design.tracks.exhaust))
            continue;
        const QString track = coreText(editing::trackLabel(design, end));
        targets_.push_back({end, {}});
        words << tr("%1: all rises and returns").arg(track);
        for (int i = 0; i < static_cast<int>(shape->segments.size()); ++i) {
            const motion::Segment& segment = shape->segments[static_cast<size_t>(i)];
            if (segment.kind == motion::SegmentKind::dwell)
                continue;
            targets_.push_back({end, i});
            words << (segment.kind == motion::SegmentKind::rise
                          ? tr("%1: segment %2, rise over %3°")
                          : tr("%1: segment %2, return over "
                               "%3°"))
                         .arg(track)
                         .arg(i + 1)
                         .arg(segment.span / units::degree, 0, 'g', 4);
        }
    }
    const QSignalBlocker blocker(target_);
    target_->clear();
    target_->addItems(words);
    const auto kept = before ? std::ranges::find(targets_, *before) : targets_.end();
    if (!targets_.empty()) {
        target_->setCurrentIndex(
            kept == targets_.end() ? 0 : static_cast<int>(kept - targets_.begin()));
    }
    target_->setEnabled(!targets_.empty());
}

std::optional<LawPane::Target> LawPane::target() const {
    const int index = target_->currentIndex();
    if (index < 0 || index >= static_cast<int>(targets_.size()))
        return std::nullopt;
    return targets_[static_cast<size_t>(index)];
}

void LawPane::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    if (!solution_)
        return;
    listTargets();
    settle_.start();
}

void LawPane::compare() {
    const auto wanted = target();
    if (!wanted) {
        compareFreely();
        return;
    }
    watcher_.cancel(); // an older comparison stops at its next step and is no longer listened to
    watcher_.setFuture(
        QtConcurrent::run([solution = solution_, wanted = *wanted](QPromise<Answer>& promise) {
            CancelMonitor monitor(promise);
            promise.addResult(guardedWork([&] {
                return study::compareLaws(solution->design, wanted.end, wanted.segment, monitor,
                                          solution.get());
            }));
        }));
}

void LawPane::compareFreely() {
    const motion::LiftCurve& curve = solution_->pair.curve(End::inlet);
    const double omega = solution_->design.running.speed;
    const double pitch = solution_->design.mechanism.pitchRadius;
    motion::Stroke rise;
    for (const motion::Stroke& stroke : motion::strokes(curve)) {
        if (stroke.rises && stroke.lift > rise.lift)
            rise = stroke;
    }
    const auto judge = [&](const motion::CharacteristicFactors& factors) {
        study::ComparedLaw row;
        row.factors = factors;
        const double slope = factors.velocity * rise.lift / rise.span;
        row.velocity = slope * omega;
        row.acceleration =
            factors.acceleration * rise.lift / (rise.span * rise.span) * omega * omega;
        row.pressureAngle = std::atan(slope / pitch);
        row.relativeRadius = absent;
        return row;
    };
    laws_.clear();
    for (const motion::Law law : motion::allLaws) {
        laws_.push_back(judge(motion::characteristicFactors(law)));
        laws_.back().law = law;
    }
    lobe_ = judge(rise.factors);
    frames_->setPresent(-1);
    say(tr("A free-form track takes no law. Below, the laws for the lift and span of its highest "
           "rise, %1 over %2°, and that rise itself.")
            .arg(quantityText(rise.lift / units::millimetre, QStringLiteral("mm")))
            .arg(rise.span / units::degree, 0, 'g', 4));
    fillTable();
}

void LawPane::compared() {
    if (watcher_.isCanceled() || watcher_.future().resultCount() == 0)
        return;
    const Answer answer = watcher_.result();
    if (!answer) {
        say(coreText(answer.problems().front().message));
        return;
    }
    laws_ = *answer;
    lobe_.reset();
    const auto present = std::ranges::find(laws_, true, &study::ComparedLaw::isPresent);
    frames_->setPresent(present == laws_.end() ? -1 : static_cast<int>(present - laws_.begin()));
    QStringList remarks;
    for (const study::ComparedLaw& row : laws_) {
        if (!row.problem.empty()) {
            remarks << tr("%1 cannot be used: %2")
                           .arg(coreText(motion::rowOf(row.law).label), coreText(row.problem));
        }
    }
    say(remarks.join(QLatin1Char('\n')));
    fillTable();
}

void LawPane::fillTable() {
    const int chosen = frames_->chosen();
    const QSignalBlocker blocker(table_);
    table_->setRowCount(0);
    int place = 0;
    for (const Column& column : columns())
        table_->horizontalHeaderItem(++place)->setText(axisText(column.quantity, column.unit));
    const auto addRow = [this](const study::ComparedLaw& row, const QString& label) {
        QStringList cells{label};
        const auto shown = columns();
        for (size_t i = 0; i < shown.size(); ++i) {
            cells << cellText(unitFor(shown[i].unit).shown(shown[i].value(row)),
                              static_cast<int>(i));
        }
        table_->addRow(cells, 0.0, table_->toolTip());
    };
    for (const study::ComparedLaw& row : laws_) {
        addRow(row, row.isPresent ? tr("%1 (present)").arg(coreText(motion::rowOf(row.law).label))
                                  : coreText(motion::rowOf(row.law).label));
    }
    if (lobe_)
        addRow(*lobe_, tr("This lobe"));
    markBest();
    table_->fitColumns();
    if (chosen >= 0 && chosen < table_->rowCount())
        table_->setCurrentCell(chosen, 0);
    choose(chosen);
}

void LawPane::markBest() {
    const auto shown = columns();
    for (size_t i = 0; i < shown.size(); ++i) {
        int best = -1;
        double bestValue = 0.0;
        for (int row = 0; row < static_cast<int>(laws_.size()); ++row) {
            const double value = shown[i].value(laws_[static_cast<size_t>(row)]);
            const bool isBetter = shown[i].moreIsBetter ? value > bestValue : value < bestValue;
            if (!std::isnan(value) && (best < 0 || isBetter)) {
                best = row;
                bestValue = value;
            }
        }
        if (best < 0)
            continue;
        const QFont bold = inBold(table_->font());
        table_->item(best, static_cast<int>(i) + 1)->setFont(bold);
    }
}

void LawPane::choose(int law) {
    frames_->setChosen(law);
    const bool exists = law >= 0 && law < static_cast<int>(laws_.size());
    use_->setEnabled(exists && !lobe_ && !laws_[static_cast<size_t>(law)].isPresent);
    if (exists && table_->currentRow() != law) {
        const QSignalBlocker blocker(table_);
        table_->setCurrentCell(law, 0);
    }
}

void LawPane::use(int law) {
    const auto wanted = target();
    if (!solution_ || !wanted || law < 0 || law >= static_cast<int>(laws_.size()) ||
        laws_[static_cast<size_t>(law)].isPresent)
        return;
    const motion::Law chosen = laws_[static_cast<size_t>(law)].law;
    const auto& shape = std::get<motion::SegmentShape>(solution_->design.tracks[wanted->end].shape);
    Edit edit;
    edit.text =
        tr("Use %1 (%2)")
            .arg(coreText(motion::rowOf(chosen).label).toLower(), target_->currentText().toLower());
    for (int i = 0; i < static_cast<int>(shape.segments.size()); ++i) {
        const std::string path = fmt::format("/tracks/{}/segments/{}/law", name(wanted->end), i);
        const auto field = design::findField(solution_->design, path); // dwells have none
        if (field && (!wanted->segment || *wanted->segment == i))
            edit.changes.push_back({path, field->choices[static_cast<size_t>(law)]});
    }
    Q_EMIT edited(edit);
    Q_EMIT editFinished();
}

void LawPane::say(const QString& text) {
    message_->setText(text);
    message_->setVisible(!text.isEmpty());
}

void LawPane::addOptions(QMenu& menu) {
    menu.addAction(tr("&Copy the table"), this,
                   [this] { QApplication::clipboard()->setText(table_->text()); });
    menu.addSeparator();
    addPictureActions(menu, *this, tr("Motion laws side by side"));
}

} // namespace lobewright::ui
