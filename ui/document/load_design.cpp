#include "ui/document/load_design.h"

#include "core/design/file.h"
#include "ui/base/faults.h"
#include "ui/document/file_watch.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QFileInfo>
#include <QFutureWatcher>
#include <QLabel>
#include <QProgressDialog>
#include <QTimer>
#include <QtConcurrentRun>

namespace lobewright::ui {

namespace {

constexpr int moment = 300; // [ms]

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LoadDesign)
};

LoadedDesign read(const QString& file) {
    QByteArray digest = FileWatch::digestOf(file); // before: what is written now is noticed
    return {guardedWork([&] { return design::loadDesign(file.toStdString()); }), digest};
}

} // namespace

std::optional<LoadedDesign> loadDesign(QWidget* window, const QString& file) {
    QFutureWatcher<LoadedDesign> watcher;
    QEventLoop loop;
    QObject::connect(&watcher, &QFutureWatcherBase::finished, &loop, &QEventLoop::quit);
    QTimer::singleShot(moment, &loop, &QEventLoop::quit);
    watcher.setFuture(QtConcurrent::run(read, file));
    // Nothing may be clicked meanwhile: the document is about to be another.
    loop.exec(QEventLoop::ExcludeUserInputEvents);
    if (!watcher.isFinished()) {
        QProgressDialog progress(window);
        auto* label =
            new QLabel(Words::tr("Reading %1").arg(QFileInfo(file).fileName()), &progress);
        label->setTextFormat(Qt::PlainText);
        progress.setLabel(label);
        progress.setRange(0, 0);
        progress.setWindowModality(Qt::ApplicationModal);
        QObject::connect(&watcher, &QFutureWatcherBase::finished, &progress, &QDialog::accept);
        progress.exec();
    }
    if (!watcher.isFinished())
        return std::nullopt; // its thread ends by itself; nobody listens any more
    return watcher.result();
}

} // namespace lobewright::ui
