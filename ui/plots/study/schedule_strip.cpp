#include "ui/plots/study/schedule_strip.h"

#include "core/design/schedules.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/plots/study/schedule_canvas.h"

#include <QComboBox>
#include <QLabel>
#include <QToolButton>

#include <algorithm>

namespace lobewright::ui {

namespace {

QToolButton* button(const QString& text, const QString& help, QWidget* parent) {
    auto* made = wordButton(text, help, parent);
    made->setAccessibleName(help); // "+" says nothing
    return made;
}

} // namespace

ScheduleStrip::ScheduleStrip(QWidget* parent)
    : QWidget(parent), inputs_(new QComboBox(this)), readout_(new QLabel(this)),
      add_(button(QStringLiteral("+"), tr("Add a point to the schedule (Insert)"), this)),
      remove_(button(QString(QChar(0x2212)), tr("Remove the chosen point (Delete)"), this)),
      best_(button(tr("Find the best…"),
                   tr("Search for the value with the highest torque at each speed, within limits"),
                   this)),
      drop_(
          button(tr("Remove"), tr("Remove this schedule: the input keeps its fixed value"), this)),
      canvas_(new ScheduleCanvas(this)) {
    setObjectName(QStringLiteral("scheduleStrip"));
    auto* column = columnOf(this, {0, 0, 0, 0}, 0, {});
    auto* head = rowOf(nullptr, {8, 0, 8, 0}, 4, {});
    describe(*inputs_, tr("Input that follows the speed"),
             tr("Inputs that follow the shaft speed; the dashed line is the fixed value "
                "without the schedule"));
    inputs_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    inputs_->setMaximumWidth(fontMetrics().averageCharWidth() * 32);
    readout_->setObjectName(QStringLiteral("scheduleReadout"));
    readout_->setTextFormat(Qt::PlainText);
    readout_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    head->addWidget(inputs_);
    head->addWidget(readout_, 1);
    for (QToolButton* part : {add_, remove_, best_, drop_})
        head->addWidget(part);
    column->addLayout(head);
    column->addWidget(canvas_, 1);
    setMaximumHeight(150);
    connect(inputs_, &QComboBox::currentIndexChanged, this,
            [this](int index) { canvas_->show(design_, static_cast<std::size_t>(index)); });
    connect(canvas_, &ScheduleCanvas::edited, this, &ScheduleStrip::edited);
    connect(canvas_, &ScheduleCanvas::editFinished, this, &ScheduleStrip::editFinished);
    connect(canvas_, &ScheduleCanvas::said, readout_, &QLabel::setText);
    connect(canvas_, &ScheduleCanvas::chosenChanged, this,
            [this] { remove_->setEnabled(canvas_->chosen().has_value()); });
    connect(add_, &QToolButton::clicked, canvas_, &ScheduleCanvas::addPoint);
    connect(remove_, &QToolButton::clicked, canvas_, &ScheduleCanvas::removePoint);
    connect(best_, &QToolButton::clicked, this,
            [this] { Q_EMIT searchWanted(QString::fromStdString(input())); });
    connect(drop_, &QToolButton::clicked, this, &ScheduleStrip::removeSchedule);
    remove_->setEnabled(false);
    hide();
}

void ScheduleStrip::show(const design::Design& design) {
    const std::string before = input();
    design_ = design;
    fillInputs();
    showInput(before);
    setVisible(!design_.schedules.empty());
}

void ScheduleStrip::fillInputs() {
    const QSignalBlocker quiet(inputs_);
    QStringList names;
    for (const design::Schedule& schedule : design_.schedules) {
        const auto field = design::findField(design_, schedule.input);
        names << (field ? coreText(field->label) : QString::fromStdString(schedule.input));
    }
    QStringList shown;
    for (int i = 0; i < inputs_->count(); ++i)
        shown << inputs_->itemText(i);
    if (names == shown)
        return;
    inputs_->clear();
    inputs_->addItems(names);
}

std::string ScheduleStrip::input() const {
    const int index = inputs_->currentIndex();
    return index >= 0 && index < static_cast<int>(design_.schedules.size())
               ? design_.schedules[static_cast<std::size_t>(index)].input
               : std::string();
}

void ScheduleStrip::showInput(const std::string& input) {
    const auto found = std::ranges::find(design_.schedules, input, &design::Schedule::input);
    const auto index = found == design_.schedules.end()
                           ? std::size_t{0}
                           : static_cast<std::size_t>(found - design_.schedules.begin());
    {
        const QSignalBlocker quiet(inputs_);
        inputs_->setCurrentIndex(design_.schedules.empty() ? -1 : static_cast<int>(index));
    }
    canvas_->show(design_, design_.schedules.empty() ? std::nullopt : std::optional(index));
}

void ScheduleStrip::alignTo(double from, double to, int left, int right) {
    canvas_->axisRect()->setAutoMargins(QCP::msTop | QCP::msBottom);
    canvas_->axisRect()->setMargins(QMargins(left, 4, right, 4));
    canvas_->setSpeeds(from, to);
    canvas_->replot(QCustomPlot::rpQueuedReplot);
}

void ScheduleStrip::removeSchedule() {
    const std::string which = input();
    const auto field = design::findField(design_, which);
    if (which.empty())
        return;
    Edit edit;
    edit.text = field ? tr("Remove the schedule of %1").arg(inSentence(coreText(field->label)))
                      : tr("Remove a schedule");
    edit.replacement = design::withoutSchedule(design_, which);
    Q_EMIT edited(edit);
    Q_EMIT editFinished();
}

} // namespace lobewright::ui
