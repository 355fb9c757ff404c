#include "ui/plots/study/figure_bars.h"

#include "core/balance/remedy.h"
#include "ui/base/core_text.h"
#include "ui/base/menus.h"
#include "ui/base/units.h"
#include "ui/plots/base/options_menu.h"
#include "ui/plots/base/plot_export.h"

#include <QMenu>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <cstring>

LW_TEXTS_OF(Core)

namespace lobewright::ui {

namespace {

/// Losses as mean effective pressures, without the words that they have in common.
constexpr std::pair<std::string_view, TextId> losses[] = {
    {"fmep_ring", LW_TEXT("Piston rings")},
    {"fmep_guide", LW_TEXT("Guides")},
    {"fmep_roller", LW_TEXT("Rolling and roller bearings")},
    {"fmep_slip", LW_TEXT("Slip across the rollers")},
    {"fmep_shaft_bearing", LW_TEXT("Shaft bearings")},
    {"fmep_supply", LW_TEXT("Blower or compressor")},
    {"fmep_auxiliary", LW_TEXT("Auxiliaries")}};

/// Empty: the figure is called by its own label.
TextId lossLabel(const solution::Figure& figure) {
    for (const auto& [id, label] : losses) {
        if (figure.id == id)
            return label;
    }
    return {};
}

} // namespace

FigureBars::FigureBars(const QString& title, QWidget* parent) : BarTable(parent) {
    setAccessibleName(title);
    connect(&Units::instance(), &Units::changed, this, &FigureBars::refill);
    offerOptions(*this);
}

void FigureBars::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    refill();
}

void FigureBars::showBaseline(const SolutionPointer& baseline) {
    baseline_ = baseline;
    refill();
}

void FigureBars::refill() {
    if (solution_)
        setSections(sectionsOf(*solution_));
}

BarTable::Row FigureBars::row(const solution::Figure& figure, Tone tone) const {
    return {coreText(figure.label),
            QString::fromStdString(figure.symbolOfUnit()),
            coreText(figure.note),
            figure.value,
            figureValue(baseline_, figure.name),
            tone};
}

void FigureBars::addOptions(QMenu& menu) {
    addPictureActions(menu, *this, accessibleName());
}

EnergyAudit::EnergyAudit(QWidget* parent) : FigureBars(tr("Energy and friction"), parent) {}

std::vector<BarTable::Section> EnergyAudit::sectionsOf(const solution::Solution& solution) const {
    Section in{tr("Heat in, per cycle"), {}, {}};
    Section out{tr("Where it goes"), {}, {}, true};
    Section friction{tr("What becomes of the work, as mean effective pressure"), {}, {}};
    if (const auto* brake = solution.figure("bmep_bar"); brake && brake->value)
        friction.rows.push_back(row(*brake, Tone::ink));
    for (const solution::Figure& figure : solution.figures) {
        if (figure.name == "fuel_heat_J" || figure.name == "supply_enthalpy_J")
            in.rows.push_back(row(figure, Tone::ink));
        else if (figure.name == "audit_residual" && figure.value) {
            out.remark = tr("Energy-balance residual: %1 of the fuel heat.")
                             .arg(localNumbers(QString::number(std::abs(*figure.value), 'e', 1)));
        } else if (figure.group == "energy") {
            out.rows.push_back(
                row(figure, figure.name == "indicated_work_J" ? Tone::ink : Tone::quiet));
        } else if (figure.id.starts_with("fmep_")) {
            friction.rows.push_back(row(figure, Tone::quiet));
            if (const TextId loss = lossLabel(figure); !loss.empty())
                friction.rows.back().label = coreText(loss);
        } else if (figure.id == "fmep" && figure.value) {
            friction.remark =
                tr("Losses together: %1.").arg(quantityText(*figure.value, QStringLiteral("bar")));
        }
    }
    for (const Section* section : {&in, &out}) {
        for (const Row& each : section->rows)
            in.scale = std::max(in.scale, std::abs(each.value.value_or(0.0)));
    }
    out.scale = in.scale; // a joule is as long on either side
    const auto counted = solution.figure("supply_power_counted");
    if (counted && counted->value && *counted->value == 0.0)
        friction.remark += ' ' + tr("Supply power is not counted.");
    return {std::move(in), std::move(out), std::move(friction)};
}

void EnergyAudit::setAsBars(bool asBars) {
    asBars_ = asBars;
    update();
}

void EnergyAudit::addOptions(QMenu& menu) {
    addCheck(menu, tr("As &bars, with the baseline"), asBars_, this, &EnergyAudit::setAsBars);
    menu.addSeparator();
    FigureBars::addOptions(menu);
}

/// None where a part runs the other way: a stream has no negative height.
std::optional<EnergyFlow> EnergyAudit::streams() const {
    const auto& all = sections();
    const std::optional<double> indicated = figureValue(solution(), "imep_bar");
    if (all.size() != 3 || all[0].rows.empty() || all[1].rows.empty() || !indicated ||
        *indicated <= 0.0)
        return std::nullopt;
    const Palette& tones = Palette::of(*this);
    // Walls take heat of the burnt gas; what leaves by the exhaust has the colour of its side.
    const QColor outgoing[] = {tones.ink, tones.burnt, tones.exhaust, tones.metal};
    EnergyFlow flow{all[0].title, all[1].title, all[2].title, {}, {}, {}};
    for (const Row& row : all[0].rows) {
        flow.in.push_back(
            {&row, row.value.value_or(0.0), flow.in.empty() ? tones.burning : tones.fresh});
    }
    for (const Row& row : all[1].rows) {
        flow.out.push_back({&row, row.value.value_or(0.0),
                            outgoing[std::min(flow.out.size(), std::size(outgoing) - 1)]});
    }
    // Mean effective pressures are work for the swept volume: the indicated one is all the work.
    const double perBar = flow.out.front().size / *indicated;
    for (const Row& row : all[2].rows) {
        if (row.value.value_or(0.0) == 0.0) // of what the engine does not have
            continue;
        flow.work.push_back({&row, row.value.value_or(0.0) * perBar,
                             colourOf(tones, flow.work.empty() ? Tone::ink : Tone::quiet)});
    }
    for (const auto* parts : {&flow.in, &flow.out, &flow.work}) {
        if (std::ranges::any_of(*parts, [](const FlowPart& part) { return part.size < 0.0; }))
            return std::nullopt;
    }
    return flow;
}

std::optional<FlowLayout> EnergyAudit::flow() const {
    const auto all = asBars_ ? std::nullopt : streams();
    constexpr double edge = 8.0; // [px]
    const double line = fontMetrics().height() + 2.0;
    const QRectF place = QRectF(rect()).adjusted(edge, edge, -edge, -edge - 2.0 * line);
    return all ? FlowLayout::make(*all, place, fontMetrics()) : std::nullopt;
}

void EnergyAudit::paintEvent(QPaintEvent* event) {
    const auto layout = flow();
    if (!layout) {
        FigureBars::paintEvent(event);
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& tones = Palette::of(*this);
    painter.fillRect(rect(), tones.paper);
    layout->paint(painter, tones);
    painter.setPen(tones.quiet);
    constexpr double edge = 8.0; // [px]
    const double line = fontMetrics().height() + 2.0;
    const QRectF foot(edge, height() - edge - 2.0 * line, width() - 2.0 * edge, 2.0 * line);
    painter.drawText(foot, Qt::TextWordWrap | Qt::AlignBottom,
                     sections()[1].remark + QLatin1Char(' ') + sections()[2].remark);
}

QString EnergyAudit::helpAt(const QPoint& at) const {
    const auto layout = flow();
    if (!layout)
        return FigureBars::helpAt(at);
    for (const auto* nodes : {&layout->in(), &layout->out(), &layout->work()}) {
        for (const FlowLayout::Node& node : *nodes) {
            if (!node.bar.contains(at) && !node.words.contains(at))
                continue;
            const Row& row = *node.part.row;
            QString text = row.label + QLatin1String(": ") + flowValue(row);
            if (row.before) {
                text +=
                    QLatin1Char('\n') + tr("Baseline: %1").arg(quantityText(*row.before, row.unit));
            }
            return row.help.isEmpty() ? text : text + QLatin1Char('\n') + row.help;
        }
    }
    return {};
}

OrderBars::OrderBars(QWidget* parent) : FigureBars(tr("Force and torque orders"), parent) {}

BarTable::Section OrderBars::remedySection(const solution::Solution& solution) const {
    Section section{tr("What would cancel the axial force of a cylinder"), {}, {}};
    for (const char* name :
         {"shaking_residual", "best_exhaust_mass_kg", "best_exhaust_mass_residual",
          "best_exhaust_lead_deg", "best_exhaust_lead_residual", "both_residual"}) {
        if (const auto* figure = solution.figure(name))
            section.rows.push_back(row(*figure, Tone::quiet));
    }
    const auto cancels = [&](const char* name) {
        const auto* figure = solution.figure(name);
        return figure && figure->value && *figure->value < balance::cancelled;
    };
    section.remark = cancels("shaking_residual") ? tr("Nothing is left to cancel.")
                     : cancels("best_exhaust_mass_residual")
                         ? tr("Another mass of the exhaust piston cancels it.")
                     : cancels("best_exhaust_lead_residual")
                         ? tr("Another exhaust lead cancels it, at the cost of the port timing.")
                     : cancels("both_residual")
                         ? tr("Only mass and exhaust lead together cancel it.")
                         : tr("Neither mass nor exhaust lead cancels it; these leave the least.");
    return section;
}

BarTable::Section OrderBars::fluctuationSection(const solution::Solution& solution) const {
    Section section{tr("Speed fluctuation within a revolution"), {}, {}};
    for (const solution::Figure& figure : solution.figures) {
        if (figure.name == "energy_fluctuation_J" || figure.name == "coefficient_of_fluctuation" ||
            figure.name.starts_with("inertia_for_"))
            section.rows.push_back(row(figure, Tone::quiet));
    }
    return section;
}

std::vector<BarTable::Section> OrderBars::sectionsOf(const solution::Solution& solution) const {
    const std::tuple<const char*, QString> kinds[] = {
        {"shaking_force_order_", tr("Axial shaking force")},
        {"rocking_moment_x_order_", tr("Rocking moment about x")},
        {"rocking_moment_y_order_", tr("Rocking moment about y")},
        {"torque_order_", tr("Total torque (order 0 is the mean)")}};
    std::vector<Section> sections;
    for (const auto& [prefix, title] : kinds) {
        Section section{title, {}, {}};
        for (const solution::Figure& figure : solution.figures) {
            if (figure.group != "balance" || !figure.name.starts_with(prefix))
                continue;
            Row line = row(figure, Tone::ink);
            const auto order = figure.name.substr(std::string_view(prefix).size());
            line.label =
                tr("shaft order %1").arg(QString::fromStdString(order.substr(0, order.find('_'))));
            section.rows.push_back(std::move(line));
        }
        if (section.rows.empty())
            section.remark = tr("Balanced: no order above rounding error.");
        sections.push_back(std::move(section));
    }
    sections.push_back(remedySection(solution));
    sections.push_back(fluctuationSection(solution));
    return sections;
}

} // namespace lobewright::ui
