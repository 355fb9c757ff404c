#pragma once

#include "core/samples.h"
#include "core/units/unit.h"

#include <QObject>
#include <QString>

#include <string>

namespace lobewright::ui {

enum class UnitSystem { metric, inch };

/// How a quantity is shown whose values are held in a metric unit of files and tables.
struct Unit {
    QString text;        ///< "mm", "in"; empty for a pure number
    double factor = 1.0; ///< shown = metric · factor + offset
    double offset = 0.0; ///< of a temperature on another scale

    double shown(double metric) const { return metric * factor + offset; }
    Samples shown(const Samples& metric) const { return metric * factor + offset; }
    /// What was typed, in the metric unit, rounded to 15 digits: 1.5 in is 38.1 mm and no
    /// neighbour of it.
    double metric(double shown) const;
    /// A difference of two values: no offset.
    double difference(double metric) const { return metric * factor; }
    /// Decimals that tell as much as `metricDecimals` do in the metric unit.
    int decimals(int metricDecimals) const;
    /// The plain step, 1, 2 or 5 times a power of ten of the shown unit, nearest to a metric one;
    /// in the metric unit.
    double step(double metricStep) const;
    bool isMetric() const { return factor == 1.0 && offset == 0.0; }
};

/// The one switch between metric and inch display. Values of designs, files and solutions stay
/// metric; only what a person reads or types is converted.
class Units : public QObject {
    Q_OBJECT

  public:
    static Units& instance();

    UnitSystem system() const { return system_; }
    /// Remembered between runs.
    void setSystem(UnitSystem system);
    /// Takes up what was remembered.
    void restore();

  Q_SIGNALS:
    void changed();

  private:
    UnitSystem system_ = UnitSystem::metric;
};

/// How values of this metric unit are shown now. A unit that both systems share is returned as it
/// is.
Unit unitFor(const QString& metric);
Unit unitFor(const std::string& metric);
Unit unitFor(const lobewright::Unit& metric);
/// A metric unit in the language of the program, whatever is displayed.
QString metricWord(const QString& metric);
/// Whether the table of units knows it, as converted or as common to both systems.
bool isKnownUnit(const QString& metric);

/// "lift, mm", for an axis.
QString axisText(const QString& quantity, const QString& metric);
/// "12.5 mm" or "35°": value and unit, as shown now; four digits.
QString quantityText(double metric, const QString& unit);
/// 0 for what is only rounding left by sums that cancel: amounts that have a unit are of ordinary
/// size in it, so that a billionth of it is nothing.
double withoutNoise(double value);
/// The same with fixed decimals, stated for the metric unit.
QString quantityText(double metric, const QString& unit, int metricDecimals);

} // namespace lobewright::ui
