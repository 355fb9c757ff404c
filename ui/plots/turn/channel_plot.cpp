#include "ui/plots/turn/channel_plot.h"

#include "ui/base/core_text.h"
#include "ui/base/menus.h"
#include "ui/base/units.h"

namespace lobewright::ui {

namespace {

Tone toneOf(std::optional<End> end) {
    return end ? ui::toneOf(*end) : Tone::ink;
}

} // namespace

ChannelPlot::ChannelPlot(TurnCursor& cursor, const QString& title, const QStringList& channels,
                         QWidget* parent)
    : TurnPlot(cursor, title, parent), channels_(channels) {}

void ChannelPlot::setChannels(const QStringList& channels) {
    channels_ = channels;
    if (geometry())
        refill();
    Q_EMIT stateChanged();
}

void ChannelPlot::toggle(const QString& channel, bool shown) {
    QStringList next = channels_;
    next.removeAll(channel);
    if (!shown) {
        setChannels(next);
        return;
    }
    // At most two units share the plot: a third one replaces the first.
    const auto unitOf = [this](const QString& name) {
        const auto* found = solution() ? solution()->channel(name.toStdString()) : nullptr;
        return found ? QString::fromStdString(found->symbolOfUnit()) : QString();
    };
    next.append(channel);
    QStringList unitsShown;
    for (auto i = next.size() - 1; i >= 0; --i) {
        const QString unit = unitOf(next[i]);
        if (!unitsShown.contains(unit) && unitsShown.size() == 2)
            next.removeAt(i);
        else if (!unitsShown.contains(unit))
            unitsShown.append(unit);
    }
    setChannels(next);
}

void ChannelPlot::rebuildCurves() {
    if (built_ == channels_ && curves().size() == static_cast<size_t>(channels_.size()))
        return;
    clearCurves();
    built_.clear();
    QStringList unitsShown;
    int plain = 0;
    for (const QString& name : channels_) {
        const auto* channel = solution()->channel(name.toStdString());
        if (!channel)
            continue;
        const QString unit = QString::fromStdString(channel->symbolOfUnit());
        if (!unitsShown.contains(unit))
            unitsShown.append(unit);
        CurveLook look;
        look.label = coreText(channel->label);
        look.unit = unit;
        look.help = tr("%1, symbol %2").arg(look.label, QString::fromStdString(channel->symbol));
        look.tone = toneOf(channel->end);
        look.onRight = unitsShown.indexOf(unit) == 1;
        look.style = look.onRight ? Qt::DotLine : Qt::SolidLine;
        if (look.tone == Tone::ink && plain++ % 2 == 1)
            look.tone = Tone::quiet;
        addCurve(look);
        built_.append(name);
    }
    canvas().setLeftLabel({}, unitsShown.value(0));
    canvas().setRightLabel({}, unitsShown.value(1));
}

void ChannelPlot::refill() {
    if (!solution())
        return;
    rebuildCurves();
    for (size_t i = 0; i < curves().size(); ++i)
        setFromChannel(i, built_[static_cast<qsizetype>(i)].toStdString());
    finishRefill();
}

void ChannelPlot::addOptions(QMenu& menu) {
    QMenu* choice = menu.addMenu(tr("&Quantities"));
    if (solution()) {
        for (const solution::Channel& channel : solution()->channels) {
            const QString name = QString::fromStdString(channel.name);
            if (channel.id == "shaft_angle" || channel.id == "cycle_angle")
                continue; // what the plot stands over
            addCheck(
                *choice,
                coreText(channel.label) + QStringLiteral(" (") + unitFor(*channel.unit).text + ')',
                channels_.contains(name), this, [this, name](bool shown) { toggle(name, shown); });
        }
    }
    menu.addSeparator();
    TurnPlot::addOptions(menu);
}

void ChannelPlot::restoreState(const QString& state) {
    setChannels(state.split(QLatin1Char('+'), Qt::SkipEmptyParts));
}

} // namespace lobewright::ui
