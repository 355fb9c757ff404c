#include "ui/document/autosave.h"

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
const auto lockEnding = QStringLiteral(".lock"), notesEnding = QStringLiteral(".ini");

QString lockOf(const QString& file) {
    return file + lockEnding;
}
QString notesOf(const QString& file) {
    return file + notesEnding;
}

/// The copy that a file of the folder belongs to: its lock, its notes, or a half-written successor
/// (a hidden file that begins with the copy's name); empty for others.
QString copyOf(const QString& name) {
    for (const QString& extra : {lockEnding, notesEnding}) {
        if (name.endsWith(ending + extra))
            return name.chopped(extra.size());
    }
    const auto end = name.indexOf(ending);
    const bool isHidden = name.startsWith(QLatin1Char('.')) && !name.endsWith(ending);
    return isHidden && end > 0 ? name.mid(1, end - 1) + ending : QString();
}

/// Held: the program that wrote the copy no longer runs, and no other takes it meanwhile.
std::shared_ptr<QLockFile> takeLock(const QString& copy) {
    auto lock = std::make_shared<QLockFile>(lockOf(copy));
    lock->setStaleLockTime(0);
    return lock->tryLock(0) ? lock : nullptr;
}

} // namespace

Autosave::Autosave(Document& document, QString folder, QObject* parent)
    : QObject(parent), document_(document), folder_(std::move(folder)) {
    QDir().mkpath(folder_);
    sweep();
    file_ =
        folder_ + QLatin1Char('/') + QUuid::createUuid().toString(QUuid::WithoutBraces) + ending;
    lock_ = std::make_unique<QLockFile>(lockOf(file_));
    lock_->setStaleLockTime(0); // held as long as the program lives
    if (!lock_->tryLock()) {
        problem_ = Problem{"", tr("the folder %1 cannot be written")
                                   .arg(QDir::toNativeSeparators(folder_))
                                   .toStdString()};
    }
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
    QDir().mkpath(folder_);
    auto problem = design::saveDesign(document_.design(), file_.toStdString());
    const bool isWritten = !problem;
    setProblem(std::move(problem)); // disk full or folder gone: tried again at the next round
    if (!isWritten)
        return;
    QSettings notes(notesOf(file_), QSettings::IniFormat);
    notes.setValue(QStringLiteral("name"), document_.name());
    notes.setValue(QStringLiteral("original"), document_.path());
    notes.setValue(QStringLiteral("digest"), document_.fileDigest().toHex());
    written_ = document_.revision();
}

void Autosave::setProblem(std::optional<Problem> problem) {
    if (problem == problem_)
        return;
    problem_ = std::move(problem);
    Q_EMIT problemChanged();
}

std::vector<Autosave::Left> Autosave::leftovers() const {
    std::vector<Left> found;
    for (const QFileInfo& info : QDir(folder_).entryInfoList({'*' + ending}, QDir::Files)) {
        const QString file = info.absoluteFilePath();
        if (file == QFileInfo(file_).absoluteFilePath())
            continue;
        auto lock = takeLock(file);
        if (!lock)
            continue; // its program is alive
        const QSettings notes(notesOf(file), QSettings::IniFormat);
        found.push_back({file, notes.value(QStringLiteral("name")).toString(),
                         notes.value(QStringLiteral("original")).toString(),
                         QByteArray::fromHex(notes.value(QStringLiteral("digest")).toByteArray()),
                         info.lastModified(), std::move(lock)});
    }
    std::ranges::sort(found, std::ranges::greater(), &Left::when);
    return found;
}

void Autosave::discard(const Left& left) {
    QFile::remove(left.file);
    QFile::remove(notesOf(left.file));
}

QString Autosave::setAside(const Left& left) {
    const QFileInfo info(left.file);
    const QDir folder(info.absolutePath() + QStringLiteral("/unread"));
    QString aside = folder.filePath(info.fileName());
    if (!folder.mkpath(QStringLiteral(".")) || !QFile::rename(left.file, aside))
        return left.file;
    QFile::rename(notesOf(left.file), notesOf(aside));
    return aside;
}

/// Removes what ended programs left beside copies that are gone: locks, notes, halves of files.
void Autosave::sweep() const {
    const QDir folder(folder_);
    for (const QString& name : folder.entryList(QDir::Files | QDir::Hidden)) {
        const QString copy = copyOf(name);
        const bool isHalf = name.startsWith(QLatin1Char('.'));
        if (copy.isEmpty() || (!isHalf && folder.exists(copy)))
            continue;
        // Taking the lock of an ended program and letting go of it removes its file.
        if (const auto lock = takeLock(folder.filePath(copy)); lock && !name.endsWith(lockEnding))
            QFile::remove(folder.filePath(name));
    }
}

} // namespace lobewright::ui
