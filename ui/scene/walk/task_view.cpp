#include "ui/scene/walk/task_view.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/file_to_write.h"
#include "ui/base/layouts.h"
#include "ui/base/save_bytes.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/scene/walk/card_text.h"
#include "ui/scene/walk/cause_bars.h"

#include <QBuffer>
#include <QComboBox>
#include <QDate>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QPdfWriter>
#include <QPushButton>
#include <QScrollArea>
#include <QTextDocument>

#include <algorithm>

namespace lobewright::ui {

namespace {

constexpr double largestGuess = 1e6;

} // namespace

TaskView::TaskView(TurnCursor& cursor, QWidget* parent)
    : QWidget(parent), cursor_(cursor), chooser_(new QComboBox(this)) {
    setObjectName(QStringLiteral("taskView"));
    setAccessibleName(tr("Tasks"));
    describe(*chooser_, tr("Task"), tr("Every task of this engine; a tick says that it is solved"));
    progress_ = new QLabel(this);
    auto* sheet = new QPushButton(tr("Lab &sheet…"), this);
    sheet->setToolTip(tr("Save the tasks, your answers and what came out as a PDF"));
    next_ = new QPushButton(tr("Ne&xt task"), this);
    next_->setToolTip(tr("To the next task that is not solved"));
    auto* page = new QScrollArea(this);
    makeScroll(*page, makePage());
    page->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    page->setFocusPolicy(Qt::NoFocus);
    auto* foot = rowOf(nullptr, {{progress_, 1}, sheet, next_});
    columnOf(this, {chooser_, {page, 1}, foot});
    connect(chooser_, &QComboBox::activated, this, &TaskView::chooseTask);
    connect(sheet, &QPushButton::clicked, this, &TaskView::saveLabSheet);
    connect(next_, &QPushButton::clicked, this, [this] {
        const int all = static_cast<int>(tasks_.size());
        for (int i = 1; i <= all; ++i) {
            const int index = (task() + i) % all;
            if (!isSolved(tasks_[static_cast<std::size_t>(index)].id) || i == all)
                return chooseTask(index);
        }
    });
    connect(&Units::instance(), &Units::changed, this, &TaskView::ask);
    ask();
}

QWidget* TaskView::makePage() {
    auto* page = new QWidget;
    title_ = new QLabel(page);
    question_ = new QLabel(page);
    way_ = new QLabel(page);
    guess_ = new QDoubleSpinBox(page);
    lock_ = new QPushButton(page);
    more_ = new QPushButton(tr("&Hint"), page);
    hint_ = new QLabel(page);
    outcome_ = new QLabel(page);
    causes_ = new CauseBars(page);
    describe(*guess_, tr("Your guess"), tr("What you expect, before the program says it"));
    guess_->setRange(-largestGuess, largestGuess);
    lock_->setText(tr("&Lock"));
    lock_->setToolTip(tr("Lock the guess and see what comes out"));
    more_->setToolTip(tr("A hint, and then another one"));
    auto* answer = rowOf(nullptr, {guess_, lock_, more_});
    answer->addStretch(1);
    auto* layout = columnOf(page, {0, 0, 4, 0}, 8, {});
    for (QLabel* label : {title_, question_, way_, hint_, outcome_})
        writeAsCard(*label, font(), label == title_ ? CardText::heading : CardText::text);
    way_->setFont(font());
    question_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    layout->addWidget(title_);
    layout->addWidget(question_);
    layout->addWidget(way_);
    layout->addLayout(answer);
    layout->addWidget(hint_);
    layout->addWidget(outcome_);
    layout->addWidget(causes_);
    layout->addStretch(1);
    connect(lock_, &QPushButton::clicked, this, &TaskView::lock);
    connect(more_, &QPushButton::clicked, this, &TaskView::hint);
    return page;
}

void TaskView::showSolution(const SolutionPointer& solution) {
    const bool isFirst = !solution_ && solution;
    solution_ = solution;
    // While a task is worked on, the engine that it was asked about stays; a built one differs.
    if (!isFirst || start_)
        return;
    start_ = solution_;
    tasks_ = lessons::tasks(*start_);
    chooser_->clear();
    for (const auto& task : tasks_)
        chooser_->addItem(coreText(task.title));
    ask();
}

void TaskView::reset() {
    work_.stop();
    solution_ = start_ = nullptr;
    tasks_.clear();
    answered_.clear();
    chooser_->clear();
    ask();
}

int TaskView::task() const {
    const int index = chooser_->currentIndex();
    return index < static_cast<int>(tasks_.size()) ? index : -1;
}

bool TaskView::isSolved(const std::string& id) const {
    const auto found = answered_.find(id);
    return found != answered_.end() && found->second.isRight;
}

void TaskView::chooseTask(int index) {
    if (index < 0 || index >= static_cast<int>(tasks_.size()))
        return;
    work_.stop();
    const std::string id = tasks_[static_cast<std::size_t>(index)].id;
    // A new task is about the engine as it is now.
    if (solution_) {
        start_ = solution_;
        auto fresh = lessons::tasks(*start_);
        const auto same = [&](const lessons::Task& task) { return task.id == id; };
        if (std::ranges::any_of(fresh, same)) {
            for (auto& task : tasks_) {
                const auto now = std::ranges::find(fresh, task.id, &lessons::Task::id);
                if (now != fresh.end())
                    task = *now;
            }
        }
    }
    chooser_->setCurrentIndex(index);
    ask();
}

void TaskView::ask() {
    hintsGiven_ = 0;
    hint_->hide();
    outcome_->hide();
    causes_->clear();
    const bool isAsked = task() >= 0;
    for (QWidget* widget : std::initializer_list<QWidget*>{chooser_, guess_, lock_, more_, next_})
        widget->setEnabled(isAsked);
    showProgress();
    if (!isAsked) {
        title_->setText(tr("Tasks"));
        question_->setText(tr("Tasks appear here once an engine is solved."));
        way_->clear();
        guess_->hide();
        return;
    }
    const lessons::Task& asked = tasks_[static_cast<std::size_t>(task())];
    title_->setText(coreText(asked.title));
    question_->setText(coreText(asked.question));
    guess_->setVisible(asked.kind == lessons::TaskKind::predict);
    switch (asked.kind) {
    case lessons::TaskKind::predict: {
        const Unit unit = unitFor(*asked.unit);
        guess_->setDecimals(unit.decimals(asked.decimals));
        guess_->setSuffix(unit.text.isEmpty() ? QString() : QLatin1Char(' ') + unit.text);
        guess_->setValue(0.0);
        way_->setText(tr("Enter what you expect and lock it; then the program answers."));
        lock_->setText(tr("&Lock"));
        lock_->setToolTip(tr("Lock the guess and see what comes out"));
        break;
    }
    case lessons::TaskKind::point:
        way_->setText(tr("Turn the shaft: drag a drawing, use the bar below or the arrow keys."));
        lock_->setText(tr("&Here"));
        lock_->setToolTip(tr("Say that the shaft stands at the place that is asked for"));
        break;
    case lessons::TaskKind::build:
        way_->setText(tr("Change inputs, or drag handles; Ctrl+Z takes a change back."));
        lock_->setText(tr("&Check"));
        lock_->setToolTip(tr("Look at the design as it is now"));
        break;
    }
}

double TaskView::guessInSi(const lessons::Task& task) const {
    return toSi(*task.unit, unitFor(*task.unit).metric(guess_->value()));
}

void TaskView::lock() {
    if (task() < 0 || !solution_ || !start_)
        return;
    const lessons::Task asked = tasks_[static_cast<std::size_t>(task())];
    const double guess = guessInSi(asked), angle = cursor_.angle();
    lock_->setEnabled(false);
    outcome_->setText(tr("Solving…"));
    outcome_->show();
    work_.wantAnswer(
        [id = asked.id, start = start_, now = solution_, guess, angle](Monitor& monitor) {
            return lessons::judge(id, {*start, *now, guess, angle}, monitor);
        },
        [this, id = asked.id, guess](const Result<lessons::Verdict>& verdict) {
            take(id, guess, verdict);
        });
}

void TaskView::sayAttempt(Answered& answered, const lessons::Task& task, double guess) const {
    switch (task.kind) {
    case lessons::TaskKind::predict:
        answered.attempt = amountText(withDecimals(guess, *task.unit, task.decimals));
        break;
    case lessons::TaskKind::point:
        answered.attempt = tr("shaft at %1").arg(words::degrees(cursor_.angle(), 1));
        break;
    case lessons::TaskKind::build:
        answered.attempt = tr("design changed");
        break;
    }
}

void TaskView::take(const std::string& id, double guess, const Result<lessons::Verdict>& verdict) {
    lock_->setEnabled(true);
    if (task() < 0 || tasks_[static_cast<std::size_t>(task())].id != id)
        return;
    if (!verdict) {
        outcome_->setText(coreText(verdict.problems().front().message));
        return;
    }
    const lessons::Task& asked = tasks_[static_cast<std::size_t>(task())];
    Answered& answered = answered_[id];
    const bool wasRight = answered.isRight;
    answered.isRight = verdict->isRight;
    answered.outcome = coreText(verdict->text);
    sayAttempt(answered, asked, guess);
    outcome_->setText(
        (verdict->isRight ? tr("✓ Right. %1") : tr("✗ Not quite. %1")).arg(answered.outcome));
    if (asked.kind == lessons::TaskKind::predict)
        causes_->setCauses(asked, *verdict, guess);
    answered.isRight = answered.isRight || wasRight;
    showProgress();
}

void TaskView::hint() {
    if (task() < 0)
        return;
    const auto& hints = tasks_[static_cast<std::size_t>(task())].hints;
    hintsGiven_ = std::min(hintsGiven_ + 1, hints.size());
    QStringList given;
    for (std::size_t i = 0; i < hintsGiven_; ++i)
        given << coreText(hints[i]);
    hint_->setText(given.join(QLatin1Char('\n')));
    hint_->show();
    more_->setEnabled(hintsGiven_ < hints.size());
}

void TaskView::showProgress() {
    int solved = 0;
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
        const bool isDone = isSolved(tasks_[i].id);
        solved += isDone ? 1 : 0;
        chooser_->setItemText(
            static_cast<int>(i),
            QStringLiteral("%1  %2%3")
                .arg(i + 1)
                .arg(coreText(tasks_[i].title), isDone ? QStringLiteral("  ✓") : QString()));
    }
    progress_->setText(tasks_.empty() ? QString()
                                      : tr("%1 of %2 solved").arg(solved).arg(tasks_.size()));
}

QString TaskView::engineTitle() const {
    return start_ ? QString::fromStdString(start_->design.title) : QString();
}

QString TaskView::labSheet() const {
    QString html = QStringLiteral("<h1>%1</h1><p>%2</p><table width='100%' cellpadding='5' "
                                  "border='1' style='border-collapse:collapse'><tr>")
                       .arg(tr("Lab sheet").toHtmlEscaped(),
                            tr("Engine: %1. Date: %2. Name: ____________________")
                                .arg(engineTitle(),
                                     QLocale().toString(QDate::currentDate(), QLocale::LongFormat))
                                .toHtmlEscaped());
    for (const QString& heading : {tr("Task"), tr("Answer"), tr("What came out")})
        html += QStringLiteral("<th align='left'>%1</th>").arg(heading.toHtmlEscaped());
    html += QStringLiteral("</tr>");
    for (const auto& task : tasks_) {
        const auto found = answered_.find(task.id);
        const Answered none{QString(QChar(0x2013)), QString(QChar(0x2013)), false};
        const Answered& answered = found != answered_.end() ? found->second : none;
        html +=
            QStringLiteral("<tr><td><b>%1</b><br/>%2</td><td>%3%4</td><td>%5</td></tr>")
                .arg(coreText(task.title).toHtmlEscaped(), coreText(task.question).toHtmlEscaped(),
                     answered.isRight ? QStringLiteral("✓ ") : QString(),
                     answered.attempt.toHtmlEscaped(), answered.outcome.toHtmlEscaped());
    }
    return html + QStringLiteral("</table><p><small>%1</small></p>").arg(cautions());
}

bool TaskView::writeLabSheet(const QString& file) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setTitle(tr("Lab sheet"));
        QTextDocument document;
        document.setHtml(labSheet());
        document.print(&writer);
    }
    return !saveBytes(file, bytes);
}

void TaskView::saveLabSheet() {
    const QString file =
        fileToWrite(this, tr("Save the lab sheet"), tr("lab-sheet.pdf"), tr("PDF (*.pdf)"));
    if (!file.isEmpty() && !writeLabSheet(file)) {
        outcome_->setText(tr("The file cannot be written."));
        outcome_->show();
    }
}

void TaskView::addOptions(QMenu& menu) {
    menu.addAction(tr("Save the lab sheet…"), this, &TaskView::saveLabSheet);
    menu.addAction(tr("Begin all tasks anew"), this, [this] {
        const SolutionPointer now = solution_;
        reset();
        showSolution(now);
    });
}

void TaskView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        ask();
}

} // namespace lobewright::ui
