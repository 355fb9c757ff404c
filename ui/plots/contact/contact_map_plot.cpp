#include "ui/plots/contact/contact_map_plot.h"

#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/menus.h"
#include "ui/base/palette.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/head_line.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/low_frames.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"

#include <cmath>
#include <limits>

namespace lobewright::ui {

namespace {

constexpr int lineCount = 15; // odd: one on the middle, where crowned rollers have their film
constexpr int cellsPerTurn = 720;

struct QuantityLook {
    const char* key;
    QString label, unit;
    double scale; ///< SI per unit shown
    Eigen::ArrayXXd contact::ContactMap::*values;
};

const QuantityLook& lookOf(ContactMapPlot::Quantity quantity) {
    static const QuantityLook looks[] = {
        {"pressure", ContactMapPlot::tr("Nominal contact stress"), QStringLiteral("MPa"),
         units::megapascal, &contact::ContactMap::pressure},
        {"shear", ContactMapPlot::tr("Maximum subsurface shear stress"), QStringLiteral("MPa"),
         units::megapascal, &contact::ContactMap::shear},
        {"film", ContactMapPlot::tr("Oil film"), QStringLiteral("µm"), units::micrometre,
         &contact::ContactMap::film},
        {"film_ratio", ContactMapPlot::tr("Specific film thickness Λ"), QString(), 1.0,
         &contact::ContactMap::filmRatio},
        {"slip", ContactMapPlot::tr("Slip"), QStringLiteral("m/s"), 1.0,
         &contact::ContactMap::slip}};
    return looks[static_cast<size_t>(quantity)];
}

constexpr ContactMapPlot::Quantity everyQuantity[] = {
    ContactMapPlot::Quantity::pressure, ContactMapPlot::Quantity::shear,
    ContactMapPlot::Quantity::film, ContactMapPlot::Quantity::filmRatio,
    ContactMapPlot::Quantity::slip};

} // namespace

ContactMapPlot::ContactMapPlot(TurnCursor& cursor, QWidget* parent)
    : QCustomPlot(parent), cursor_(cursor), map_(new QCPColorMap(xAxis, yAxis)),
      scale_(new QCPColorScale(this)), line_(new QCPItemStraightLine(this)), mark_(addGraph()),
      text_(new HeadLine(*this)) {
    setAccessibleName(tr("Contact over angle and width"));
    setMinimumSize(160, 120);
    new LowFrames(*this);
    offerOptions(*this);
    setFocusPolicy(Qt::StrongFocus);
    map_->setInterpolate(false);
    map_->setTightBoundary(true);
    plotLayout()->addElement(0, 1, scale_);
    scale_->setBarWidth(10);
    scale_->setType(QCPAxis::atRight);
    map_->setColorScale(scale_);
    auto* margins = new QCPMarginGroup(this);
    axisRect()->setMarginGroup(QCP::msTop | QCP::msBottom, margins);
    scale_->setMarginGroup(QCP::msTop | QCP::msBottom, margins);
    mark_->setLineStyle(QCPGraph::lsNone);
    mark_->setName({});
    xAxis->setLabel(tr("shaft °"));
    xAxis->setRange(0.0, 360.0);
    auto ticks = QSharedPointer<QCPAxisTickerFixed>::create();
    ticks->setTickStep(45.0);
    xAxis->setTicker(ticks);
    connect(&Units::instance(), &Units::changed, this, &ContactMapPlot::refill);
    connect(&cursor_, &TurnCursor::angleChanged, this, &ContactMapPlot::moveCursor);
    const auto toPointer = [this](QMouseEvent* event) {
        if (event->buttons() & Qt::LeftButton)
            cursor_.setAngle(xAxis->pixelToCoord(event->position().x()) * units::degree);
    };
    connect(this, &QCustomPlot::mousePress, this, toPointer);
    connect(this, &QCustomPlot::mouseMove, this, toPointer);
    whenLookChanges(*this, [this] {
        applyTones();
        replot(rpQueuedReplot);
    });
    moveCursor();
    applyTones();
}

void ContactMapPlot::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void ContactMapPlot::show(End end, Quantity quantity) {
    end_ = end;
    quantity_ = quantity;
    applyTones();
    refill();
    Q_EMIT stateChanged();
}

End ContactMapPlot::shownEnd() const {
    return solution_ && solution_->pair.mechanism().isOneSided() ? End::inlet : end_;
}

bool ContactMapPlot::lessIsWorse() const {
    return quantity_ == Quantity::film || quantity_ == Quantity::filmRatio;
}

bool ContactMapPlot::oneFilmPerContact() const {
    return lessIsWorse() && solution_->design.mechanism.roller.crownRadius.has_value();
}

void ContactMapPlot::refill() {
    worst_.reset();
    yAxis->setLabel(axisText(tr("from the middle of the track, outward"), QStringLiteral("mm")));
    const auto map =
        solution_ ? solution::contactMap(*solution_, shownEnd(), lineCount) : std::nullopt;
    if (map) {
        const QuantityLook& look = lookOf(quantity_);
        fill(*map, (*map).*look.values, look.scale);
        scale_->axis()->setLabel(unitFor(look.unit).text);
        map_->setName(axisText(look.label, look.unit));
    }
    markWorst();
    replot(rpQueuedReplot);
}

void ContactMapPlot::fill(const contact::ContactMap& map, const Eigen::ArrayXXd& values,
                          double unit) {
    const double middle = solution_->design.mechanism.pitchRadius;
    const auto widths = static_cast<int>(map.rho.size());
    const Unit lengths = unitFor(QStringLiteral("mm"));
    const Unit shown = unitFor(lookOf(quantity_).unit);
    const QCPRange across(lengths.shown((map.rho[0] - middle) / units::millimetre),
                          lengths.shown((map.rho[widths - 1] - middle) / units::millimetre));
    map_->data()->setSize(cellsPerTurn + 1, widths);
    map_->data()->setRange(QCPRange(0.0, 360.0), across);
    // Room for a mark on the edge, where the worst place often is.
    yAxis->setRange(across.lower - 0.05 * across.size(), across.upper + 0.05 * across.size());
    for (int j = 0; j < widths; ++j) {
        // the film of a crowned roller is one for its whole ellipse, found in the middle
        const int from = oneFilmPerContact() ? widths / 2 : j;
        for (Eigen::Index i = 0; i < map.theta.size(); ++i) {
            const double value = values(i, from) / unit;
            const bool touches = map.pressure(i, j) > 0.0 && value > 0.0;
            const int cell =
                static_cast<int>(std::lround(map.theta[i] / units::turn * cellsPerTurn));
            map_->data()->setCell(
                cell, j, touches ? shown.shown(value) : std::numeric_limits<double>::quiet_NaN());
            if (touches && (j == from || !oneFilmPerContact()) &&
                (!worst_ || (lessIsWorse() ? value < worst_->value : value > worst_->value)))
                worst_ = Worst{map.theta[i], map.rho[j] - middle, value};
        }
    }
    map_->rescaleDataRange(true);
}

void ContactMapPlot::markWorst() {
    mark_->data()->clear();
    if (!solution_) // units may change before the first
        return;
    const QString side = trackWithin(shownEnd(), solution_->pair.mechanism().isOneSided());
    const QuantityLook& look = lookOf(quantity_);
    if (!worst_) {
        text_->setText(tr("%1, %2: nothing presses").arg(look.label, side));
        return;
    }
    const double offset = worst_->offset / units::millimetre;
    const auto length = QStringLiteral("mm");
    mark_->addData(worst_->theta / units::degree, unitFor(length).shown(offset));
    text_->setText(
        (lessIsWorse() ? tr("%1, %2: minimum %3 at %4°, %5") : tr("%1, %2: maximum %3 at %4°, %5"))
            .arg(look.label, side, quantityText(worst_->value, look.unit),
                 shortText(worst_->theta / units::degree), quantityText(offset, length)) +
        (oneFilmPerContact() ? tr("; crowned: one film per contact") : QString()));
}

void ContactMapPlot::moveCursor() {
    standAt(*line_, cursor_.angle() / units::degree);
    replot(rpQueuedReplot);
}

void ContactMapPlot::applyTones() {
    applyPlotTones(*this, Palette::of(*this));
    const Palette& tones = Palette::of(*this);
    applyAxisTones(*scale_->axis(), tones, xAxis->labelFont());
    // One hue, that of the side; full where it is worst. Nothing touches: the bare ground.
    QCPColorGradient gradient;
    gradient.clearColorStops();
    const QColor full = tones.side(shownEnd()), pale = tones.tint(full, 0.12);
    gradient.setColorStopAt(0.0, lessIsWorse() ? full : pale);
    gradient.setColorStopAt(1.0, lessIsWorse() ? pale : full);
    gradient.setNanHandling(QCPColorGradient::nhNanColor);
    gradient.setNanColor(tones.paper);
    map_->setGradient(gradient);
    line_->setPen(QPen(tones.cursor, 1.2));
    mark_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(tones.warning, 2.4), Qt::NoBrush, 11));
}

void ContactMapPlot::addOptions(QMenu& menu) {
    const auto add = [&](const QString& text, bool on, End end, Quantity quantity) {
        addChoice(menu, text, on, this, [=, this] { show(end, quantity); });
    };
    if (!solution_ || !solution_->pair.mechanism().isOneSided()) {
        add(tr("&Inlet track"), end_ == End::inlet, End::inlet, quantity_);
        add(tr("&Exhaust track"), end_ == End::exhaust, End::exhaust, quantity_);
        menu.addSeparator();
    }
    for (const Quantity quantity : everyQuantity)
        add(lookOf(quantity).label, quantity == quantity_, end_, quantity);
    menu.addSeparator();
    addPictureActions(menu, *this, accessibleName());
}

QString ContactMapPlot::state() const {
    return QString::fromLatin1(name(end_)) + ';' + QLatin1String(lookOf(quantity_).key);
}

void ContactMapPlot::restoreState(const QString& state) {
    const QStringList parts = state.split(QLatin1Char(';'));
    for (const Quantity quantity : everyQuantity) {
        if (parts.value(1) == QLatin1String(lookOf(quantity).key)) {
            show(parts[0] == QLatin1String(name(End::exhaust)) ? End::exhaust : End::inlet,
                 quantity);
        }
    }
}

} // namespace lobewright::ui
