#include "ui/base/file_to_write.h"

#include "ui/base/plain_message.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QRegularExpression>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FileToWrite)
};

/// {".png", ".svg"} of "Picture (*.png);;Drawing (*.svg)"; "" stands for every file.
QStringList endingsOf(const QString& filter) {
    static const QRegularExpression pattern(QStringLiteral("\\*([^\\s();]*)"));
    QStringList found;
    for (auto match = pattern.globalMatch(filter); match.hasNext();)
        found << match.next().captured(1);
    return found;
}

/// A link that leads nowhere is there too.
bool isThere(const QString& file) {
    const QFileInfo info(file);
    return info.exists() || info.isSymLink();
}

QString question(const QStringList& there) {
    const QFileInfo first(there.front());
    const QString folder = QDir::toNativeSeparators(first.absolutePath());
    if (there.size() == 1) {
        return Words::tr("“%1” is already in the folder %2. Replace it?")
            .arg(first.fileName(), folder);
    }
    return Words::tr("%n files of these names are already in the folder %1, “%2” among them. "
                     "Replace them?",
                     nullptr, static_cast<int>(there.size()))
        .arg(folder, first.fileName());
}

} // namespace

QString withEnding(const QString& file, const QString& filter, const QString& chosen) {
    const QString suffix = QFileInfo(file).suffix();
    for (const QString& ending : endingsOf(filter)) {
        const bool isOneOfThem =
            !ending.isEmpty() &&
            file.endsWith(QLatin1Char('.') + QFileInfo(ending).suffix(), Qt::CaseInsensitive);
        const bool isAnything =
            ending.isEmpty() && endingsOf(chosen).contains(ending) && !suffix.isEmpty();
        if (isOneOfThem || isAnything)
            return file;
    }
    const QString wanted = endingsOf(chosen).value(0);
    return file + (wanted.isEmpty() ? endingsOf(filter).value(0) : wanted);
}

bool mayReplace(QWidget* parent, const QStringList& files) {
    QStringList there;
    for (const QString& file : files) {
        if (isThere(file))
            there << file;
    }
    if (there.isEmpty())
        return true;
    PlainMessage box(QMessageBox::Question, Words::tr("Replace what is there?"), question(there),
                     QMessageBox::Cancel, parent);
    box.setObjectName(QStringLiteral("mayReplace"));
    auto* replace = box.addButton(Words::tr("&Replace"), QMessageBox::AcceptRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == replace;
}

QString fileToWrite(QWidget* parent, const QString& caption, const QString& proposed,
                    const QString& filter) {
    QString name = proposed, chosen;
    while (true) {
        name = QFileDialog::getSaveFileName(parent, caption, name, filter, &chosen,
                                            QFileDialog::DontConfirmOverwrite);
        if (name.isEmpty())
            return {};
        name = withEnding(name, filter, chosen);
        if (mayReplace(parent, {name}))
            return name;
    }
}

} // namespace lobewright::ui
