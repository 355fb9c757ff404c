#include "ui/scene/student_walk.h"

#include "core/units.h"
#include "ui/units.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

StudentWalk::StudentWalk(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("studentWalk"));
    setAccessibleName(tr("Walk through one cycle"));
    title_ = new QLabel(this);
    QFont heading = title_->font();
    heading.setBold(true);
    heading.setPointSizeF(heading.pointSizeF() * 1.2);
    title_->setFont(heading);
    text_ = new QLabel(this);
    text_->setWordWrap(true);
    text_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    text_->setMinimumWidth(200);
    place_ = new QLabel(this);
    back_ = new QPushButton(tr("&Back"), this);
    on_ = new QPushButton(tr("&Next"), this);
    back_->setToolTip(tr("To the step before (Page Up)"));
    on_->setToolTip(tr("Turn the shaft to the next event and tell what happens there (Page Down)"));
    on_->setDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(place_);
    buttons->addStretch(1);
    buttons->addWidget(back_);
    buttons->addWidget(on_);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(title_);
    layout->addWidget(text_, 1);
    layout->addLayout(buttons);
    connect(on_, &QPushButton::clicked, this, &StudentWalk::goOn);
    connect(back_, &QPushButton::clicked, this, &StudentWalk::goBack);
    travel_.setEasingCurve(QEasingCurve::InOutSine);
    connect(&travel_, &QVariantAnimation::valueChanged, this,
            [this](const QVariant& theta) { cursor_.setAngle(theta.toDouble()); });
    connect(&Units::instance(), &Units::changed, this, &StudentWalk::tell);
    retell();
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
}

void StudentWalk::retell() {
    // The design changed under the walk: same stop, new numbers, and the shaft stays put.
    steps_ = walkSteps(engine_);
    step_ = std::min(step_, steps() - 1);
    tell();
}

void StudentWalk::tell() {
    const bool told = step_ >= 0;
    title_->setText(told ? steps_[static_cast<std::size_t>(step_)].title
                         : tr("One cycle, step by step"));
    text_->setText(told ? inShownUnits(steps_[static_cast<std::size_t>(step_)].text)
                        : tr("Press Next to turn the shaft to the first event of a cycle. Every "
                             "step tells what happens there and why, with the numbers of the "
                             "engine on the screen."));
    place_->setText(told ? tr("%1 of %2").arg(step_ + 1).arg(steps()) : QString());
    back_->setEnabled(step_ > 0);
    on_->setEnabled(!steps_.empty());
    on_->setText(told && step_ + 1 == steps() ? tr("&From the start") : tr("&Next"));
}

double StudentWalk::shaftAngle(const WalkStep& step) const {
    const auto angles = mechanism::cylinderAngles(engine_.design().mechanism);
    const auto k = std::min(static_cast<std::size_t>(std::max(0, cylinder_)), angles.size() - 1);
    return step.theta + angles[k] - angles.front();
}

void StudentWalk::travelTo(double theta) {
    cursor_.setPlaying(false);
    travel_.stop();
    const double from = cursor_.angle();
    // Forward, as the machine turns, except for a step back by less than half a turn.
    double way = std::remainder(theta - from, units::turn);
    if (travelSeconds_ <= 0.0 || std::abs(way) < 1e-9) {
        cursor_.setAngle(theta);
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
    tell();
    travelTo(shaftAngle(steps_[static_cast<std::size_t>(step_)]));
}

void StudentWalk::goBack() {
    if (step_ <= 0)
        return;
    --step_;
    tell();
    travelTo(shaftAngle(steps_[static_cast<std::size_t>(step_)]));
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
