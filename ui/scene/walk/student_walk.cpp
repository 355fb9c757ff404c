#include "ui/scene/walk/student_walk.h"

#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

// Nearer than this the shaft stands at the event: keys and sliders move in such steps.
constexpr double atEvent = 0.05 * units::degree;

} // namespace

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
            [this](const QVariant& theta) { moveTo(theta.toDouble()); });
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        if (moving_)
            return;
        travel_.stop(); // another hand has the shaft now
        follow();
    });
    connect(&Units::instance(), &Units::changed, this, &StudentWalk::retell);
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
    if (step_ >= 0 && !steps_.empty()) {
        // Events repeat every period; passed last is the one with the least way back to it.
        const double theta = engine_.angleOfCylinder(cylinder_, cursor_.angle()) + atEvent;
        const double period = engine_.pair().period();
        double least = period;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            const double turns = (theta - steps_[i].theta) / period;
            const double past = (turns - std::floor(turns)) * period;
            if (past < least) {
                least = past;
                step_ = static_cast<int>(i);
            }
        }
        beyond_ = std::max(0.0, least - atEvent);
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
    showTone();
}

void StudentWalk::showTone() {
    const Palette& tones = Palette::of(*this);
    QPalette palette = text_->palette();
    palette.setColor(QPalette::WindowText, beyond_ > 0.0 ? tones.quiet : tones.ink);
    text_->setPalette(palette);
}

void StudentWalk::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        showTone();
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
