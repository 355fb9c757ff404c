#include "ui/workspace/dialogs.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Dialogs)
};

void runTextDialog(QWidget* parent, const QString& title, const QString& html, QSize size) {
    QDialog dialog(parent);
    dialog.setWindowTitle(title);
    auto* layout = new QVBoxLayout(&dialog);
    auto* text = new QTextBrowser(&dialog);
    text->setHtml(html);
    text->setOpenExternalLinks(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    layout->addWidget(text);
    layout->addWidget(buttons);
    dialog.resize(size);
    dialog.exec();
}

} // namespace

QString cautions() {
    return QStringLiteral("<p>") +
           Words::tr("Everything shown is an estimate. No fitness for manufacture or use is "
                     "implied; correlations, discharge coefficients and scavenging models are "
                     "good to perhaps ±10 to 20 %.") +
           QStringLiteral("</p><p>") +
           Words::tr("Contact figures are nominal: they compare designs and never release one to "
                     "build. Have a qualified engineer review the design before metal is cut.") +
           QStringLiteral("</p><p>") +
           Words::tr("Running engines burst, burn and throw parts. The rules of the place for "
                     "pressure, fuel, hydrogen and rotating machinery apply. First runs: behind "
                     "guarding, from a distance, with overspeed and fuel cut-off.") +
           QStringLiteral("</p>");
}

void showAbout(QWidget* parent) {
    const QString html =
        QStringLiteral("<h2>Lobewright %1</h2><p>").arg(QCoreApplication::applicationVersion()) +
        Words::tr("Designs and judges cam-track engines: opposed pistons whose rollers run on "
                  "undulating axial tracks around a shaft.") +
        QStringLiteral("</p><h3>") + Words::tr("Cautions") + QStringLiteral("</h3>") + cautions() +
        QStringLiteral("<h3>") + Words::tr("Licence") + QStringLiteral("</h3><p>") +
        Words::tr("Free software under the GNU General Public License, version 3 or later; it "
                  "comes without any warranty. Built with Qt, QCustomPlot and Eigen.") +
        QStringLiteral("</p>");
    runTextDialog(parent, Words::tr("About Lobewright"), html, {560, 520});
}

void showKeys(QWidget* parent) {
    const std::pair<QString, QString> lines[] = {
        {Words::tr("Ctrl+1, Ctrl+2, Ctrl+3"), Words::tr("Designer, student, port reviewer")},
        {Words::tr("F5, or Space in a view"), Words::tr("Turn or stop the shaft")},
        {Words::tr("F7, F8, or Page Up and Page Down in a view"),
         Words::tr("Event before, next event")},
        {Words::tr("Ctrl+F"), Words::tr("Find a number of the design")},
        {Words::tr("Ctrl+B"), Words::tr("Keep the present design as baseline")},
        {Words::tr("Ctrl+E"), Words::tr("Export a track for CAD, the workshop or inspection")},
        {Words::tr("F9"), Words::tr("Side panel with numbers, limits and figures")},
        {Words::tr("Up and Down in a number"), Words::tr("Step it; Shift: fine, Ctrl: coarse")},
        {Words::tr("Left and Right in a view"),
         Words::tr("Turn the shaft; Shift: fine, Ctrl: coarse")},
        {Words::tr("Drag a diamond, dot or bar"),
         Words::tr("Move a bound, lift, knot or port edge; Shift: fine; then arrow keys nudge it; "
                   "double click: exact number")},
        {Words::tr("Ctrl+K"), Words::tr("Turn a track into knots")},
        {Words::tr("Double click on a curve of knots, or Insert"), Words::tr("Put a knot there")},
        {Words::tr("Delete, Backspace on a knot"), Words::tr("Take it out; free its slope")},
        {Words::tr("Drag a knot on velocity, acceleration"),
         Words::tr("Prescribe its slope; move its lift until the acceleration follows")},
        {Words::tr("Drag in a plot"), Words::tr("Turn the shaft")},
        {Words::tr("Wheel in a plot"), Words::tr("Zoom the angle; with Ctrl the values")},
        {Words::tr("Shift and drag in a plot"), Words::tr("Zoom to a range")},
        {Words::tr("Middle button and drag in a plot"), Words::tr("Move what is shown")},
        {Words::tr("Double click or Home in a plot"), Words::tr("Show the whole turn")}};
    QString html = QStringLiteral("<table cellpadding=\"4\">");
    for (const auto& [keys, act] : lines)
        html += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(keys, act);
    runTextDialog(parent, Words::tr("Keys and mouse"), html + QStringLiteral("</table>"),
                  {640, 460});
}

void showProblems(QWidget* parent, const QString& file, const Problems& problems) {
    QDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("problems"));
    dialog.setWindowTitle(Words::tr("File not opened"));
    auto* layout = new QVBoxLayout(&dialog);
    auto* intro = new QLabel(
        Words::tr("%1 holds no design that can be used. The present design stays as it is.")
            .arg(QFileInfo(file).fileName()),
        &dialog);
    intro->setWordWrap(true);
    auto* list = new QTreeWidget(&dialog);
    list->setHeaderLabels({Words::tr("Place in the file"), Words::tr("What is wrong")});
    list->setRootIsDecorated(false);
    list->setWordWrap(true);
    list->setAccessibleName(Words::tr("Problems"));
    for (const Problem& problem : problems) {
        const QString path = QString::fromStdString(problem.path);
        const QString message = QString::fromStdString(problem.message);
        auto* item =
            new QTreeWidgetItem(list, {path.isEmpty() ? Words::tr("whole file") : path, message});
        item->setToolTip(1, message);
    }
    list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    layout->addWidget(intro);
    layout->addWidget(list);
    layout->addWidget(buttons);
    dialog.resize(720, 360);
    dialog.exec();
}

} // namespace lobewright::ui
