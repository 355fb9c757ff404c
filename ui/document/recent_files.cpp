#include "ui/document/recent_files.h"

#include "ui/base/plain_message.h"

#include <QFileInfo>
#include <QSettings>

namespace lobewright::ui {

namespace {
constexpr int longest = 10;
const auto setting = QStringLiteral("files/recent");
} // namespace

RecentFiles::RecentFiles(QWidget* parent) : QMenu(tr("Open &recent"), parent) {
    rebuild();
}

QStringList RecentFiles::files() {
    return QSettings().value(setting).toStringList();
}

void RecentFiles::add(const QString& file) {
    const QString path = QFileInfo(file).absoluteFilePath();
    QStringList all = files();
    all.removeAll(path);
    all.prepend(path);
    keep(all.mid(0, longest));
}

void RecentFiles::remove(const QString& file) {
    QStringList all = files();
    all.removeAll(file);
    keep(all);
}

void RecentFiles::keep(const QStringList& all) {
    QSettings().setValue(setting, all);
    rebuild();
}

void RecentFiles::rebuild() {
    clear();
    int number = 0;
    for (const QString& file : files()) {
        QString name = QFileInfo(file).fileName();
        name.replace(QLatin1Char('&'), QLatin1String("&&"));
        QAction* action = addAction(QStringLiteral("&%1  %2").arg(++number % 10).arg(name));
        action->setToolTip(plainToolTip(file));
        action->setStatusTip(file);
        connect(action, &QAction::triggered, this, [this, file] { Q_EMIT fileChosen(file); });
    }
    setEnabled(number > 0);
    if (number == 0)
        return;
    addSeparator();
    addAction(tr("&Clear this list"), this, [this] { keep({}); });
}

} // namespace lobewright::ui
