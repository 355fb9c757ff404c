#pragma once

#include "core/solution/pipeline/closer_look.h"
#include "ui/base/shown.h"
#include "ui/plots/base/plot_data.h"

#include <QWidget>

class QMenu;

namespace lobewright::ui {

/// Who brings the air from ambient to the chamber, by how much, and what it costs: one box for
/// each state of the air, with what happens between.
class SupplyStrip : public QWidget, public DataSource {
    Q_OBJECT

  public:
    struct Station {
        QString title;
        QString pressure, temperature;
        QString passage;      ///< what led here, "blower"; may be empty
        QString passageValue; ///< "1.32 times, 0.87 kW"
        bool isUnpaid = false;
        End end = End::inlet; ///< on which side of the engine
        QString before;       ///< the baseline's pressure, may be empty
    };

    explicit SupplyStrip(QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    /// Null: no baseline.
    void showBaseline(const SolutionPointer& baseline);
    const std::vector<Station>& stations() const { return stations_; }
    /// Who pays, as a sentence.
    const QString& verdict() const { return verdict_; }
    void addOptions(QMenu& menu);

    DataSheet dataSheet() const override;
    QSize minimumSizeHint() const override;

    /// Whether the stations stand below each other, because they find no room side by side.
    bool isStacked() const { return width() < widthBeside(); }

  Q_SIGNALS:
    /// The person wants to take a compressor wheel from a table.
    void wheelWanted();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void refill();
    double widthBeside() const;
    double paintBeside(QPainter& painter) const;
    double paintStacked(QPainter& painter) const;
    void paintStation(QPainter& painter, const Station& station, const QRectF& box) const;
    void paintPassage(QPainter& painter, const Station& station, const QRectF& gap) const;

    SolutionPointer solution_, baseline_;
    std::vector<Station> stations_;
    QString verdict_;
};

} // namespace lobewright::ui
