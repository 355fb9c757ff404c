#include "ui/scene/section/clock_view.h"

#include "core/reference/crank_cycle.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/menus.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/plot_export.h"
#include "ui/scene/section/crank_painter.h"
#include "ui/scene/section/section_painter.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {
constexpr double margin = 8.0;
constexpr int settlingTime = 120; ///< [ms]
} // namespace

ClockView::ClockView(TurnCursor& cursor, QWidget* parent) : TurnView(cursor, parent) {
    setObjectName(QStringLiteral("clockView"));
    describe(*this, tr("Cam and crank synchronised"),
             tr("Above: this engine. Below: the same pistons and ports on cranks, at the same "
                "moment. Drag to turn both."));
}

ClockView::~ClockView() = default;

void ClockView::setGear(Gear gear) {
    if (gear == gear_)
        return;
    gear_ = gear;
    cranks_.reset(); // another cycle altogether
    update();
}

void ClockView::wantCranks(int settling) {
    const auto solution = engine().sharedSolution();
    const Wanted now{solution, gear_};
    if (now == wanted_)
        return;
    wanted_ = now;
    if (!solution || !solution->gas) { // nothing to compare with
        work_.stop();
        cranks_.reset();
        return;
    }
    work_.wantAnswer(
        [now](Monitor& monitor) {
            return study::crankCycle(*now.solution, now.gear == Gear::sameStrokes, monitor);
        },
        [this](Result<study::CrankCycle> answer) {
            cranks_ = answer ? std::make_shared<const study::CrankCycle>(std::move(answer).value())
                             : nullptr;
            update();
        },
        settling);
}

bool ClockView::isComplete() {
    wantCranks(0);
    return !work_.isBusy();
}

double ClockView::turnFromInnerDeadCentre(double theta) const {
    return theta - engine().pair().deadCentres().front().idc;
}

double ClockView::crankAngle(End end, double theta) const {
    const auto& pair = engine().pair();
    const double cycles = pair.cyclesPerTurn();
    const double speed = gear_ == Gear::sameSpeed ? 1.0 : cycles;
    const double tau = speed * turnFromInnerDeadCentre(theta);
    // Half the lead on either side of the pair's inner dead centre, in the degrees of a cycle.
    const auto& mechanism = engine().design().mechanism;
    const double half = 0.5 * cycles * (mechanism.exhaustLead + mechanism.adjuster.setting);
    return end == End::exhaust ? tau + half : tau - half;
}

PerEnd<double> ClockView::crankAngles(double theta) const {
    return {crankAngle(End::inlet, theta), crankAngle(End::exhaust, theta)};
}

double ClockView::crankLift(End end, double theta) const {
    return CrankSide::of(engine(), end).crank.at(crankAngle(end, theta)).y;
}

double ClockView::crankOpening(End side, const ports::Row& row, double theta) const {
    return CrankPainter::openHeight(engine(), side, row, crankAngles(theta));
}

std::optional<GasMoment> ClockView::crankGas(double theta) const {
    if (!cranks_)
        return std::nullopt;
    const gas::CycleSolution& cycle = cranks_->gas;
    // The chamber counts from the outer dead centre of its inlet crank.
    const double angle = crankAngle(End::inlet, theta) + units::pi;
    const gas::GasSamples now = cycle.trace->sample(Samples::Constant(1, angle));
    GasMoment gas{now.pressure[0] / units::bar, now.temperature[0], 0.0, false};
    const double mass = now.airMass[0] + now.productsMass[0];
    if (mass > 0.0)
        gas.burntShare = std::clamp(now.productsMass[0] / mass, 0.0, 1.0);
    const double fromIdc =
        std::remainder(angle - cranks_->chamber.cycles().front().idc, units::turn);
    const double sinceStart = fromIdc - cycle.cycles.front().burnStart;
    gas.burning =
        !cranks_->run.motored && sinceStart >= 0.0 && sinceStart <= cranks_->settings.burn.duration;
    return gas;
}

void ClockView::addOptions(QMenu& menu) {
    const std::pair<Gear, QString> gears[] = {
        {Gear::sameSpeed, tr("Cranks at the same shaft speed")},
        {Gear::sameStrokes, tr("Cranks with as many power strokes per second")}};
    for (const auto& [gear, title] : gears) {
        addChoice(menu, title, gear == gear_, this, [this, gear = gear] { setGear(gear); });
    }
    menu.addSeparator();
    addPictureActions(menu, *this, tr("Cam tracks and cranks"));
}

void ClockView::layOut() {
    const double line = QFontMetricsF(font()).height();
    const double band = 1.6 * line;
    const double half = 0.5 * (height() - 2.0 * band);
    const QRectF room(margin, band, width() - 2.0 * margin, half - margin);
    // The belts of the ports stand out beyond the walls that the frame fits in.
    const QRectF above = room.adjusted(0.0, 0.1 * room.height(), 0.0, -0.1 * room.height());
    crankArea_ = QRectF(margin, band + half + band, width() - 2.0 * margin, half - margin);
    cam_ = SectionFrame(engine(), above);
    double reach = 0.0, across = cam_.halfBore() + cam_.wall();
    for (const End end : engine().pair().pistons()) {
        const CrankSide side = CrankSide::of(engine(), end);
        reach = std::max(reach, side.reach());
        across = std::max(across, 1.35 * side.radius);
    }
    scale_ = std::min(0.5 * crankArea_.width() / reach, 0.5 * crankArea_.height() / across);
    if (cam_.scale() > scale_) {
        // One scale for both: the longer engine decides.
        const double share = scale_ / cam_.scale();
        QRectF smaller(0.0, 0.0, above.width() * share, above.height() * share);
        smaller.moveCenter(above.center());
        cam_ = SectionFrame(engine(), smaller);
    }
    scale_ = std::min(scale_, cam_.scale());
}

void ClockView::paintDrawing(QPainter& painter) {
    painter.setFont(font());
    painter.save();
    const double words = 1.5 * painter.fontMetrics().height();
    painter.setClipRect(QRectF(0.0, words, width(), crankArea_.top() - 2.0 * words));
    SectionPainter(painter, engine(), cam_, tones(), cursor().angle()).paint();
    painter.restore();
    const double theta = cursor().angle();
    wantCranks(settlingTime);
    CrankPainter(painter, engine(), cam_, tones(), crankArea_, scale_, crankAngles(theta),
                 crankGas(theta))
        .paint();
    paintWords(painter);
}

int ClockView::gasCycle(double theta) const {
    // A cycle runs from one last port closing to the next, so compression belongs to the firing
    // that it serves.
    const auto& pair = engine().pair();
    const auto events = engine().eventsSince(theta);
    const auto& centres = pair.deadCentres();
    int number = 0;
    double nearest = units::turn;
    for (std::size_t j = 0; j < centres.size(); ++j) {
        const double periods = (events.centres.idc - centres[j].idc) / pair.period();
        const double off = std::abs(periods - std::round(periods));
        if (off < nearest) {
            nearest = off;
            number = static_cast<int>(std::lround(periods)) * static_cast<int>(centres.size()) +
                     static_cast<int>(j);
        }
    }
    constexpr double rounding = 1e-9;
    if (theta + rounding >= events.lastClosing())
        ++number;
    const int all = pair.cyclesPerTurn();
    return ((number % all) + all) % all + 1;
}

namespace {
/// "…; 12.3 bar", where the gas is known.
QString withPressure(const QString& words, const std::optional<GasMoment>& gas) {
    return gas ? words + QStringLiteral("; ") +
                     quantityText(gas->pressure, QStringLiteral("bar"), 1)
               : words;
}
} // namespace

QString ClockView::camWords() const {
    const double theta = cursor().angle();
    return withPressure(tr("Cam tracks: shaft %1, gas cycle %2 of %3 per revolution")
                            .arg(words::degrees(theta, 1))
                            .arg(gasCycle(theta))
                            .arg(engine().pair().cyclesPerTurn()),
                        engine().gasAt(theta));
}

QString ClockView::crankWords() const {
    const double theta = cursor().angle();
    const double tau = 0.5 * (crankAngle(End::inlet, theta) + crankAngle(End::exhaust, theta));
    const double turned = tau - units::turn * std::floor(tau / units::turn);
    const QString angle = words::degrees(turned, 1);
    const QString words =
        gear_ == Gear::sameSpeed
            ? tr("Cranks at the same shaft speed: %1 after inner dead centre, one power stroke "
                 "per revolution")
                  .arg(angle)
            : tr("Cranks that turn %1 times as fast: %2 after inner dead centre")
                  .arg(engine().pair().cyclesPerTurn())
                  .arg(angle);
    return withPressure(words, crankGas(theta));
}

void ClockView::paintWords(QPainter& painter) const {
    const double line = painter.fontMetrics().height();
    const auto put = [&](double y, const QString& words) {
        const QRectF row(margin, y, width() - 2.0 * margin, line);
        const QString shown =
            painter.fontMetrics().elidedText(words, Qt::ElideRight, static_cast<int>(row.width()));
        painter.setPen(tones().ink);
        painter.drawText(row, Qt::AlignHCenter, shown);
    };
    put(0.3 * line, camWords());
    put(crankArea_.top() - 1.3 * line, crankWords());
}

} // namespace lobewright::ui
