#pragma once

#include "ui/plots/turn/turn_plot.h"

#include <QStringList>

namespace lobewright::ui {

/// Any channels of the solution that the person picks. Channels of two units can stand together,
/// the second on the right axis.
class ChannelPlot : public TurnPlot {
    Q_OBJECT

  public:
    ChannelPlot(TurnCursor& cursor, const QString& title, const QStringList& channels,
                QWidget* parent = nullptr);

    const QStringList& channels() const { return channels_; }
    void setChannels(const QStringList& channels);
    void addOptions(QMenu& menu) override;
    QString state() const override { return channels_.join(QLatin1Char('+')); }
    void restoreState(const QString& state) override;

  protected:
    void refill() override;

  private:
    void toggle(const QString& channel, bool shown);
    void rebuildCurves();

    QStringList channels_;
    QStringList built_; ///< channels that the curves stand for
};

} // namespace lobewright::ui
