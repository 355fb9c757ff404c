#include "ui/window/playback_bar.h"

#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/window/scrubber.h"
#include "ui/window/small_screen.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QSignalBlocker>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

/// A list that leaves the page keys to the bar: they go from event to event.
class PacesBox final : public QComboBox {
  public:
    using QComboBox::QComboBox;

  protected:
    void keyPressEvent(QKeyEvent* event) override {
        if (event->key() == Qt::Key_PageDown || event->key() == Qt::Key_PageUp)
            event->ignore();
        else
            QComboBox::keyPressEvent(event);
    }
};

constexpr double pleasantRate = 0.25; // shaft turns per second that the eye can follow
constexpr int leastWidth = 480;       // [px]

} // namespace

PlaybackBar::PlaybackBar(TurnCursor& cursor, QWidget* parent)
    : QWidget(parent), cursor_(cursor), arrangements_(new QToolButton(this)),
      previous_(new QToolButton(this)), play_(new QToolButton(this)), next_(new QToolButton(this)),
      slider_(new Scrubber(this)), angle_(new QDoubleSpinBox(this)),
      shaft_(new QLabel(tr("Shaft"), this)), cycle_(new QLabel(this)), factor_(new PacesBox(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(8, 4, 8, 4);
    arrangements_->setText(tr("Arrangements"));
    arrangements_->setToolTip(tr("Ways to divide the window, one for each job"));
    previous_->setText(tr("Previous event"));
    previous_->setToolTip(tr("To the previous event: exhaust opens (EO) or closes (EC), inlet "
                             "opens (IO) or closes (IC), inner (IDC) or outer dead centre (ODC)"));
    next_->setText(tr("Next event"));
    next_->setToolTip(tr("To the next event: exhaust opens (EO) or closes (EC), inlet opens (IO) "
                         "or closes (IC), inner (IDC) or outer dead centre (ODC)"));
    play_->setObjectName(QStringLiteral("play"));
    play_->setMinimumWidth(fontMetrics().horizontalAdvance(tr("Pause")) + 24);
    slider_->setToolTip(tr("Shaft angle"));
    angle_->setRange(-720.0, 720.0);
    angle_->setDecimals(1);
    angle_->setSuffix(QString(QChar(0xB0)));
    describe(*angle_, tr("Shaft angle"),
             tr("Angle of the shaft θ; 0 where the pattern of the inlet track begins"));
    angle_->setKeyboardTracking(false);
    shaft_->setBuddy(angle_);
    cycle_->setMinimumWidth(fontMetrics().horizontalAdvance(tr("Cycle %1°").arg("−180.00")));
    cycle_->setToolTip(tr("Cycle angle from inner dead centre of cylinder 1"));
    for (const int factor : slowMotionFactors())
        factor_->addItem(slowMotionText(factor), factor);
    describe(*factor_, tr("Slow motion"), tr("How much slower than the shaft speed of the design"));
    for (QWidget* widget : std::initializer_list<QWidget*>{arrangements_, previous_, play_, next_})
        layout->addWidget(widget);
    layout->addWidget(slider_, 1);
    layout->addWidget(shaft_);
    layout->addWidget(angle_);
    layout->addWidget(cycle_);
    layout->addWidget(factor_);

    connect(arrangements_, &QToolButton::clicked, this,
            [this] { Q_EMIT arrangementsWanted(*arrangements_); });
    connect(previous_, &QToolButton::clicked, this, &PlaybackBar::toPreviousEvent);
    connect(next_, &QToolButton::clicked, this, &PlaybackBar::toNextEvent);
    connect(play_, &QToolButton::clicked, &cursor_, &TurnCursor::togglePlaying);
    connect(slider_, &QSlider::valueChanged, this,
            [this](int value) { cursor_.setAngle(value * units::degree / Scrubber::perDegree); });
    connect(angle_, &QDoubleSpinBox::valueChanged, this,
            [this](double degrees) { cursor_.setAngle(degrees * units::degree); });
    connect(factor_, &QComboBox::activated, this, [this] {
        factorChosen_ = true;
        applyFactor();
    });
    connect(&cursor_, &TurnCursor::angleChanged, this, &PlaybackBar::showAngle);
    connect(&cursor_, &TurnCursor::playingChanged, this, &PlaybackBar::showPlaying);
    showPlaying();
    showAngle();
}

QSize PlaybackBar::minimumSizeHint() const {
    return {leastWidth, QWidget::minimumSizeHint().height()};
}

void PlaybackBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const QMargins margins = layout()->contentsMargins();
    int used = margins.left() + margins.right() + slider_->minimumSizeHint().width();
    for (const QWidget* always : std::initializer_list<QWidget*>{previous_, play_, next_, angle_})
        used += always->sizeHint().width() + layout()->spacing();
    showWhatFits({arrangements_, shaft_, cycle_, factor_}, used, width(), layout()->spacing());
}

void PlaybackBar::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    slider_->showGeometry(geometry);
    stops_.clear();
    for (const TurnEvent& event : turnEvents(geometry->pair, geometry->timing))
        stops_.push_back(event.theta);
    chooseUsualFactor();
    showAngle();
}

const std::vector<int>& PlaybackBar::slowMotionFactors() {
    static const std::vector<int> factors = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000};
    return factors;
}

QString PlaybackBar::slowMotionText(int factor) {
    return factor == 1 ? tr("True speed") : tr("Slowed 1 : %1").arg(factor);
}

void PlaybackBar::setUsualFactor(int factor) {
    if (factor == usualFactor_)
        return;
    usualFactor_ = factor;
    factorChosen_ = false;
    chooseUsualFactor();
}

int PlaybackBar::factor() const {
    return geometry_ ? factor_->currentData().toInt() : 0;
}

void PlaybackBar::chooseUsualFactor() {
    if (!geometry_)
        return;
    if (!factorChosen_) {
        const double perSecond = geometry_->design.running.speed / units::turn;
        const auto away = [&](int factor) {
            return std::abs(std::log(perSecond / factor / pleasantRate));
        };
        const int suited = *std::ranges::min_element(slowMotionFactors(), {}, away);
        factor_->setCurrentIndex(factor_->findData(usualFactor_ > 0 ? usualFactor_ : suited));
    }
    applyFactor();
}

void PlaybackBar::applyFactor() {
    if (geometry_) {
        cursor_.setRate(geometry_->design.running.speed / units::turn /
                        factor_->currentData().toInt());
    }
}

void PlaybackBar::stepToEvent(int direction) {
    if (const auto stop = nextStop(stops_, cursor_.angle(), direction > 0))
        cursor_.setAngle(*stop);
}

void PlaybackBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_PageDown)
        toNextEvent();
    else if (event->key() == Qt::Key_PageUp)
        toPreviousEvent();
    else
        QWidget::keyPressEvent(event);
}

void PlaybackBar::showAngle() {
    const QSignalBlocker quietSlider(slider_), quietAngle(angle_);
    const double degrees = cursor_.angle() / units::degree;
    slider_->setValue(static_cast<int>(degrees * Scrubber::perDegree));
    angle_->setValue(degrees);
    if (geometry_) {
        const double cycle = cycleAngle(geometry_->pair, cursor_.angle()) / units::degree;
        cycle_->setText(tr("Cycle %1°").arg(degreesText(cycle)));
    }
}

void PlaybackBar::showPlaying() {
    play_->setText(cursor_.isPlaying() ? tr("Pause") : tr("Play"));
    play_->setToolTip(cursor_.isPlaying() ? tr("Stop the shaft") : tr("Turn the shaft"));
}

void PlaybackBar::addTo(QMenu& menu) {
    QAction* play =
        menu.addAction(tr("&Play"), QKeySequence(tr("F5")), &cursor_, &TurnCursor::togglePlaying);
    menu.addAction(tr("Pre&vious event"), QKeySequence(tr("F7")), this,
                   &PlaybackBar::toPreviousEvent);
    menu.addAction(tr("&Next event"), QKeySequence(tr("F8")), this, &PlaybackBar::toNextEvent);
    connect(&cursor_, &TurnCursor::playingChanged, play,
            [play](bool playing) { play->setText(playing ? tr("&Pause") : tr("&Play")); });
}

} // namespace lobewright::ui
