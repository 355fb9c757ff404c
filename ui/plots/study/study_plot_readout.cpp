// What StudyPlot says in words and where its curves leave what can be run.
#include "core/study/beyond_limits.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/plots/base/bands_behind.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/figure_help.h"
#include "ui/plots/base/hatching.h"
#include "ui/plots/study/study_plot.h"

#include <algorithm>
#include <utility>

namespace lobewright::ui {

namespace {

/// In the colour of its brush.
class HatchedRect final : public QCPItemRect {
  public:
    using QCPItemRect::QCPItemRect;

  protected:
    void draw(QCPPainter* painter) override {
        const QRectF area(topLeft->pixelPosition(), bottomRight->pixelPosition());
        hatch(*painter, area.normalized() & QRectF(clipRect()), brush().color());
    }
};

/// Parameter and value of the point with the least or the largest one.
std::optional<std::pair<double, double>> extreme(const std::map<double, study::Point>& points,
                                                 std::size_t place, bool isLeast) {
    std::optional<std::pair<double, double>> found;
    for (const auto& [parameter, point] : points) {
        const std::optional<double>& value = point.values[place];
        if (value && (!found || (isLeast ? *value < found->second : *value > found->second)))
            found = {parameter, *value};
    }
    return found;
}

} // namespace

void StudyPlot::findBeyond() {
    beyond_.clear();
    if (!now_.solution)
        return;
    for (const auto& [parameter, point] : now_.points) {
        const QString why = coreText(study::speaksAgainst(point));
        if (!why.isEmpty())
            beyond_.emplace(parameter, why);
    }
}

/// From half way to the last point that can be run to half way to the next one.
void StudyPlot::hatchBeyond() {
    for (QCPItemRect* hatch : std::exchange(hatches_, {}))
        plot_->removeItem(hatch);
    const auto& points = now_.points;
    for (auto from = points.begin(); from != points.end();) {
        if (!beyond_.contains(from->first)) {
            ++from;
            continue;
        }
        auto to = from; // behind the last one
        while (to != points.end() && beyond_.contains(to->first))
            ++to;
        const double left =
            from == points.begin() ? from->first : 0.5 * (std::prev(from)->first + from->first);
        const double right =
            to == points.end() ? std::prev(to)->first : 0.5 * (std::prev(to)->first + to->first);
        auto* hatch = new HatchedRect(plot_); // owned by the plot
        hatch->setLayer(QStringLiteral("background"));
        hatch->setPen(Qt::NoPen);
        for (QCPItemPosition* corner : {hatch->topLeft, hatch->bottomRight})
            corner->setTypeY(QCPItemPosition::ptAxisRectRatio);
        hatch->topLeft->setCoords(left, 0.0);
        hatch->bottomRight->setCoords(right, 1.0);
        hatches_.push_back(hatch);
        from = to;
    }
}

/// Baselines that leave the range: how far they go.
void StudyPlot::listClipped(std::vector<ReadoutStrip::Item>& items) const {
    for (size_t i = 0; i < graphs_.size(); ++i) {
        bool isFound = false;
        const QCPRange all = graphs_[i].before->getValueRange(isFound);
        const QCPRange range = graphs_[i].before->valueAxis()->range();
        QStringList values;
        if (isFound && all.upper > range.upper)
            values << QStringLiteral("▲ ") + valueText(all.upper, all.upper);
        if (isFound && all.lower < range.lower)
            values << QStringLiteral("▼ ") + valueText(all.lower, all.lower);
        if (!values.isEmpty()) {
            items.push_back({graphs_[i].before->pen(), tr("baseline beyond the range"),
                             values.join(QStringLiteral(", ")),
                             unitFor(unitOf(figures_[static_cast<qsizetype>(i)])).text, QString(),
                             true});
        }
    }
}

QString StudyPlot::valueWords(const QString& figure, const study::Point* nearest) const {
    const Unit unit = unitFor(unitOf(figure));
    std::optional<double> value;
    if (!pointing_ && now_.solution) {
        // The design itself has been solved at its own place: no point of the study is nearer.
        value = figureValue(now_.solution, figure.toStdString());
    } else if (const auto place = nearest ? now_.placeOf(figure) : std::nullopt) {
        value = nearest->values[*place];
    }
    return value ? valueText(unit.shown(*value), unit.shown(*value)) : QString();
}

/// Kept until another solution comes: points of a study arrive many times a second.
QString StudyPlot::helpOn(const QString& figure) {
    if (helpsOf_ != now_.solution) {
        helps_.clear();
        helpsOf_ = now_.solution;
    }
    const auto kept = helps_.constFind(figure);
    if (kept != helps_.constEnd() || !now_.solution)
        return helps_.value(figure);
    return *helps_.insert(figure, figureHelp(*now_.solution, figure.toStdString()));
}

const study::Point* StudyPlot::nearestTo(double parameter) const {
    const auto& points = now_.points;
    auto found = points.lower_bound(parameter);
    if (found == points.end() ||
        (found != points.begin() && parameter - std::prev(found)->first < found->first - parameter))
        found = points.empty() ? points.end() : std::prev(found);
    return found == points.end() ? nullptr : &found->second;
}

QString StudyPlot::reasonAt(double parameter) const {
    const study::Point* nearest = nearestTo(parameter);
    const auto why = nearest ? beyond_.find(nearest->parameter) : beyond_.end();
    return why == beyond_.end() ? QString()
                                : tr("%1: %2").arg(shortText(nearest->parameter), why->second);
}

void StudyPlot::readOut(double parameter) {
    readAt_ = parameter;
    std::vector<ReadoutStrip::Item> items;
    const study::Point* nearest = nearestTo(parameter);
    for (size_t i = 0; i < graphs_.size(); ++i) {
        const QString& figure = figures_[static_cast<qsizetype>(i)];
        ReadoutStrip::Item item;
        item.pen = graphs_[i].now->pen();
        item.shape = graphs_[i].now->scatterStyle().shape();
        item.label = labelOf(figure);
        const Unit unit = unitFor(unitOf(figure));
        item.unit = unit.text;
        if (const auto place = nearest ? now_.placeOf(figure) : std::nullopt) {
            item.value = valueWords(figure, nearest);
            const bool isLeast = figure.startsWith(QLatin1String("lowest_")); // less is worse
            if (const auto worst = extreme(now_.points, *place, isLeast)) {
                const double most = unit.shown(worst->second);
                // The unit stands behind every value: the strip's own would follow the place.
                const QString behind = unit.text.isEmpty() ? QString() : ' ' + unit.text;
                item.unit.clear();
                item.value += behind;
                item.value += (isLeast ? tr(", minimum %1 at %2") : tr(", maximum %1 at %2"))
                                  .arg(valueText(most, most) + behind, shortText(worst->first));
            }
            item.help = nearest->failure.empty() ? helpOn(figure) : coreText(nearest->failure);
        }
        items.push_back(std::move(item));
    }
    if (bands_ && bands_->isShown() && std::ranges::any_of(figures_, [](const QString& figure) {
            return curveQuantity(figure).has_value();
        })) {
        items.push_back({QPen(outerBand(Palette::of(*this).ink), 8.0), tr("bands"),
                         bands_->words(false), QString(), QString(), true});
    }
    listClipped(items);
    readOutPlace(items, nearest);
    shown_ = items;
    readout().setItems(std::move(items));
}

void StudyPlot::readOutPlace(std::vector<ReadoutStrip::Item>& items,
                             const study::Point* nearest) const {
    if (nearest && now_.solution) {
        ReadoutStrip::Item at;
        at.pen = QPen(Palette::of(*this).cursor, 1.2);
        at.label = pointing_ ? tr("at") : tr("now at");
        at.value = shortText(pointing_ ? nearest->parameter : parameterOf(now_.solution->design));
        items.push_back(std::move(at));
    }
    if (!beyond_.empty() && !graphs_.empty()) {
        ReadoutStrip::Item legend;
        legend.pen = QPen(QBrush(beyondHatch(Palette::of(*this)), Qt::BDiagPattern), 10.0);
        legend.label = tr("hatched:");
        QStringList reasons;
        for (const auto& [parameter, why] : beyond_)
            reasons << why;
        reasons.removeDuplicates();
        const auto here = nearest ? beyond_.find(nearest->parameter) : beyond_.end();
        legend.value =
            pointing_ && here != beyond_.end() ? here->second : reasons.join(QStringLiteral(", "));
        legend.isFixed = true;
        items.push_back(std::move(legend));
    }
}

QString StudyPlot::readoutText() const {
    QStringList parts;
    for (const auto& item : shown_)
        parts << item.label + QLatin1Char(' ') + item.value + QLatin1Char(' ') + item.unit;
    return parts.join(QStringLiteral("; "));
}

} // namespace lobewright::ui
