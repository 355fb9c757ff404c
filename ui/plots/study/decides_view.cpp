#include "ui/plots/study/decides_view.h"

#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/layouts.h"
#include "ui/base/palette.h"
#include "ui/base/type_scale.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/bar_table.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/kept_view.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/base/plot_tones.h"

#include <QComboBox>
#include <QLabel>

#include <algorithm>
#include <cmath>
#include <set>

namespace lobewright::ui {

namespace {

constexpr int binCount = 24;
constexpr double negligible = 0.005; ///< of the variance
constexpr std::size_t mostBars = 12;

/// What the unknown does to the result.
QString arrow(unknowns::Direction direction) {
    switch (direction) {
    case unknowns::Direction::rises:
        return QStringLiteral("↗ ");
    case unknowns::Direction::falls:
        return QStringLiteral("↘ ");
    case unknowns::Direction::mixed:
        break;
    }
    return QStringLiteral("↝ ");
}

} // namespace

DecidesView::DecidesView(BandsModel& model, QWidget* parent)
    : QWidget(parent), model_(model), results_(new QComboBox(this)), band_(new QLabel(this)),
      advice_(new QLabel(this)), plot_(new QCustomPlot(this)),
      columns_(new QCPBars(plot_->xAxis, plot_->yAxis)), inner_(new QCPItemRect(plot_)),
      nominal_(new QCPItemStraightLine(plot_)), published_(plot_->addGraph()),
      bars_(new BarTable(this)) {
    setAccessibleName(tr("What decides this"));
    results_->setAccessibleName(tr("Result"));
    bars_->setAccessibleName(tr("Shares of the inputs"));
    advice_->setAccessibleName(tr("What to measure first"));
    band_->setAccessibleName(tr("Band of the result"));
    results_->setToolTip(tr("The result whose values are shown below"));
    band_->setWordWrap(true);
    advice_->setWordWrap(true);
    advice_->setFont(inBold(advice_->font()));
    advice_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    columnOf(this, {8, 4, 8, 4}, 4, {results_, band_, {plot_, 1}, advice_, {bars_, 3}});
    plot_->setMinimumSize(160, 70);
    plot_->axisRect()->setMinimumMargins(QMargins(14, 6, 14, 4));
    plot_->yAxis->setVisible(false);
    plot_->xAxis->grid()->setVisible(false);
    plot_->setAccessibleName(tr("Spread of the result"));
    columns_->setWidthType(QCPBars::wtPlotCoords);
    published_->setLineStyle(QCPGraph::lsNone);
    inner_->setLayer(QStringLiteral("background"));
    inner_->setPen(Qt::NoPen);
    connect(results_, &QComboBox::activated, this, [this] {
        model_.setResult(results_->currentData().toString().toStdString());
        Q_EMIT stateChanged();
    });
    connect(&model_, &BandsModel::changed, this, &DecidesView::refill);
    connect(&Units::instance(), &Units::changed, this, &DecidesView::refill);
    whenLookChanges(*this, [this] { applyTones(); });
    applyTones();
    refill();
}

void DecidesView::restoreState(const QString& state) {
    if (!state.isEmpty())
        model_.setResult(state.toStdString());
}

QString DecidesView::advice() const {
    return advice_->text();
}

/// Those of published figures, then the results that people ask about first, then all others.
void DecidesView::fillChoices() {
    const auto& ensemble = model_.ensemble();
    std::vector<std::string> published;
    for (const unknowns::Condition& condition : model_.conditions())
        published.push_back(condition.result);
    if (!ensemble || (results_->count() > 0 && published == listedFirst_))
        return;
    listedFirst_ = published;
    results_->clear();
    std::set<std::string, std::less<>> listed;
    const auto add = [&](const std::string& name) {
        const auto column = ensemble->result(name);
        if (!column || !listed.insert(name).second)
            return;
        results_->addItem(coreText(ensemble->results[*column].label), QString::fromStdString(name));
    };
    const auto separate = [this] {
        if (results_->count() > 0)
            results_->insertSeparator(results_->count());
    };
    for (const std::string& name : published)
        add(name);
    separate();
    for (const std::string& name : unknowns::principalResults())
        add(name);
    separate();
    for (const study::Column& column : ensemble->results)
        add(column.name);
}

void DecidesView::fillHistogram(const unknowns::Ensemble& ensemble, std::size_t result) {
    const Unit unit = unitFor(ensemble.results[result].unit);
    std::vector<double> values = unknowns::valuesOf(ensemble, result);
    std::erase_if(values, [](double value) { return !std::isfinite(value); });
    const auto band = unknowns::quantiles(values);
    QVector<double> places, counts;
    inner_->setVisible(band.has_value());
    nominal_->setVisible(std::isfinite(ensemble.nominal.results[result]));
    if (band) {
        for (double& value : values)
            value = unit.shown(value);
        std::ranges::sort(values);
        // The outermost hundredth on either side does not set the scale.
        double low = unknowns::quantile(values, 0.01), high = unknowns::quantile(values, 0.99);
        const double room = high > low ? 0.05 * (high - low) : 0.05 * std::max(1.0, std::abs(low));
        low -= room;
        high += room;
        const double width = (high - low) / binCount;
        for (int i = 0; i < binCount; ++i) {
            const auto from = std::ranges::lower_bound(values, low + i * width);
            const auto to = std::ranges::lower_bound(values, low + (i + 1) * width);
            places << low + (i + 0.5) * width;
            counts << static_cast<double>(to - from);
        }
        columns_->setWidth(0.92 * width);
        plot_->xAxis->setRange(low, high);
        plot_->yAxis->setRange(0.0, 1.08 * *std::ranges::max_element(counts));
        inner_->topLeft->setTypeY(QCPItemPosition::ptAxisRectRatio);
        inner_->bottomRight->setTypeY(QCPItemPosition::ptAxisRectRatio);
        inner_->topLeft->setCoords(unit.shown(band->p05), 0.0);
        inner_->bottomRight->setCoords(unit.shown(band->p95), 1.0);
        standAt(*nominal_, unit.shown(ensemble.nominal.results[result]));
    }
    columns_->setData(places, counts);
    plot_->xAxis->setLabel(axisText(coreText(ensemble.results[result].label),
                                    QString::fromStdString(ensemble.results[result].unit)));
    const auto shown = [&](double value) { return shortText(unit.shown(value)); };
    QString text = band ? tr("90 % of the engines: %1 … %2 %3")
                              .arg(shown(band->p05), shown(band->p95), unit.text)
                        : tr("No engine has this result.");
    const std::string& name = ensemble.results[result].name;
    const bool isSpeedOfPeak = name == "peak_torque_speed_rpm" || name == "peak_power_speed_rpm";
    if (band && isSpeedOfPeak && band->p05 <= ensemble.plan.speeds.front()) {
        text += tr(" (%1 is the lowest speed computed: the peak lies there or below)")
                    .arg(shown(ensemble.plan.speeds.front()));
    }
    const double designed = ensemble.nominal.results[result];
    if (nominal_->visible())
        text += tr("; as designed (line): %1 %2").arg(shown(designed), unit.text);
    if (nominal_->visible() && band && (designed < band->p05 || designed > band->p95)) {
        text += tr(". The design lies outside the band: its inputs stand at the edge of what is "
                   "thought possible");
    }
    if (const QString published = publishedText(ensemble.results[result].name);
        !published.isEmpty())
        text += tr(". Published (diamond): %1").arg(published);
    band_->setText(text);
    showPublished(ensemble.results[result].name, unit);
}

/// As the claims say it; empty: nothing is published of this result.
QString DecidesView::publishedText(const std::string& result) const {
    QStringList said;
    for (const unknowns::Condition& condition : model_.conditions()) {
        if (condition.result == result)
            said << localNumbers(QString::fromStdString(condition.said));
    }
    return said.join(QStringLiteral(", "));
}

/// The first published value; where it lies outside the spread, an edge of the plot is not one.
void DecidesView::showPublished(const std::string& result, const Unit& unit) {
    const auto& all = model_.conditions();
    const auto found = std::ranges::find(all, result, &unknowns::Condition::result);
    published_->setVisible(found != all.end());
    if (found == all.end())
        return;
    const double at = unit.shown(found->target);
    published_->setData({at}, {0.5 * plot_->yAxis->range().upper});
    QCPRange range = plot_->xAxis->range();
    const double room = 0.02 * range.size();
    range.expand(QCPRange(at - room, at + room));
    plot_->xAxis->setRange(range);
}

void DecidesView::fillBars(const unknowns::Ensemble& ensemble) {
    const auto& decided = model_.decided();
    advice_->setVisible(decided.has_value());
    if (!decided) {
        bars_->setSections(
            {{tr("What decides this"),
              model_.isBusy() ? tr("is known when all engines have been computed") : QString(),
              {}}});
        return;
    }
    advice_->setText(coreText(unknowns::sentence(decided->advice, ensemble.unknowns)));
    BarTable::Section section;
    section.title = tr("What decides this");
    section.remark =
        decided->decision.isOfSurrogate
            ? tr("Share of the spread that this input causes, alone or together with others "
                 "(Sobol' "
                 "total index).")
            : tr("Share of the spread that this input causes alone, from the engines themselves: "
                 "no polynomial fits well enough.");
    section.remark += QLatin1Char(' ') + tr("↗ raises the result, ↘ lowers it, ↝ does both.");
    section.scale = 100.0;
    for (const auto& influence : decided->decision.influences) {
        const double share = influence.total.value_or(influence.first);
        if (share < negligible || section.rows.size() == mostBars)
            break;
        BarTable::Row row;
        row.label =
            arrow(influence.direction) + coreText(ensemble.unknowns[influence.unknown].label);
        row.unit = QStringLiteral("%");
        row.value = 100.0 * share;
        row.help = tr("Alone %1 %").arg(shortText(100.0 * influence.first));
        if (influence.error)
            row.help += tr(" (± %1 %)").arg(shortText(100.0 * *influence.error));
        section.rows.push_back(row);
    }
    bars_->setSections({section});
}

void DecidesView::refill() {
    fillChoices();
    const auto& ensemble = model_.ensemble();
    const auto result = ensemble ? ensemble->result(model_.result()) : std::nullopt;
    plot_->setVisible(result.has_value());
    bars_->setVisible(result.has_value());
    results_->setVisible(result.has_value());
    if (!result) {
        advice_->hide();
        band_->setText(model_.hasNothingToVary()
                           ? tr("Which inputs decide a result, and what to measure first, stands "
                                "here once inputs of the design have a range.")
                       : !model_.problems().empty() ? coreText(model_.problems().front().message)
                                                    : tr("Computing the first engines …"));
        return;
    }
    results_->setCurrentIndex(results_->findData(QString::fromStdString(model_.result())));
    fillHistogram(*ensemble, *result);
    fillBars(*ensemble);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void DecidesView::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*plot_, tones);
    columns_->setPen(Qt::NoPen);
    columns_->setBrush(tones.tint(tones.ink, 0.5));
    inner_->setBrush(tones.tint(tones.ink, 0.12));
    nominal_->setPen(QPen(tones.ink, 2.0));
    published_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssDiamond, tones.warning, tones.paper, 11));
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void DecidesView::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, accessibleName());
}

} // namespace lobewright::ui
