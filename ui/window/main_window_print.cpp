#include "ui/plots/base/plot_export.h"
#include "ui/report/report_job.h"
#include "ui/window/main_window.h"
#include "ui/window/pane.h"
#include "ui/window/pane_grid.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>

namespace lobewright::ui {

void MainWindow::addPrintActions(QMenu& menu) {
    menu.addAction(tr("Print this pa&ne…"), QKeySequence(tr("Ctrl+P")), this,
                   &MainWindow::printPane)
        ->setStatusTip(
            tr("The view that has the keyboard, else the one under the pointer, on paper "
               "or as a PDF"));
    printReport_ = menu.addAction(tr("Print the &full report…"), QKeySequence(tr("Ctrl+Shift+P")),
                                  this, &MainWindow::askToPrintReport);
    printReport_->setStatusTip(tr("The pages of the report on paper"));
}

const Views::View* MainWindow::viewHere() const {
    for (const QWidget* widget :
         {QApplication::focusWidget(), QApplication::widgetAt(QCursor::pos())}) {
        if (const Pane* pane = paneOf(widget))
            return pane->view();
    }
    return nullptr;
}

void MainWindow::printPane() {
    const Views::View* view = viewHere();
    if (!view)
        view = views_->find(grid_->shownViews().front());
    printPicture(*view->widget, view->title);
}

void MainWindow::askToPrintReport() {
    if (!reportIsPossible())
        return;
    const auto printer = std::make_shared<QPrinter>(QPrinter::ScreenResolution);
    printer->setDocName(document_.name());
    printer->setCreator(QStringLiteral("Lobewright"));
    QPrintDialog dialog(printer.get(), this);
    if (dialog.exec() == QDialog::Accepted)
        makeReport(tr("Report printed"),
                   [this, printer](ReportJob& job) { job.print(reportContent(), printer); });
}

} // namespace lobewright::ui
