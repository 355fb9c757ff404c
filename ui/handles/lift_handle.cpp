#include "ui/handles/lift_handle.h"

#include "core/editing/knot_edits.h"
#include "core/editing/tidy.h"
#include "ui/base/core_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

using editing::LiftGrip;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(TrackHandles)
};

constexpr double seen = 0.005; ///< a shift that two decimals show [mm]

HandleAxis angleAxis(const LiftGrip& grip) {
    HandleAxis axis;
    axis.label = Words::tr("track angle");
    axis.unit = QString(QChar(0x00B0));
    axis.value = editing::tidy(grip.angle);
    axis.min = std::min(grip.angleFrom, axis.value);
    axis.max = std::max(grip.angleTo, axis.value);
    axis.snap = editing::angleStep(false);
    axis.fine = editing::angleStep(true);
    return axis;
}

HandleAxis valueAxis(const LiftGrip& grip) {
    HandleAxis axis;
    axis.value = editing::tidy(grip.value);
    axis.min = grip.valueFrom;
    axis.max = grip.valueTo;
    axis.snap = editing::valueStep(grip.curve, false);
    axis.fine = editing::valueStep(grip.curve, true);
    switch (grip.curve) {
    case LiftGrip::Curve::lift:
        axis.label = Words::tr("lift");
        axis.unit = QStringLiteral("mm");
        if (std::abs(grip.shift) >= seen) {
            axis.note = [shift = grip.shift, plain = axis](double lift) {
                return Words::tr(", plotted %1").arg(shownValue(plain, lift + shift));
            };
        }
        break;
    case LiftGrip::Curve::velocity:
        axis.label = Words::tr("slope");
        axis.unit = QStringLiteral("mm/°");
        axis.decimals = 4;
        break;
    case LiftGrip::Curve::acceleration:
        axis.label = Words::tr("acceleration");
        axis.unit = QStringLiteral("mm/°²");
        axis.decimals = 5;
        break;
    }
    return axis;
}

std::string keyOf(const LiftGrip& grip) {
    const std::string place = grip.kind == LiftGrip::Kind::bound
                                  ? grip.anglePath
                                  : grip.anglePath.substr(0, grip.anglePath.rfind('/'));
    return grip.curve == LiftGrip::Curve::lift       ? place
           : grip.curve == LiftGrip::Curve::velocity ? place + ":velocity"
                                                     : place + ":acceleration";
}

} // namespace

Handle liftHandle(const std::shared_ptr<const design::Design>& design, const LiftGrip& grip) {
    Handle handle;
    handle.key = keyOf(grip);
    handle.label = coreText(grip.label);
    const bool isOnLift = grip.curve == LiftGrip::Curve::lift;
    handle.goesOneWay = grip.kind == LiftGrip::Kind::bound || !isOnLift;
    handle.isMinor = !isOnLift;
    handle.mark = grip.kind == LiftGrip::Kind::bound ? Handle::Mark::diamond : Handle::Mark::dot;
    if (grip.movesAngle)
        handle.axes.push_back(angleAxis(grip));
    if (grip.movesValue)
        handle.axes.push_back(valueAxis(grip));
    handle.edit = [design, grip](const std::vector<double>& values) -> Edit {
        return editing::moveGrip(*design, grip, grip.movesAngle ? values.front() : grip.angle,
                                 grip.movesValue ? values.back() : grip.value);
    };
    if (grip.kind == LiftGrip::Kind::knot) {
        handle.removal = [design, grip]() -> std::optional<Edit> {
            return editing::removeKnot(*design, grip.end, grip.index);
        };
    }
    return handle;
}

} // namespace lobewright::ui
