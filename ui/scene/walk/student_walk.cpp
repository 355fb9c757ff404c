#include "ui/scene/walk/student_walk.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/base/words.h"
#include "ui/scene/walk/card_text.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

StudentWalk::StudentWalk(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("studentWalk"));
    setAccessibleName(tr("Walk through one cycle"));
    auto* card = new QScrollArea(this);
    makeScroll(*card, makeCard());
    card->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    card->setFocusPolicy(Qt::NoFocus);
    place_ = new QLabel(this);
    back_ = new QPushButton(tr("&Back"), this);
    on_ = new QPushButton(tr("&Next"), this);
    auto* tasks = new QPushButton(tr("&Tasks"), this);
    back_->setToolTip(tr("To the step before (Page Up)"));
    on_->setToolTip(tr("Turn the shaft to the next event and tell what happens there (Page Down)"));
    tasks->setToolTip(tr("Short tasks on this engine, with hints and answers"));
    on_->setDefault(true);
    auto* buttons = rowOf(nullptr, {tasks, {place_, 1}, back_, on_});
    columnOf(this, {{card, 1}, buttons});
    connect(tasks, &QPushButton::clicked, this, &StudentWalk::tasksWanted);
    connect(on_, &QPushButton::clicked, this, &StudentWalk::goOn);
    connect(back_, &QPushButton::clicked, this, &StudentWalk::goBack);
    travel_.setEasingCurve(QEasingCurve::InOutSine);
    connect(&travel_, &QVariantAnimation::valueChanged, this,
            [this](const QVariant& theta) { moveTo(theta.toDouble()); });
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        if (moving_)
            return;
        travel_.stop(); // another hand has the shaft now
        follow();
    });
    connect(&cursor_, &TurnCursor::playingChanged, this, [this](bool playing) {
        if (playing && step_ < 0 && !steps_.empty() && isVisible()) {
            step_ = 0; // what is seen to happen is told from here on
            follow();
        }
    });
    connect(&Units::instance(), &Units::changed, this, &StudentWalk::retell);
    whenLookChanges(*this, [this] { showTone(); });
    retell();
}

QWidget* StudentWalk::makeCard() {
    auto* page = new QWidget;
    title_ = new QLabel(page);
    text_ = new QLabel(page);
    formula_ = new QLabel(page);
    question_ = new QLabel(page);
    answer_ = new QLabel(page);
    reveal_ = new QToolButton(page);
    reveal_->setText(tr("Show the answer"));
    reveal_->setToolTip(tr("Think first: then read the answer"));
    formula_->setFrameShape(QFrame::StyledPanel);
    formula_->setMargin(6);
    auto* layout = columnOf(page, {0, 0, 4, 0}, 8, {title_});
    writeAsCard(*title_, font(), CardText::heading);
    for (QLabel* label : {text_, formula_, question_, answer_}) {
        writeAsCard(*label, font(), label == question_ ? CardText::question : CardText::text);
        layout->addWidget(label);
    }
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    text_->setMinimumWidth(200);
    layout->insertWidget(layout->indexOf(answer_), reveal_, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(reveal_, &QToolButton::clicked, this, [this] {
        answer_->show();
        reveal_->hide();
    });
    return page;
}

void StudentWalk::showGeometry(const GeometryPointer& geometry) {
    engine_.setGeometry(geometry);
    retell();
}

void StudentWalk::showSolution(const SolutionPointer& solution) {
    engine_.setSolution(solution);
    retell();
}

void StudentWalk::setCylinder(int index) {
    cylinder_ = index;
    follow();
}

void StudentWalk::reset() {
    travel_.stop();
    step_ = -1;
    beyond_ = 0.0;
    tell();
}

void StudentWalk::retell() {
    // The design changed under the walk: the shaft stays put, numbers and events are new.
    steps_ = walkSteps(engine_);
    step_ = std::min(step_, steps() - 1);
    if (travel_.state() == QAbstractAnimation::Running)
        tell();
    else
        follow();
}

void StudentWalk::follow() {
    if (step_ >= 0) {
        // Events repeat every period; passed last is the one with the least way back to it.
        const double theta = engine_.angleOfCylinder(cylinder_, cursor_.angle()) + atEvent;
        const PassedStep passed = lastPassed(steps_, theta, engine_.pair().period());
        step_ = passed.index;
        beyond_ = std::max(0.0, passed.beyond - atEvent);
        if (beyond_ < atEvent)
            beyond_ = 0.0;
    }
    tell();
}

void StudentWalk::tell() {
    const bool told = step_ >= 0;
    const QString hint = tr("Next turns the shaft to the first event of a cycle and tells what "
                            "happens there and why.");
    const QString opening = walkOpening(engine_);
    title_->setText(told ? steps_[static_cast<std::size_t>(step_)].title
                         : tr("One cycle, step by step"));
    text_->setText(told                ? steps_[static_cast<std::size_t>(step_)].text
                   : opening.isEmpty() ? hint
                                       : opening);
    text_->setToolTip(told ? QString() : hint);
    place_->setText(!told           ? QString()
                    : beyond_ > 0.0 ? tr("%1 of %2, the shaft has been moved on by %3")
                                          .arg(step_ + 1)
                                          .arg(steps())
                                          .arg(words::degrees(beyond_, 1))
                                    : tr("%1 of %2").arg(step_ + 1).arg(steps()));
    back_->setText(beyond_ > 0.0 ? tr("&Back to it") : tr("&Back"));
    back_->setEnabled(told);
    on_->setEnabled(!steps_.empty());
    on_->setText(told && step_ + 1 == steps() ? tr("&From the start") : tr("&Next"));
    tellLesson();
    showTone();
}

void StudentWalk::tellLesson() {
    const WalkStep lesson = step_ >= 0 ? steps_[static_cast<std::size_t>(step_)] : WalkStep{};
    formula_->setText(lesson.formula);
    formula_->setVisible(!lesson.formula.isEmpty());
    question_->setText(lesson.question);
    question_->setVisible(!lesson.question.isEmpty());
    answer_->setText(lesson.answer);
    if (lessonOf_ == step_)
        return;
    lessonOf_ = step_; // an answer that was read stays while the shaft turns on to the next event
    answer_->hide();
    reveal_->setVisible(!lesson.answer.isEmpty());
}

void StudentWalk::showTone() {
    const Palette& tones = Palette::of(*this);
    QPalette palette = text_->palette();
    palette.setColor(QPalette::WindowText, beyond_ > 0.0 ? tones.quiet : tones.ink);
    text_->setPalette(palette);
}

double StudentWalk::shaftAngle(const WalkStep& step) const {
    const auto angles = mechanism::cylinderAngles(engine_.design().mechanism);
    const auto k = std::min(static_cast<std::size_t>(std::max(0, cylinder_)), angles.size() - 1);
    return step.theta + angles[k] - angles.front();
}

void StudentWalk::moveTo(double theta) {
    moving_ = true;
    cursor_.setAngle(theta);
    moving_ = false;
}

void StudentWalk::travelTo(double theta) {
    cursor_.setPlaying(false);
    travel_.stop();
    beyond_ = 0.0;
    const double from = cursor_.angle();
    // Every period has the same events: the shaft turns to the nearest place of the one told.
    const double way = std::remainder(theta - from, engine_.pair().period());
    if (travelSeconds_ <= 0.0 || std::abs(way) < 1e-9) {
        moveTo(from + way);
        return;
    }
    travel_.setStartValue(from);
    travel_.setEndValue(from + way);
    travel_.setDuration(static_cast<int>(1000.0 * travelSeconds_));
    travel_.start();
}

void StudentWalk::goOn() {
    if (steps_.empty())
        return;
    step_ = (step_ + 1) % steps();
    travelTo(shaftAngle(steps_[static_cast<std::size_t>(step_)]));
    tell();
}

void StudentWalk::goBack() {
    if (step_ < 0)
        return;
    // Beyond an event the way back leads to it first; before the first stands the opening page.
    if (beyond_ <= 0.0)
        --step_;
    if (step_ >= 0)
        travelTo(shaftAngle(steps_[static_cast<std::size_t>(step_)]));
    tell();
}

void StudentWalk::goTo(int step) {
    if (step < 0 || step >= steps())
        return;
    step_ = step;
    travelTo(shaftAngle(steps_[static_cast<std::size_t>(step_)]));
    tell();
}

void StudentWalk::start() {
    step_ = -1;
    goOn();
}

void StudentWalk::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_PageDown) {
        goOn();
    } else if (event->key() == Qt::Key_PageUp) {
        goBack();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace lobewright::ui
