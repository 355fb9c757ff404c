#include "ui/plots/turn/width_plot.h"

#include "core/solution/pipeline/stages.h"
#include "core/track/speeds.h"
#include "core/track/undercut.h"
#include "core/units.h"
#include "ui/base/menus.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/base/hatching.h"

#include <QActionGroup>

#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double farMargin = 3.0; ///< more roller radii of room than this are not worth a scale
constexpr double wattPerSquareMillimetre = 1e6;

std::array<double, 3> stationsOf(const mechanism::Mechanism& mechanism) {
    const double pitch = mechanism.pitchRadius;
    return {mechanism.roller.innerEdge(pitch), pitch, mechanism.roller.outerEdge(pitch)};
}

std::vector<track::Flank> flanksOf(const mechanism::Mechanism& mechanism) {
    if (mechanism.closedTrack)
        return {track::Flank::push, track::Flank::pull};
    return {track::Flank::push};
}

Samples smallestRadius(const motion::LiftSamples& lift, double rho,
                       const mechanism::Mechanism& mechanism) {
    Samples least = Samples::Constant(lift.y.size(), 1e300);
    for (const track::Flank flank : flanksOf(mechanism))
        least = least.min(track::relativeRadius(lift, rho, mechanism.roller.radius, flank));
    return least;
}

/// Not-a-number where any roller will do: a gap in the curve.
Samples margin(const motion::LiftSamples& lift, double rho, const mechanism::Mechanism& mechanism) {
    Samples room(lift.y.size());
    for (Eigen::Index i = 0; i < room.size(); ++i) {
        double limit = std::numeric_limits<double>::infinity();
        for (const track::Flank flank : flanksOf(mechanism)) {
            const motion::Lift at{lift.y[i], lift.y1[i], lift.y2[i], lift.y3[i]};
            limit = std::min(limit, track::rollerRadiusLimit(at, rho, flank));
        }
        room[i] = track::isAnyRadius(limit, mechanism.pitchRadius)
                      ? std::numeric_limits<double>::quiet_NaN()
                      : limit - mechanism.roller.radius;
    }
    return room;
}

Samples slipOf(const motion::LiftSamples& lift, double rho, const Geometry& geometry) {
    const mechanism::Mechanism& mechanism = geometry.design.mechanism;
    return track::slip(lift, rho, mechanism.pitchRadius, mechanism.roller.radius,
                       geometry.design.running.speed, track::Flank::push)
        .magnitude();
}

struct QuantityWords {
    QString title, unit, help;
};

const QuantityWords& wordsOf(WidthPlot::Quantity quantity) {
    static const QuantityWords all[] = {
        {WidthPlot::tr("Pressure angle over the width"), QStringLiteral("°"),
         WidthPlot::tr("Pressure angle α at each place, tan α = y'/ρ: steeper at the inner edge, "
                       "so the contact line is twisted.")},
        {WidthPlot::tr("Relative radius of curvature over the width"), QStringLiteral("mm"),
         WidthPlot::tr("Relative radius of curvature of roller and track; 0 or less: the track is "
                       "undercut there.")},
        {WidthPlot::tr("Undercut margin over the width"), QStringLiteral("mm"),
         WidthPlot::tr("How much larger the roller's radius may become before the track has a "
                       "cusp there; a gap in the curve: any radius will do.")},
        {WidthPlot::tr("Slip over the width"), QStringLiteral("m/s"),
         WidthPlot::tr("Sliding speed of the track's surface on the roller's, across and along "
                       "the roller axis. At its middle the roller rolls without slip only across "
                       "its axis; along it the track slides there too.")},
        {WidthPlot::tr("Contact stress × slip over the width"), QStringLiteral("W/mm²"),
         WidthPlot::tr("Nominal contact stress times slip at the same place: heating and wear, "
                       "for comparing designs.")}};
    return all[static_cast<size_t>(quantity)];
}

QString stationName(int station) {
    const QString names[] = {WidthPlot::tr("inner edge"), WidthPlot::tr("middle"),
                             WidthPlot::tr("outer edge")};
    return names[station];
}

} // namespace

WidthPlot::WidthPlot(TurnCursor& cursor, Quantity quantity, QWidget* parent)
    : TurnPlot(cursor, wordsOf(quantity).title, parent), quantity_(quantity) {
    for (size_t& index : curves_)
        index = addCurve({});
    canvas().addPaint(TurnCanvas::shading, [this](QCPPainter& painter) { paintLimits(painter); });
    relabel();
}

bool WidthPlot::lessIsWorse() const {
    return quantity_ == Quantity::relativeRadius || quantity_ == Quantity::undercutMargin;
}

void WidthPlot::relabel() {
    const QString& unit = wordsOf(quantity_).unit;
    canvas().setLeftLabel(trackWithin(end_, isOneSided()), unit);
    // The inner edge, where it is worst, is the heaviest; a dash would mean the baseline.
    constexpr double widths[] = {2.4, 1.5, 0.9};
    for (size_t i = 0; i < curves_.size(); ++i) {
        CurveLook look;
        look.label = stationName(static_cast<int>(i));
        look.label[0] = look.label[0].toUpper();
        look.unit = unit;
        look.help = wordsOf(quantity_).help;
        look.tone = toneOf(end_);
        look.width = widths[i];
        setLook(curves_[i], look);
    }
}

void WidthPlot::setEnd(End end) {
    end_ = end;
    relabel();
    takeChoice();
}

Samples WidthPlot::valuesOf(const Geometry& geometry, const motion::LiftSamples& lift,
                            size_t station) const {
    const mechanism::Mechanism& mechanism = geometry.design.mechanism;
    const double rho = stationsOf(mechanism)[station];
    switch (quantity_) {
    case Quantity::pressureAngle:
        return track::contactAngle(lift, rho) / units::degree;
    case Quantity::relativeRadius:
        return smallestRadius(lift, rho, mechanism) / units::millimetre;
    case Quantity::undercutMargin:
        return margin(lift, rho, mechanism) / units::millimetre;
    default:
        return slipOf(lift, rho, geometry);
    }
}

void WidthPlot::fillFromGeometry() {
    for (size_t i = 0; i < curves_.size(); ++i) {
        setFromGeometry(curves_[i], [this, i](const Geometry& geometry) {
            const TurnMotion motion = turnMotion(geometry.pair, end_);
            return Line{motion.theta, valuesOf(geometry, motion.lift, i)};
        });
    }
}

void WidthPlot::fillFromSolution() {
    for (size_t i = 0; i < curves_.size(); ++i) {
        setFromSolutions(curves_[i], [this, i](const solution::Solution& from) {
            const auto contact = from.stages ? from.stages->contact : nullptr;
            if (!contact)
                return Line{};
            const contact::StationContact& station = contact->track[end_].stations[i];
            return Line{from.stages->loads->theta,
                        station.pressure * station.slip / wattPerSquareMillimetre};
        });
    }
}

void WidthPlot::findWorst() {
    worst_.reset();
    for (size_t i = 0; i < curves_.size(); ++i) {
        const Curve& shown = curves()[curves_[i]];
        for (Eigen::Index k = 0; k < shown.values.size(); ++k) {
            const double value = shown.values[k];
            if (!std::isfinite(value))
                continue;
            const bool isWorse =
                !worst_ ||
                (lessIsWorse() ? value < worst_->value : std::abs(value) > std::abs(worst_->value));
            if (isWorse)
                worst_ = Worst{value, shown.theta[k], static_cast<int>(i)};
        }
    }
}

/// Between the samples the radius may be smaller still: the value that checks and tables quote.
void WidthPlot::refineLeastRadius() {
    const auto& mechanism = geometry()->design.mechanism;
    const mechanism::OpposedPair& pair = geometry()->pair;
    const Unit lengths = unitFor(wordsOf(quantity_).unit);
    for (const track::Flank flank : flanksOf(mechanism)) {
        const auto smallest = track::smallestRelativeRadius(pair.curve(end_), mechanism.pitchRadius,
                                                            mechanism.roller, flank);
        const double value = lengths.shown(smallest.value / units::millimetre);
        if (worst_ && value > worst_->value)
            continue;
        const double theta = smallest.place.phi - pair.trackAngle(end_, 0.0);
        const double off = smallest.place.rho - mechanism.pitchRadius;
        const double quarter = 0.25 * mechanism.roller.width;
        worst_ = Worst{value, theta - pair.period() * std::floor(theta / pair.period()),
                       off < -quarter  ? 0
                       : off > quarter ? 2
                                       : 1};
    }
}

void WidthPlot::refill() {
    canvas().setLeftLabel(trackWithin(end_, isOneSided()), wordsOf(quantity_).unit);
    if (quantity_ == Quantity::pressureSlip) {
        fillFromSolution();
    } else {
        fillFromGeometry();
    }
    findWorst();
    if (quantity_ == Quantity::relativeRadius)
        refineLeastRadius();
    finishRefill();
}

std::vector<ReadoutStrip::Item> WidthPlot::remarks() const {
    if (!worst_)
        return {};
    const bool isUndercut = lessIsWorse() && worst_->value <= 0.0;
    ReadoutStrip::Item item;
    item.pen = QPen(isUndercut ? tones().warning : tones().quiet, 3.0);
    item.label = (isUndercut      ? tr("Undercut, %1 at %2°:")
                  : lessIsWorse() ? tr("Minimum, %1 at %2°:")
                                  : tr("Maximum, %1 at %2°:"))
                     .arg(stationName(worst_->station), degreesText(worst_->theta / units::degree));
    item.value = shortText(worst_->value);
    item.unit = unitFor(wordsOf(quantity_).unit).text;
    std::vector<ReadoutStrip::Item> items{item};
    if (quantity_ == Quantity::relativeRadius && geometry()) {
        // The rule of planar cams, for comparison.
        double planar = std::numeric_limits<double>::infinity();
        const mechanism::Mechanism& mechanism = geometry()->design.mechanism;
        const TurnMotion motion = turnMotion(geometry()->pair, end_);
        for (const track::Flank flank : flanksOf(mechanism)) {
            for (const double rho : stationsOf(mechanism)) {
                planar = std::min(planar, track::planarRelativeRadius(
                                              motion.lift, rho, mechanism.roller.radius, flank)
                                              .minCoeff());
            }
        }
        ReadoutStrip::Item rule;
        rule.pen = QPen(tones().quiet, 3.0, Qt::DotLine);
        rule.label = tr("planar rule:");
        const Unit lengths = unitFor(QStringLiteral("mm"));
        rule.value = shortText(lengths.shown(planar / units::millimetre));
        rule.unit = lengths.text;
        rule.help =
            tr("The relative radius from the curvature of the unrolled pitch curve alone. It "
               "neglects the twist of the contact line and can pass a track that is undercut.");
        items.push_back(rule);
    }
    return items;
}

QCPRange WidthPlot::contentRange(bool onRight) const {
    QCPRange range = TurnPlot::contentRange(onRight);
    if (quantity_ == Quantity::pressureAngle || !geometry())
        return range;
    range.expand(QCPRange(0.0, range.upper));
    if (quantity_ == Quantity::undercutMargin) {
        const double radius =
            unitFor(QStringLiteral("mm"))
                .shown(geometry()->design.mechanism.roller.radius / units::millimetre);
        // Far margins are of no interest, unless there are no others.
        const double far = std::max(farMargin * radius, worst_ ? 1.5 * worst_->value : 0.0);
        range.upper = std::clamp(range.upper, radius, far);
    }
    return range;
}

void WidthPlot::paintLimits(QCPPainter& painter) const {
    if (!geometry())
        return;
    const QRectF box = canvas().inside();
    const auto across = [&](double value, Qt::PenStyle style) {
        const double y = canvas().yAxis->coordToPixel(value);
        painter.setPen(QPen(tones().warning, 1, style));
        painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
    };
    if (quantity_ == Quantity::pressureAngle) {
        const auto& limit = geometry()->design.limits.pressureAngle;
        for (const double sign : {-1.0, 1.0}) {
            across(sign * limit.warning / units::degree, Qt::DashDotLine);
            across(sign * limit.error / units::degree, Qt::SolidLine);
        }
        painter.setFont(canvas().xAxis->tickLabelFont());
        painter.setPen(tones().warning);
        const double y = canvas().yAxis->coordToPixel(limit.warning / units::degree);
        // The letters of events stand along the top.
        const double line = QFontMetricsF(painter.font()).height();
        if (y - 3.0 - line > box.top() + line) {
            painter.drawText(QPointF(box.left() + 4.0, y - 3.0),
                             tr("limit %1°").arg(degreesText(limit.warning / units::degree)));
        }
    } else if (lessIsWorse()) {
        const double y = canvas().yAxis->coordToPixel(0.0);
        const QRectF below = QRectF(QPointF(box.left(), y), box.bottomRight()).intersected(box);
        if (y < box.bottom())
            hatch(painter, below, tones().tint(tones().warning, 0.5));
        across(0.0, Qt::SolidLine);
    }
}

bool WidthPlot::isOneSided() const {
    return geometry() && geometry()->pair.mechanism().isOneSided();
}

void WidthPlot::addOptions(QMenu& menu) {
    if (isOneSided()) { // no other track to choose
        TurnPlot::addOptions(menu);
        return;
    }
    auto* group = new QActionGroup(&menu);
    for (const End end : bothEnds) {
        group->addAction(addChoice(menu,
                                   end == End::inlet ? tr("&Inlet track") : tr("E&xhaust track"),
                                   end == end_, this, [this, end] { setEnd(end); }));
    }
    menu.addSeparator();
    TurnPlot::addOptions(menu);
}

QString WidthPlot::state() const {
    return QLatin1String(name(end_));
}

void WidthPlot::restoreState(const QString& state) {
    setEnd(state == QLatin1String(name(End::exhaust)) ? End::exhaust : End::inlet);
}

} // namespace lobewright::ui
