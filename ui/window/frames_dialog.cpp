#include "ui/window/frames_dialog.h"

#include "ui/base/controls.h"
#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/layouts.h"

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>

namespace lobewright::ui {

FramesDialog::FramesDialog(Views& views, TurnCursor& cursor, const QString& name,
                           const QString& view, QWidget* parent)
    : QDialog(parent), views_(views), cursor_(cursor), name_(name) {
    setObjectName(QStringLiteral("frames"));
    setWindowTitle(tr("Pictures over one revolution"));
    buildForm();
    if (const int proposed = drawing_->findData(view); proposed >= 0)
        drawing_->setCurrentIndex(proposed);
    noteBusy(false);
}

void FramesDialog::buildForm() {
    drawing_ = new QComboBox(this);
    drawing_->setObjectName(QStringLiteral("drawing"));
    for (const Views::View& view : views_.all()) {
        if (qobject_cast<TurnView*>(view.widget))
            drawing_->addItem(view.title, view.key);
    }
    frames_ = new QSpinBox(this);
    frames_->setObjectName(QStringLiteral("frames"));
    frames_->setRange(2, 3600);
    frames_->setValue(120);
    frames_->setToolTip(
        tr("Evenly spaced over one revolution; the last picture leads back to the first."));
    size_ = new QComboBox(this);
    for (const QSize size : {QSize(1280, 720), QSize(1920, 1080), QSize(800, 600)})
        size_->addItem(tr("%1 × %2").arg(size.width()).arg(size.height()), size);
    auto* form = new QFormLayout;
    form->addRow(tr("&Drawing"), drawing_);
    form->addRow(tr("&Pictures"), frames_);
    form->addRow(tr("Si&ze in pixels"), size_);
    message_ = new QLabel(tr("Numbered PNG files, from shaft angle 0° onward."), this);
    makeParagraph(*message_, "message");
    progress_ = new QProgressBar(this);
    progress_->setAccessibleName(tr("Progress"));
    auto* buttons = footOf(*this, QDialogButtonBox::Close);
    go_ = buttons->addButton(tr("&Write to a folder…"), QDialogButtonBox::ActionRole);
    go_->setDefault(true);
    stop_ = addButton(*buttons, tr("St&op"), QDialogButtonBox::ActionRole, "stop");
    columnOf(this, {form, message_, progress_, buttons});
    connect(go_, &QPushButton::clicked, this, &FramesDialog::askForFolder);
    connect(stop_, &QPushButton::clicked, this, [this] { stopWanted_ = true; });
}

void FramesDialog::noteBusy(bool isBusy) {
    busy_ = isBusy;
    go_->setEnabled(!isBusy);
    stop_->setEnabled(isBusy);
    progress_->setVisible(isBusy);
}

void FramesDialog::askForFolder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder for the pictures"), lastFolder());
    if (folder.isEmpty())
        return;
    const FrameExport wanted = wantedIn(folder);
    QStringList files;
    for (int i = 0; i < wanted.frames; ++i)
        files << wanted.file(i);
    if (mayReplace(this, files))
        writeTo(folder);
}

FrameExport FramesDialog::wantedIn(const QString& folder) const {
    FrameExport wanted;
    wanted.folder = QDir(folder);
    wanted.stem = name_ + QLatin1Char('-') + drawing_->currentData().toString();
    wanted.frames = frames_->value();
    wanted.size = size_->currentData().toSize();
    return wanted;
}

void FramesDialog::writeTo(const QString& folder) {
    const Views::View& shown = *views_.find(drawing_->currentData().toString());
    views_.refresh(shown);
    auto* view = qobject_cast<TurnView*>(shown.widget);
    const FrameExport wanted = wantedIn(folder);
    progress_->setRange(0, wanted.frames);
    stopWanted_ = false;
    noteBusy(true);
    // What a drawing solves beside the window has to be there for its first picture.
    while (!view->isComplete() && !stopWanted_)
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    // Painting belongs to this thread; events between the pictures keep the window alive.
    const auto problem = exportFrames(*view, cursor_, wanted, [this](int done) {
        progress_->setValue(done);
        QApplication::processEvents();
        return !stopWanted_;
    });
    noteBusy(false);
    message_->setText(problem ? *problem
                              : tr("%n picture(s) written to %1.", nullptr, wanted.frames)
                                    .arg(QDir::toNativeSeparators(folder)));
    if (!problem)
        Q_EMIT written(wanted.frames);
}

void FramesDialog::done(int result) {
    if (busy_) {
        stopWanted_ = true; // the loop above ends first; closing again then closes
        return;
    }
    QDialog::done(result);
}

} // namespace lobewright::ui
