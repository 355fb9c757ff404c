#include "ui/document/file_watch.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

namespace lobewright::ui {

namespace {

constexpr int settleTime = 200;                  // [ms]
constexpr qint64 largestFile = 64 * 1024 * 1024; // no design is that large

} // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
    settle_.setSingleShot(true);
    settle_.setInterval(settleTime);
    connect(&settle_, &QTimer::timeout, this, &FileWatch::look);
    const auto wait = [this] { settle_.start(); };
    connect(&watcher_, &QFileSystemWatcher::fileChanged, this, wait);
    connect(&watcher_, &QFileSystemWatcher::directoryChanged, this, wait);
}

QByteArray FileWatch::digest(const QByteArray& bytes) {
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

QByteArray FileWatch::digestOf(const QString& file) {
    QFile stream(file);
    if (!QFileInfo(file).isFile() || !stream.open(QIODevice::ReadOnly))
        return {};
    return digest(stream.read(largestFile));
}

void FileWatch::watch(const QString& file, const QByteArray& digest) {
    settle_.stop();
    if (const QStringList before = watcher_.files() + watcher_.directories(); !before.isEmpty())
        watcher_.removePaths(before);
    file_ = file;
    told_.clear();
    known_ = digest.isEmpty() && !file.isEmpty() ? digestOf(file) : digest;
    if (file.isEmpty())
        return;
    // The folder as well: who writes by renaming puts another file in its place.
    watcher_.addPaths({file, QFileInfo(file).absolutePath()});
}

bool FileWatch::isChanged() const {
    if (file_.isEmpty())
        return false;
    const QByteArray now = digestOf(file_);
    return !now.isEmpty() && now != known_;
}

void FileWatch::look() {
    if (!watcher_.files().contains(file_) && QFileInfo::exists(file_))
        watcher_.addPath(file_);
    if (!isChanged())
        return;
    const QByteArray now = digestOf(file_);
    if (now == told_)
        return;
    told_ = now;
    Q_EMIT changed();
}

} // namespace lobewright::ui
