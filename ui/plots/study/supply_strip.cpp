#include "ui/plots/study/supply_strip.h"

#include "core/units.h"
#include "ui/base/curve.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"

#include <QMenu>

#include <cmath>

namespace lobewright::ui {

namespace {

using solution::SupplyPath;

constexpr double gapShare = 0.85; // of a box
constexpr double margin = 8.0;    // [px]

QString powerText(double power) {
    constexpr double small = 100.0; // [W]
    return power < small ? quantityText(power, QStringLiteral("W"))
                         : quantityText(power / units::kilowatt, QStringLiteral("kW"));
}

/// "× 1.42", power and who pays for it below each other.
QString stageText(double ratio, double power, bool exhaustPays) {
    return SupplyStrip::tr("× %1\n%2\n%3")
        .arg(shortText(ratio), powerText(power),
             exhaustPays ? SupplyStrip::tr("the exhaust pays") : SupplyStrip::tr("the shaft pays"));
}

SupplyStrip::Station station(const QString& title, const SupplyPath::State& state) {
    SupplyStrip::Station result;
    result.title = title;
    result.pressure = quantityText(state.pressure / units::bar, QStringLiteral("bar"));
    result.temperature = quantityText(state.temperature, QStringLiteral("K"));
    return result;
}

/// Behind a cooler that takes away a `drop` of temperature [K].
SupplyStrip::Station cooledBy(double drop, const SupplyPath::State& state, const QString& title,
                              const QString& cooler) {
    auto cooled = station(title, state);
    cooled.passage = cooler;
    const Unit kelvin = unitFor(QStringLiteral("K"));
    cooled.passageValue =
        SupplyStrip::tr("−%1 %2").arg(shortText(kelvin.difference(drop)), kelvin.text);
    return cooled;
}

/// Behind the wheel of a compressor, and behind a blower that follows it.
void addWheel(std::vector<SupplyStrip::Station>& list, const SupplyPath& path) {
    const bool exhaustPays = path.turbine.has_value();
    auto behind = station(SupplyStrip::tr("Behind the compressor"),
                          path.wheel->behind.value_or(path.compressed));
    behind.passage = SupplyStrip::tr("compressor");
    behind.passageValue =
        stageText(path.wheel->behind.value_or(path.compressed).pressure / path.ambient.pressure,
                  path.wheel->power, exhaustPays);
    list.push_back(behind);
    if (path.wheel->cooled) {
        list.push_back(cooledBy(path.wheel->behind->temperature - path.wheel->cooled->temperature,
                                *path.wheel->cooled, SupplyStrip::tr("Cooled between stages"),
                                SupplyStrip::tr("intercooler")));
    }
    if (path.wheel->behind) {
        auto blown = station(SupplyStrip::tr("Behind the blower"), path.compressed);
        blown.passage = SupplyStrip::tr("blower");
        blown.passageValue =
            stageText(path.compressed.pressure / path.wheel->behind->pressure,
                      exhaustPays ? path.power : path.power - path.wheel->power, false);
        list.push_back(blown);
    }
}

/// From the exhaust ports through the turbine.
void addTurbine(std::vector<SupplyStrip::Station>& list, const SupplyPath& path) {
    auto plenum = station(SupplyStrip::tr("Exhaust plenum"), path.turbine->before);
    plenum.end = End::exhaust;
    plenum.passage = SupplyStrip::tr("exhaust ports");
    list.push_back(plenum);
    auto behind = station(SupplyStrip::tr("Behind the turbine"), path.turbine->behind);
    behind.end = End::exhaust;
    behind.passage = SupplyStrip::tr("turbine");
    behind.passageValue =
        SupplyStrip::tr("÷ %1\n%2")
            .arg(shortText(path.turbine->before.pressure / path.turbine->behind.pressure),
                 powerText(path.turbine->power));
    list.push_back(behind);
}

std::vector<SupplyStrip::Station> stationsOf(const SupplyPath& path) {
    const bool blown = path.kind == gas::SupplyKind::blower;
    const bool hasPlenum = blown || path.kind == gas::SupplyKind::compressor;
    std::vector<SupplyStrip::Station> list{station(SupplyStrip::tr("Ambient"), path.ambient)};
    if (path.wheel) {
        addWheel(list, path);
    } else if (path.compresses) {
        auto compressed = station(blown ? SupplyStrip::tr("Behind the blower")
                                        : SupplyStrip::tr("Behind the compressor"),
                                  path.compressed);
        compressed.passage = blown ? SupplyStrip::tr("blower") : SupplyStrip::tr("compressor");
        compressed.passageValue =
            SupplyStrip::tr("× %1\n%2")
                .arg(shortText(path.ready.pressure / path.ambient.pressure), powerText(path.power));
        compressed.isUnpaid = !path.paid;
        list.push_back(compressed);
    }
    if (path.cooled) {
        // behind a wheel the plenum stands for it: there are stations enough
        list.push_back(cooledBy(path.compressed.temperature - path.cooled->temperature,
                                path.wheel ? path.ready : *path.cooled,
                                path.wheel ? SupplyStrip::tr("Plenum") : SupplyStrip::tr("Cooled"),
                                SupplyStrip::tr("after-cooler")));
    }
    if (path.pump) {
        auto under = station(path.hasTransfer ? SupplyStrip::tr("Transfer volume, mean")
                                              : SupplyStrip::tr("Under the piston, mean"),
                             path.ready);
        under.passage =
            path.drawsUnderSkirt ? SupplyStrip::tr("skirt ports") : SupplyStrip::tr("reed");
        under.passageValue =
            SupplyStrip::tr("%1 to %2\n%3")
                .arg(quantityText(path.pump->lowPressure / units::bar, QStringLiteral("bar")),
                     quantityText(path.pump->highPressure / units::bar, QStringLiteral("bar")),
                     powerText(path.power));
        list.push_back(under);
    } else if (!(path.wheel && path.cooled)) {
        list.push_back(station(hasPlenum ? SupplyStrip::tr("Plenum") : SupplyStrip::tr("Reservoir"),
                               path.ready));
    }
    auto chamber = station(SupplyStrip::tr("Chamber, ports closed"), path.trapped);
    chamber.passage = SupplyStrip::tr("ports");
    list.push_back(chamber);
    if (path.turbine)
        addTurbine(list, path);
    return list;
}

QString pipes() {
    return QLatin1Char(' ') +
           SupplyStrip::tr("No pipes modelled: a tuned exhaust can breathe better, or worse.");
}

/// Who pays for a compressor wheel and what stands beside it.
QString wheelVerdict(const SupplyPath& path, const QString& mep) {
    if (!path.turbine) {
        return SupplyStrip::tr("The shaft pays %1, %2 of mean effective pressure; brake values "
                               "deduct it.")
                   .arg(powerText(path.power), mep) +
               pipes();
    }
    const QString exhaust =
        path.turbine->isSustained
            ? SupplyStrip::tr("The exhaust pays %1 for the compressor and %2 for its bearings.")
                  .arg(powerText(path.wheel->power), powerText(path.turbine->friction))
            : SupplyStrip::tr("The turbocharger does not sustain itself at this speed: its wheel "
                              "idles.");
    if (!path.wheel->behind)
        return exhaust + pipes();
    return exhaust + QLatin1Char(' ') +
           SupplyStrip::tr("The shaft pays %1 for the blower, %2 of mean effective pressure; brake "
                           "values deduct it.")
               .arg(powerText(path.power), mep) +
           pipes();
}

QString verdictOf(const SupplyPath& path, const SolutionPointer& solution) {
    const auto pressure = figureValue(solution, "fmep_supply_bar");
    const QString mep = pressure ? quantityText(*pressure, QStringLiteral("bar")) : QString();
    if (path.wheel)
        return wheelVerdict(path, mep);
    if (path.pump) {
        return SupplyStrip::tr("The pistons pump: their backs take %1, %2 of mean effective "
                               "pressure; brake values deduct it. No pipes modelled: a tuned "
                               "exhaust can breathe better, or worse.")
            .arg(powerText(path.power), mep);
    }
    if (!path.compresses) {
        return SupplyStrip::tr(
            "No compression: the supply pressure is at or below ambient, so it needs no power.");
    }
    const QString power = powerText(path.power);
    if (!path.paid) {
        return SupplyStrip::tr("Supply power not counted: %1 are left out of every brake value.")
            .arg(power);
    }
    return SupplyStrip::tr("The shaft pays %1, %2 of mean effective pressure; brake values "
                           "deduct it.")
        .arg(power, mep);
}

} // namespace

SupplyStrip::SupplyStrip(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Air path"));
    connect(&Units::instance(), &Units::changed, this, &SupplyStrip::refill);
    offerOptions(*this);
}

DataSheet SupplyStrip::dataSheet() const {
    DataSheet sheet{{tr("place"), tr("pressure"), tr("temperature"), tr("reached by"), tr("effect"),
                     tr("baseline")},
                    {}};
    for (const Station& place : stations_) {
        sheet.rows.push_back({place.title, place.pressure, place.temperature, place.passage,
                              place.passageValue.simplified(), place.before});
    }
    return sheet;
}

QSize SupplyStrip::minimumSizeHint() const {
    return {200, 110};
}

void SupplyStrip::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void SupplyStrip::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refill();
}

void SupplyStrip::refill() {
    stations_.clear();
    verdict_ = tr("The gas cycle could not be solved.");
    const auto path = solution_ ? solution::supplyPath(*solution_) : std::nullopt;
    if (path) {
        stations_ = stationsOf(*path);
        verdict_ = verdictOf(*path, solution_);
        const auto before = baseline_ ? solution::supplyPath(*baseline_) : std::nullopt;
        for (const Station& earlier : before ? stationsOf(*before) : std::vector<Station>()) {
            for (Station& now : stations_) {
                if (now.title == earlier.title)
                    now.before = tr("was %1").arg(earlier.pressure);
            }
        }
    }
    QStringList text;
    for (const Station& place : stations_) {
        text << QStringList{place.passage, place.passageValue, place.title, place.pressure,
                            place.temperature}
                    .join(' ');
    }
    setAccessibleDescription(text.join(QLatin1String("; ")) + QStringLiteral(". ") + verdict_);
    update();
}

double SupplyStrip::widthBeside() const {
    const QFontMetricsF metrics(font());
    const auto widest = [&](const QStringList& texts) {
        double width = 0.0;
        for (const QString& text : texts) {
            for (const QString& line : text.split(QLatin1Char('\n')))
                width = std::max(width, metrics.horizontalAdvance(line));
        }
        return width;
    };
    double box = 0.0, gap = 0.0;
    for (const Station& station : stations_) {
        // Titles may wrap between words, values may not.
        QStringList parts = station.title.split(QLatin1Char(' '));
        parts << station.pressure << station.temperature << station.before;
        box = std::max(box, widest(parts) + 8.0);
        gap = std::max(gap, widest({station.passage, station.passageValue,
                                    station.isUnpaid ? tr("not counted") : QString()}) +
                                4.0);
    }
    const auto count = static_cast<double>(stations_.size());
    const double unit = std::max(box, gap / gapShare);
    return 2.0 * margin + unit * (count + gapShare * std::max(0.0, count - 1.0));
}

void SupplyStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    painter.fillRect(rect(), tones.paper);
    const double bottom = isStacked() ? paintStacked(painter) : paintBeside(painter);
    const bool unpaid = std::ranges::any_of(stations_, &Station::isUnpaid);
    painter.setPen(unpaid ? tones.warning : tones.ink);
    painter.drawText(QRectF(margin, bottom, width() - 2 * margin, height() - bottom),
                     Qt::AlignHCenter | Qt::TextWordWrap, verdict_);
}

double SupplyStrip::paintBeside(QPainter& painter) const {
    const double line = fontMetrics().height();
    const auto count = static_cast<double>(stations_.size());
    // A gap before every station but the first.
    const double unit = (width() - 2 * margin) / std::max(1.0, count + gapShare * (count - 1.0));
    const double height = std::any_of(stations_.begin(), stations_.end(),
                                      [](const Station& station) {
                                          return station.passageValue.count(QLatin1Char('\n')) > 1;
                                      })
                              ? 7.0 * line
                              : 5.5 * line;
    const double top = std::max(margin, 0.5 * (this->height() - 3.5 * line - height));
    for (size_t i = 0; i < stations_.size(); ++i) {
        const double left = margin + (1.0 + gapShare) * unit * static_cast<double>(i);
        if (i > 0) {
            paintPassage(painter, stations_[i],
                         QRectF(left - gapShare * unit, top, gapShare * unit, height));
        }
        paintStation(painter, stations_[i], QRectF(left, top, unit, height));
    }
    return top + height + 0.6 * line;
}

/// Too narrow for boxes side by side: one line for each station, what lies between on lines of its
/// own, smaller where the pane is low as well.
double SupplyStrip::paintStacked(QPainter& painter) const {
    const Palette& tones = Palette::of(*this);
    const auto count = static_cast<double>(stations_.size());
    // below the stations what the verdict takes, a line more than its words would need unbroken
    const double verdict =
        2.0 + std::floor(fontMetrics().horizontalAdvance(verdict_) / (width() - 2 * margin));
    constexpr double padding = 6.0; // of a box [px]
    const double words = (2.0 * count - 1.0 + verdict) * fontMetrics().lineSpacing();
    const double scale = (height() - padding * (count + 1.0)) / std::max(words, 1.0);
    painter.setFont(fitted(font(), scale));
    const double line = painter.fontMetrics().lineSpacing();
    double y = 4.0;
    for (size_t i = 0; i < stations_.size(); ++i) {
        const Station& station = stations_[i];
        if (i > 0 && !station.passage.isEmpty()) {
            const QString value = QString(station.passageValue).replace('\n', QLatin1String(", "));
            QString text = QString(QChar(0x2193)) + QLatin1Char(' ') + station.passage;
            if (!value.isEmpty())
                text += QLatin1Char(' ') + value;
            if (station.isUnpaid)
                text += QStringLiteral(", ") + tr("not counted");
            painter.setPen(station.isUnpaid ? tones.warning : tones.ink);
            painter.drawText(QRectF(margin + 12.0, y, width() - 2 * margin - 12.0, line),
                             Qt::AlignVCenter, text);
            y += line;
        }
        const QRectF box(margin, y, width() - 2 * margin, line + 2.0);
        fillAndOutline(painter, tones.sideFill(station.end), QPen(tones.side(station.end), 1.2));
        painter.drawRoundedRect(box, 4, 4);
        painter.setPen(tones.ink);
        QString values = station.pressure + QStringLiteral(", ") + station.temperature;
        if (!station.before.isEmpty())
            values += QStringLiteral(" (") + station.before + QLatin1Char(')');
        const double room = box.width() - painter.fontMetrics().horizontalAdvance(values) - 18.0;
        painter.drawText(box.adjusted(6, 0, -6, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(station.title, Qt::ElideRight,
                                                          static_cast<int>(room)));
        painter.drawText(box.adjusted(6, 0, -6, 0), Qt::AlignVCenter | Qt::AlignRight, values);
        y += line + 4.0;
    }
    return y + 2.0;
}

void SupplyStrip::paintStation(QPainter& painter, const Station& station, const QRectF& box) const {
    const Palette& tones = Palette::of(*this);
    fillAndOutline(painter, tones.sideFill(station.end), QPen(tones.side(station.end), 1.2));
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(tones.ink);
    painter.drawText(box.adjusted(3, 2, -3, -2), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                     station.title);
    QString values = station.pressure + '\n' + station.temperature;
    if (!station.before.isEmpty())
        values += '\n' + station.before;
    painter.drawText(box.adjusted(3, 2, -3, -2), Qt::AlignHCenter | Qt::AlignBottom, values);
}

void SupplyStrip::paintPassage(QPainter& painter, const Station& station, const QRectF& gap) const {
    const Palette& tones = Palette::of(*this);
    const double y = gap.center().y();
    painter.setPen(QPen(tones.quiet, 1.4));
    painter.drawLine(QPointF(gap.left() + 3, y), QPointF(gap.right() - 3, y));
    painter.drawLine(QPointF(gap.right() - 8, y - 4), QPointF(gap.right() - 3, y));
    painter.drawLine(QPointF(gap.right() - 8, y + 4), QPointF(gap.right() - 3, y));
    painter.setPen(tones.ink);
    QRectF above = gap;
    above.setBottom(y - 3);
    painter.drawText(above, Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap, station.passage);
    QRectF below = gap;
    below.setTop(y + 3);
    painter.setPen(station.isUnpaid ? tones.warning : tones.ink);
    painter.drawText(below, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                     station.isUnpaid ? station.passageValue + '\n' + tr("not counted")
                                      : station.passageValue);
}

void SupplyStrip::addOptions(QMenu& menu) {
    menu.addAction(tr("Import measured &compressor points…"), this,
                   [this] { Q_EMIT wheelWanted(); });
    menu.addSeparator();
    addPictureActions(menu, *this, accessibleName());
}

} // namespace lobewright::ui
