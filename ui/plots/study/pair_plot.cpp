#include "ui/plots/study/pair_plot.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/palette.h"
#include "ui/base/units.h"
#include "ui/base/watching.h"
#include "ui/plots/base/plot_tones.h"

namespace lobewright::ui {

namespace {

void fill(QCPGraph& graph, const unknowns::Ensemble& ensemble,
          const std::vector<unknowns::Run>& runs, std::size_t across, std::size_t up) {
    const auto shown = [&](const std::vector<double>& inputs, std::size_t place) {
        const auto& unknown = ensemble.unknowns[place];
        return unknown.marginal().kind == unknowns::Marginal::Kind::choice
                   ? inputs[place]
                   : unitFor(unknown.unit).shown(inputs[place]);
    };
    QVector<double> x, y;
    for (const auto& run : runs) {
        const auto inputs = ensemble.inputsOf(run);
        x.append(shown(inputs, across));
        y.append(shown(inputs, up));
    }
    graph.setData(x, y);
}

} // namespace

PairPlot::PairPlot(QWidget* parent)
    : QCustomPlot(parent), possible_(addGraph()), keeps_(addGraph()) {
    describe(*this, tr("The two inputs that matter most"),
             tr("Small and faint: engines that were thought possible. Large and strong: engines "
                "that keep to the published figures."));
    setFixedHeight(190);
    axisRect()->setMinimumMargins(QMargins(44, 6, 10, 4));
    for (QCPGraph* graph : {possible_, keeps_})
        graph->setLineStyle(QCPGraph::lsNone);
    whenLookChanges(*this, [this] {
        applyTones();
        replot(rpQueuedReplot);
    });
    applyTones();
}

void PairPlot::show(const unknowns::Ensemble& ensemble, const unknowns::Requirement& requirement) {
    const auto pair = unknowns::narrowedMost(requirement);
    setVisible(pair.has_value());
    if (!pair)
        return;
    const auto& across = ensemble.unknowns[pair->first];
    const auto& up = ensemble.unknowns[pair->second];
    fill(*possible_, ensemble, ensemble.runs, pair->first, pair->second);
    fill(*keeps_, ensemble, requirement.runs, pair->first, pair->second);
    nameAxis(*xAxis, across, requirement.unknowns[0]);
    nameAxis(*yAxis, up, requirement.unknowns[1]);
    replot(rpQueuedReplot);
}

void PairPlot::nameAxis(QCPAxis& axis, const unknowns::Unknown& unknown,
                        const unknowns::Narrowed& narrowed) {
    const auto& marginal = unknown.marginal();
    if (marginal.kind == unknowns::Marginal::Kind::choice) {
        const QSharedPointer<QCPAxisTickerText> words(new QCPAxisTickerText);
        for (int i = 0; i < marginal.options; ++i)
            words->addTick(i, coreText(unknown.optionLabel(static_cast<std::size_t>(i))));
        axis.setTicker(words);
        axis.setLabel(coreText(unknown.label));
        axis.setRange(-0.5, marginal.options - 0.5);
        return;
    }
    axis.setTicker(QSharedPointer<QCPAxisTicker>(new QCPAxisTicker));
    axis.ticker()->setTickCount(4);
    axis.setLabel(axisText(coreText(unknown.label), QString::fromStdString(unknown.unit)));
    const Unit unit = unitFor(unknown.unit);
    axis.setRange(unit.shown(narrowed.least), unit.shown(narrowed.most));
    axis.scaleRange(1.06, axis.range().center());
}

void PairPlot::applyTones() {
    const Palette& tones = Palette::of(*this);
    applyPlotTones(*this, tones);
    possible_->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssDisc, tones.tint(tones.ink, 0.25), 3.0));
    keeps_->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, tones.ink, 4.0));
}

} // namespace lobewright::ui
