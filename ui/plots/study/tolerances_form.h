#pragma once

#include "core/unknowns/tolerances.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QDoubleSpinBox;
class QFormLayout;

namespace lobewright::ui {

/// What manufacture scatters and, of a warm engine, what grows.
class TolerancesForm : public QWidget {
    Q_OBJECT

  public:
    explicit TolerancesForm(QWidget* parent = nullptr);

    /// Lengths of this design stand where nothing was typed yet.
    void showDesign(const design::Design& design);
    unknowns::Tolerances tolerances() const;

  Q_SIGNALS:
    void changed(const lobewright::unknowns::Tolerances& tolerances);

  private:
    struct Entry {
        QDoubleSpinBox* box;
        const char* unit; ///< metric
        double perUnit;   ///< SI
        double value;     ///< SI
        bool isGrowth;
    };
    void add(QFormLayout& form, const QString& label, const QString& help, const char* unit,
             double perUnit, double value, bool isGrowth);
    /// In the units that are shown now.
    void refill();
    void take(std::size_t entry);

    QCheckBox* isWarm_;
    std::vector<Entry> entries_; ///< in the order of the form
    bool isFilling_ = false, isLengthTyped_ = false;
};

} // namespace lobewright::ui
