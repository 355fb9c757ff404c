#include "ui/workspace/autosave.h"

#include "core/design/file.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QSettings>
#include <QUuid>

#include <algorithm>
#include <chrono>

namespace lobewright::ui {

namespace {

constexpr auto usualInterval = std::chrono::seconds(10);
const auto ending = QStringLiteral(".lobewright.json");

QString lockOf(const QString& file) {
    return file + QStringLiteral(".lock");
}
QString notesOf(const QString& file) {
    return file + QStringLiteral(".ini");
}

} // namespace

Autosave::Autosave(Document& document, QString folder, QObject* parent)
    : QObject(parent), document_(document), folder_(std::move(folder)) {
    QDir().mkpath(folder_);
    file_ =
        folder_ + QLatin1Char('/') + QUuid::createUuid().toString(QUuid::WithoutBraces) + ending;
    lock_ = std::make_unique<QLockFile>(lockOf(file_));
    lock_->setStaleLockTime(0); // held as long as the program lives
    lock_->tryLock();
    connect(&timer_, &QTimer::timeout, this, &Autosave::update);
    connect(&document_, &Document::modifiedChanged, this, [this](bool modified) {
        if (!modified)
            update();
    });
    timer_.start(usualInterval);
}

Autosave::~Autosave() {
    QFile::remove(file_);
    QFile::remove(notesOf(file_));
    lock_->unlock();
}

void Autosave::update() {
    if (!document_.isModified()) {
        QFile::remove(file_);
        QFile::remove(notesOf(file_));
        written_ = 0;
        return;
    }
    if (written_ == document_.revision() || document_.isDragging())
        return;
    if (design::saveDesign(document_.design(), file_.toStdString()))
        return; // disk full or folder gone: tried again at the next round
    QSettings notes(notesOf(file_), QSettings::IniFormat);
    notes.setValue(QStringLiteral("name"), document_.name());
    notes.setValue(QStringLiteral("original"), document_.path());
    written_ = document_.revision();
}

std::vector<Autosave::Left> Autosave::leftovers() const {
    std::vector<Left> found;
    for (const QFileInfo& info : QDir(folder_).entryInfoList({'*' + ending}, QDir::Files)) {
        const QString file = info.absoluteFilePath();
        if (file == QFileInfo(file_).absoluteFilePath())
            continue;
        QLockFile lock(lockOf(file));
        lock.setStaleLockTime(0);
        if (!lock.tryLock(0))
            continue; // its program is alive
        const QSettings notes(notesOf(file), QSettings::IniFormat);
        found.push_back({file, notes.value(QStringLiteral("name")).toString(),
                         notes.value(QStringLiteral("original")).toString(), info.lastModified()});
    }
    std::ranges::sort(found, std::ranges::greater(), &Left::when);
    return found;
}

void Autosave::discard(const Left& left) {
    QFile::remove(left.file);
    QFile::remove(notesOf(left.file));
    QFile::remove(lockOf(left.file));
}

} // namespace lobewright::ui
