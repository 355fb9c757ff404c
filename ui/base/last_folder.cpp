#include "ui/base/last_folder.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>

namespace lobewright::ui {

namespace {

const auto folderSetting = QStringLiteral("files/folder");

} // namespace

QString lastFolder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    for (const QString& folder : {QSettings().value(folderSetting).toString(), documents}) {
        if (!folder.isEmpty() && QDir(folder).exists())
            return folder;
    }
    return QDir::homePath();
}

void noteFolder(const QString& file) {
    QSettings().setValue(folderSetting, QFileInfo(file).absolutePath());
}

QString fileStem(const QString& name) {
    // A slash would lead into another folder.
    static const QRegularExpression others(QStringLiteral("[\\s/\\\\\\x00-\\x1f]+"));
    return name.toLower().replace(others, QStringLiteral("-"));
}

} // namespace lobewright::ui
