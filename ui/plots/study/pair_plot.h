#pragma once

#include "core/unknowns/consistent.h"
#include "ui/plots/base/custom_plot.h"

namespace lobewright::ui {

/// The two unknowns that published figures narrow most, against each other: every engine that was
/// thought possible as a pale point, those that keep to the figures as dark ones.
class PairPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit PairPlot(QWidget* parent = nullptr);

    /// Hidden where there are not two.
    void show(const unknowns::Ensemble& ensemble, const unknowns::Requirement& requirement);

  private:
    void applyTones();
    void nameAxis(QCPAxis& axis, const unknowns::Unknown& unknown,
                  const unknowns::Narrowed& narrowed);

    QCPGraph *possible_, *keeps_;
};

} // namespace lobewright::ui
