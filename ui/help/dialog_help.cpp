#include "ui/help/dialog_help.h"

#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"

#include <QApplication>
#include <QDialog>
#include <QEvent>
#include <QFileDialog>
#include <QPrintDialog>
#include <QShortcut>

namespace lobewright::ui {

namespace {

QString pageOf(const QDialog& dialog) {
    if (qobject_cast<const QFileDialog*>(&dialog))
        return QStringLiteral("files.md");
    if (qobject_cast<const QPrintDialog*>(&dialog))
        return QStringLiteral("plots.md");
    const QString page = helpOfDialog(dialog.objectName());
    return page.isEmpty() ? helpPages().front().file : page;
}

} // namespace

DialogHelp::DialogHelp(QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
}

bool DialogHelp::eventFilter(QObject* watched, QEvent* event) {
    auto* dialog = event->type() == QEvent::Show ? qobject_cast<QDialog*>(watched) : nullptr;
    const auto name = QStringLiteral("dialogHelp");
    if (dialog && dialog->isModal() &&
        !dialog->findChild<QShortcut*>(name, Qt::FindDirectChildrenOnly)) {
        auto* key = new QShortcut(QKeySequence(Qt::Key_F1), dialog);
        key->setObjectName(name);
        connect(key, &QShortcut::activated, dialog, [dialog] { open(*dialog); });
    }
    return false;
}

/// A help window of the dialog's own: only what belongs to a modal dialog can be used beside it.
void DialogHelp::open(QDialog& dialog) {
    auto* help = dialog.findChild<HelpWindow*>();
    if (!help)
        help = new HelpWindow(&dialog);
    help->open(pageOf(dialog));
}

} // namespace lobewright::ui
