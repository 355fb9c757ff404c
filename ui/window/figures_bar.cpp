#include "ui/window/figures_bar.h"

#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/base/figure_text.h"
#include "ui/base/unit_words.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"
#include "ui/window/result_card.h"
#include "ui/window/small_screen.h"

#include <QContextMenuEvent>
#include <QHBoxLayout>
#include <QMenu>
#include <QSettings>

#include <algorithm>

namespace lobewright::ui {

namespace {

const QString& setting() {
    static const QString name = QStringLiteral("window/cards");
    return name;
}

/// Short words and usual units for what stands there at first.
struct Usual {
    const char* figure;
    QString label;
    double factor = 1.0; ///< to the metric unit shown here
    QString unit{};
};

const std::vector<Usual>& usual() {
    static const std::vector<Usual> all = {
        {"brake_power_kW", FiguresBar::tr("Power"), 1.0, QStringLiteral("kW")},
        {"brake_torque_Nm", FiguresBar::tr("Torque"), 1.0, QStringLiteral("N·m")},
        {"brake_efficiency", FiguresBar::tr("Brake efficiency"), 100.0, QStringLiteral("%")},
        {"peak_pressure_bar", FiguresBar::tr("Peak"), 1.0, QStringLiteral("bar")},
        {"compression_ratio", FiguresBar::tr("Compression"), 1.0, QString()}};
    return all;
}

const Usual* usualOf(const std::string& name) {
    const auto found =
        std::ranges::find_if(usual(), [&](const Usual& one) { return name == one.figure; });
    return found == usual().end() ? nullptr : &*found;
}

QString valueOf(const solution::Figure& figure) {
    const Usual* one = usualOf(figure.name);
    if (!one || !figure.value)
        return figureText(figure);
    const Unit unit = unitFor(one->unit);
    return withUnit(figureText(withoutNoise(unit.shown(*figure.value * one->factor))), unit.text);
}

QString labelOf(const solution::Figure& figure) {
    const Usual* one = usualOf(figure.name);
    return one ? one->label : coreText(figure.label);
}

} // namespace

FiguresBar::FiguresBar(QWidget* parent) : QWidget(parent), layout_(new QHBoxLayout(this)) {
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setSpacing(0);
    chosen_ = QSettings().value(setting()).toStringList();
    if (chosen_.isEmpty()) {
        for (const Usual& one : usual())
            chosen_ << QString::fromLatin1(one.figure);
    }
    connect(&Units::instance(), &Units::changed, this, &FiguresBar::refill);
    rebuild();
}

void FiguresBar::choose(const QStringList& names) {
    chosen_ = names.mid(0, most);
    QSettings().setValue(setting(), chosen_);
    rebuild();
    refill();
}

void FiguresBar::rebuild() {
    for (ResultCard* card : cards_)
        card->deleteLater();
    cards_.clear();
    for (const QString& name : chosen_) {
        auto* card = new ResultCard(this);
        connect(card, &ResultCard::clicked, this, [this, name] { Q_EMIT workingWanted(name); });
        layout_->addWidget(card);
        cards_.push_back(card);
    }
}

QSize FiguresBar::sizeHint() const {
    QSize all;
    for (const ResultCard* card : cards_) {
        const QSize one = card->sizeHint();
        all = {all.width() + one.width(), std::max(all.height(), one.height())};
    }
    return all;
}

QSize FiguresBar::minimumSizeHint() const {
    return {0, sizeHint().height()};
}

void FiguresBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fold();
}

void FiguresBar::fold() {
    showWhatFits({cards_.begin(), cards_.end()}, 0, width(), 0);
}

void FiguresBar::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void FiguresBar::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refill();
}

QString FiguresBar::neededText(const solution::Figure& figure) const {
    if (!solution_->design.running.motored || !figure.value || *figure.value >= 0.0)
        return {};
    if (figure.name == "brake_torque_Nm")
        return tr("Needs %1 to turn").arg(quantityText(-*figure.value, QStringLiteral("N·m")));
    if (figure.name != "brake_power_kW")
        return {};
    const double power = -*figure.value;
    return tr("Driven by %1")
        .arg(power < 0.1 ? quantityText(1e3 * power, QStringLiteral("W"))
                         : quantityText(power, QStringLiteral("kW")));
}

void FiguresBar::fill(ResultCard& card, const QString& name) const {
    const auto* figure = solution_->figure(name.toStdString());
    if (!figure) {
        card.setResult(name, tr("none"), {});
        return;
    }
    QString value = figure->value ? valueOf(*figure) : tr("none");
    if (const QString needed = neededText(*figure); !needed.isEmpty())
        value = needed;
    QString help = coreText(figure->label);
    if (!figure->note.empty())
        help += QLatin1Char('\n') + coreText(figure->note);
    QString change;
    const auto* before = baseline_ ? baseline_->figure(figure->name) : nullptr;
    if (before && before->value) {
        const double period = baseline_->pair.period() * 180.0 / units::pi;
        change = figureChange(*figure, *before, period).text;
        help += QLatin1Char('\n') + tr("Baseline: %1").arg(valueOf(*before));
    }
    const auto* paid = solution_->figure("supply_power_counted");
    QString label = labelOf(*figure);
    if (figure->name == "brake_power_kW" && paid && paid->value && *paid->value == 0.0)
        label += tr(" (supply power not counted)");
    card.setResult(label, value, change);
    card.setToolTip(help + QLatin1Char('\n') +
                    tr("Click to see the working, right-click to choose other results"));
}

void FiguresBar::refill() {
    if (!solution_)
        return;
    for (std::size_t i = 0; i < cards_.size(); ++i)
        fill(*cards_[i], chosen_[static_cast<qsizetype>(i)]);
    if (const int wide = sizeHint().width(); wide != hinted_) {
        hinted_ = wide;
        updateGeometry();
    }
    fold();
}

void FiguresBar::contextMenuEvent(QContextMenuEvent* event) {
    openChoice(event->globalPos());
}

/// Every result that has a value, by its group; a tick for those that stand here.
void FiguresBar::openChoice(const QPoint& place) {
    if (!solution_)
        return;
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("cardChoice"));
    std::string group;
    QMenu* part = nullptr;
    for (const auto& figure : solution_->figures) {
        if (!figure.value)
            continue;
        if (figure.group != group || !part) {
            group = figure.group;
            part = menu.addMenu(FiguresPanel::groupTitle(QString::fromStdString(group)));
        }
        const QString name = QString::fromStdString(figure.name);
        QAction* action = part->addAction(coreText(figure.label));
        action->setCheckable(true);
        action->setChecked(chosen_.contains(name));
        action->setEnabled(chosen_.contains(name) ? chosen_.size() > 1 : chosen_.size() < most);
        connect(action, &QAction::triggered, this, [this, name](bool shown) {
            QStringList next = chosen_;
            if (shown)
                next << name;
            else
                next.removeAll(name);
            choose(next);
        });
    }
    menu.exec(place);
}

} // namespace lobewright::ui
