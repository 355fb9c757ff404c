#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/working_view.h"
#include "ui/window/figures_bar.h"
#include "ui/window/main_window.h"
#include "ui/window/pane_grid.h"

#include <QSplitter>
#include <QTabWidget>

namespace lobewright::ui {

void MainWindow::buildWorking() {
    auto* split = new QSplitter(Qt::Vertical, side_);
    split->setObjectName(QStringLiteral("figuresAndWorking"));
    split->setChildrenCollapsible(false);
    working_ = new WorkingView(split);
    split->addWidget(figures_->parentWidget());
    split->addWidget(working_);
    working_->hide();
    side_->addTab(split, tr("Results"));
}

void MainWindow::connectWorking() {
    connect(figures_, &FiguresPanel::workingWanted, this, &MainWindow::showWorking);
    connect(figures_, &FiguresPanel::goalWanted, this, &MainWindow::makeThis);
    connect(figuresBar_, &FiguresBar::workingWanted, this, &MainWindow::showWorking);
    connect(limits_, &LimitsList::workingWanted, this, &MainWindow::showWorking);
    connect(views_, &Views::workingWanted, this, &MainWindow::showWorking);
    connect(working_, &WorkingView::fieldWanted, this, &MainWindow::goToField);
    connect(working_, &WorkingView::angleWanted, &cursor_, &TurnCursor::setAngle);
    connect(working_, &WorkingView::viewWanted, this,
            [this](const QString& key) { grid_->reveal(key); });
    connect(working_, &WorkingView::closed, working_, &QWidget::hide);
}

void MainWindow::showWorking(const QString& figure) {
    sideShown_->setChecked(true);
    side_->setCurrentWidget(working_->parentWidget());
    if (working_->isHidden()) {
        auto* split = static_cast<QSplitter*>(working_->parentWidget());
        working_->show();
        split->setSizes({split->height() / 2, split->height() / 2});
    }
    working_->showFigure(figure);
    figures_->choose(figure);
}

} // namespace lobewright::ui
