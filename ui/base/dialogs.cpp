#include "ui/base/dialogs.h"

#include "core/text/caution.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/plain_message.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QTextBrowser>
#include <QTreeWidget>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Dialogs)
};

void runTextDialog(QWidget* parent, const QString& title, const QString& html, QSize size) {
    QDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("about"));
    dialog.setWindowTitle(title);
    auto* text = new QTextBrowser(&dialog);
    text->setAccessibleName(title);
    text->setHtml(html);
    text->setOpenExternalLinks(true);
    auto* buttons = footOf(dialog, QDialogButtonBox::Close);
    columnOf(&dialog, {text, buttons});
    dialog.resize(size);
    dialog.exec();
}

} // namespace

QString cautions() {
    return QStringLiteral("<p>") + coreText(caution()) + QStringLiteral("</p><p>") +
           Words::tr("Correlations, discharge coefficients and scavenging models are good to "
                     "perhaps ±10 to 20 %. Contact figures are nominal: they compare designs and "
                     "never release one for manufacture.") +
           QStringLiteral("</p><p>") +
           Words::tr("Have a qualified engineer review the design before metal is cut. Running "
                     "engines burst, burn and throw parts.") +
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

void showProblems(QWidget* parent, const QString& file, const Problems& problems) {
    QDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("problems"));
    dialog.setWindowTitle(Words::tr("File not opened"));
    auto* intro =
        new QLabel(Words::tr("%1 is not a usable design. The present design is unchanged.")
                       .arg(QFileInfo(file).fileName()),
                   &dialog);
    intro->setTextFormat(Qt::PlainText);
    intro->setWordWrap(true);
    auto* list = new QTreeWidget(&dialog);
    list->setHeaderLabels({Words::tr("Place in the file"), Words::tr("What is wrong")});
    list->setRootIsDecorated(false);
    list->setWordWrap(true);
    list->setAccessibleName(Words::tr("Problems"));
    for (const Problem& problem : problems) {
        const QString path = QString::fromStdString(problem.path);
        const QString message = coreText(problem.message);
        auto* item =
            new QTreeWidgetItem(list, {path.isEmpty() ? Words::tr("whole file") : path, message});
        item->setToolTip(1, plainToolTip(message));
    }
    list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    auto* buttons = footOf(dialog, QDialogButtonBox::Close);
    columnOf(&dialog, {intro, list, buttons});
    dialog.resize(720, 360);
    dialog.exec();
}

} // namespace lobewright::ui
