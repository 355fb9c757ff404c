#include "ui/panels/figures_view.h"

#include "ui/base/controls.h"
#include "ui/base/layouts.h"
#include "ui/panels/figures_panel.h"

#include <QCheckBox>
#include <QLineEdit>

namespace lobewright::ui {

FiguresView::FiguresView(QWidget* parent)
    : QWidget(parent), search_(new QLineEdit(this)),
      changedOnly_(new QCheckBox(tr("changed only"), this)), panel_(new FiguresPanel(this)) {
    makeSearch(*search_, tr("Find a result"),
               tr("Shows only results whose names contain these words"));
    changedOnly_->setToolTip(tr("Hide results that equal the baseline"));
    changedOnly_->hide();
    auto* line = rowOf(nullptr, {8, 4, 8, 4}, -1, {{search_, 1}, changedOnly_});
    columnOf(this, {0, 0, 0, 0}, 0, {line, {panel_, 1}});
    setFocusProxy(panel_);
    connect(search_, &QLineEdit::textChanged, panel_, &FiguresPanel::setFilter);
    connect(changedOnly_, &QCheckBox::toggled, panel_, &FiguresPanel::setChangedOnly);
}

void FiguresView::showSolution(const SolutionPointer& solution) {
    panel_->showSolution(solution);
}

void FiguresView::showBaseline(const SolutionPointer& baseline) {
    changedOnly_->setVisible(baseline != nullptr);
    if (!baseline)
        changedOnly_->setChecked(false);
    panel_->showBaseline(baseline);
}

} // namespace lobewright::ui
