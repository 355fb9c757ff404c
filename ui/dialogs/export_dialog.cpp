#include "ui/dialogs/export_dialog.h"

#include "core/text/caution.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/faults.h"
#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/message_line.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <QtConcurrentRun>

namespace lobewright::ui {

namespace {

using exchange::ExportKind;
using exchange::ExportOptions;
using exchange::ExportWords;

constexpr int progressSteps = 1000;

/// Progress and cancel by way of a future.
class PromiseMonitor final : public Monitor {
  public:
    explicit PromiseMonitor(QPromise<Problems>& promise) : promise_(promise) {
        promise_.setProgressRange(0, progressSteps);
    }
    bool step(double fraction, const Message& what) override {
        promise_.setProgressValueAndText(static_cast<int>(fraction * progressSteps),
                                         coreText(what));
        return !promise_.isCanceled();
    }

  private:
    QPromise<Problems>& promise_;
};

const auto millimetres = QStringLiteral("mm"), micrometres = QStringLiteral("µm");

/// Numbers separated by blanks or semicolons; by commas too where they are not the decimal mark.
std::optional<std::vector<double>> readRadii(const QString& typed, const QLocale& locale) {
    const bool commaSeparates = locale.decimalPoint() != QStringLiteral(",");
    const QRegularExpression marks(commaSeparates ? QStringLiteral("[;,\\s]+")
                                                  : QStringLiteral("[;\\s]+"));
    std::vector<double> radii;
    for (const QString& word : typed.split(marks, Qt::SkipEmptyParts)) {
        bool isNumber = false;
        radii.push_back(unitFor(millimetres).metric(locale.toDouble(word, &isNumber)) *
                        units::millimetre);
        if (!isNumber)
            return std::nullopt;
    }
    return radii;
}

} // namespace

ExportDialog::ExportDialog(design::Design design, QString name, QWidget* parent)
    : QDialog(parent), design_(std::move(design)), name_(std::move(name)), source_(name_) {
    setObjectName(QStringLiteral("export"));
    setWindowTitle(tr("Export a track"));
    new QVBoxLayout(this);
    buildForm();
    buildFoot();
    connect(&watcher_, &QFutureWatcherBase::progressValueChanged, progress_,
            &QProgressBar::setValue);
    connect(&watcher_, &QFutureWatcherBase::progressTextChanged, progress_,
            &QProgressBar::setFormat);
    connect(&watcher_, &QFutureWatcherBase::finished, this, &ExportDialog::finished);
    kindChanged();
    noteBusy(false);
}

// What runs has all it needs and asks before it writes: nobody waits for it.
ExportDialog::~ExportDialog() {
    stop();
}

void ExportDialog::buildForm() {
    form_ = new QFormLayout;
    static_cast<QVBoxLayout*>(layout())->addLayout(form_);
    track_ = new QComboBox(this);
    track_->setObjectName(QStringLiteral("track"));
    for (const End end : design_.mechanism.pistons())
        track_->addItem(trackTitle(end, design_.mechanism.isOneSided()), static_cast<int>(end));
    kind_ = new QComboBox(this);
    kind_->setObjectName(QStringLiteral("kind"));
    for (const ExportWords& words : exchange::exportWords)
        kind_->addItem(coreText(words.label), static_cast<int>(words.kind));
    kindHelp_ = new QLabel(this);
    kindHelp_->setWordWrap(true);
    tolerance_ = numberBox("tolerance", micrometres, 0.01, 1000.0, 1.0, 2, this);
    tolerance_->setToolTip(tr("Largest distance from the exact track"));
    radii_ = new QLineEdit(this);
    radii_->setObjectName(QStringLiteral("radii"));
    radii_->setPlaceholderText(tr("both edges and middle of the roller"));
    radii_->setToolTip(
        tr("Cylinders about the shaft, in %1, separated by blanks").arg(unitFor(millimetres).text));
    step_ = numberBox("step", QStringLiteral("°"), 0.0, 90.0, 0.0, 3, this);
    step_->setToolTip(tr("Degrees of the pattern between rows"));
    cutter_ = numberBox("cutter", millimetres, 0.0, 1000.0,
                        design_.mechanism.roller.radius / units::millimetre, 3, this);
    cutter_->setToolTip(tr("Only the roller's own radius makes the track exactly"));
    form_->addRow(tr("&Track"), track_);
    form_->addRow(tr("&Kind"), kind_);
    form_->addRow(QString(), kindHelp_);
    form_->addRow(tr("T&olerance"), tolerance_);
    form_->addRow(tr("&Radii in %1").arg(unitFor(millimetres).text), radii_);
    form_->addRow(tr("&Step"), step_);
    form_->addRow(tr("&Cutter radius"), cutter_);
    connect(kind_, &QComboBox::currentIndexChanged, this, &ExportDialog::kindChanged);
}

void ExportDialog::buildFoot() {
    auto* column = static_cast<QVBoxLayout*>(layout());
    message_ = messageLine(3, this);
    message_->setAccessibleName(tr("Progress"));
    progress_ = new QProgressBar(this);
    progress_->setRange(0, progressSteps);
    progress_->setAccessibleName(tr("Progress"));
    auto* buttons = footOf(*this, QDialogButtonBox::Close);
    go_ = addButton(*buttons, tr("&Write file…"), QDialogButtonBox::ActionRole, "go");
    go_->setDefault(true);
    stop_ = addButton(*buttons, tr("St&op"), QDialogButtonBox::ActionRole, "stop");
    auto* fixed = new QLabel(coreText(caution()), this);
    makeParagraph(*fixed, "caution");
    column->addWidget(fixed);
    column->addWidget(message_);
    column->addWidget(progress_);
    column->addWidget(buttons);
    connect(go_, &QPushButton::clicked, this, &ExportDialog::askForFile);
    connect(stop_, &QPushButton::clicked, this, &ExportDialog::stop);
    say(QString(), false);
    resize(sizeHint().expandedTo({480, 0}));
}

const ExportWords& ExportDialog::kind() const {
    return exchange::words(static_cast<ExportKind>(kind_->currentData().toInt()));
}

void ExportDialog::kindChanged() {
    const ExportWords& words = kind();
    kindHelp_->setText(coreText(words.help));
    form_->setRowVisible(tolerance_, words.takesTolerance);
    form_->setRowVisible(radii_, words.takesRadii);
    form_->setRowVisible(step_, words.takesStep);
    form_->setRowVisible(cutter_, words.takesCutter);
    // At its lowest value the box stands for what is usual.
    const QString usual = words.kind == ExportKind::liftTable    ? tr("0.5° (default)")
                          : words.kind == ExportKind::inspection ? tr("5° (default)")
                                                                 : tr("as the tolerance asks");
    step_->setSpecialValueText(usual);
}

std::optional<ExportOptions> ExportDialog::options() {
    const ExportWords& words = kind();
    const auto radii = readRadii(radii_->text(), locale());
    if (words.takesRadii && !radii) {
        say(tr("The radii must be numbers in %1, separated by blanks.")
                .arg(unitFor(millimetres).text),
            true);
        return std::nullopt;
    }
    ExportOptions options;
    options.end = static_cast<End>(track_->currentData().toInt());
    options.kind = words.kind;
    options.origin = exchange::originOf(source_.toStdString());
    options.tolerance = unitFor(micrometres).metric(tolerance_->value()) * units::micrometre;
    if (words.takesRadii)
        options.radii = *radii;
    if (words.takesStep && step_->value() > 0.0)
        options.step = step_->value() * units::degree;
    // As it was set, the roller's radius: the digits of the box must not make another cutter.
    const Unit lengths = unitFor(millimetres);
    const double roller = design_.mechanism.roller.radius;
    const double shown =
        QString::number(lengths.shown(roller / units::millimetre), 'f', cutter_->decimals())
            .toDouble();
    if (words.takesCutter) {
        options.cutterRadius = std::abs(cutter_->value() - shown) < 1e-9
                                   ? roller
                                   : lengths.metric(cutter_->value()) * units::millimetre;
    }
    return options;
}

QString ExportDialog::proposedName() const {
    const ExportWords& words = kind();
    const QString track =
        QLatin1String(lobewright::name(static_cast<End>(track_->currentData().toInt())));
    QStringList parts{fileStem(name_), track};
    if (words.kind == ExportKind::liftTable)
        parts << tr("lift");
    else if (words.key != words.extension) // the ending says it already
        parts << QString::fromUtf8(words.key.data());
    return parts.join(QLatin1Char('-')) + QLatin1Char('.') +
           QString::fromUtf8(words.extension.data());
}

void ExportDialog::askForFile() {
    const auto asked = options();
    if (!asked)
        return;
    const QString file = fileToWrite(
        this, tr("Write the track as"), lastFolder() + QLatin1Char('/') + proposedName(),
        QStringLiteral("%1 (*.%2)")
            .arg(coreText(kind().label), QString::fromUtf8(kind().extension.data())));
    if (!file.isEmpty())
        exportTo(file);
}

void ExportDialog::exportTo(const QString& file) {
    const auto asked = options();
    if (!asked || isBusy())
        return;
    file_ = file;
    say(QString(), false);
    noteBusy(true);
    watcher_.setFuture(QtConcurrent::run(
        [design = design_, asked = *asked, path = file.toStdString()](QPromise<Problems>& promise) {
            PromiseMonitor monitor(promise);
            promise.addResult(
                guardedWork([&] { return exchange::writeTrack(design, asked, path, monitor); }));
        }));
}

void ExportDialog::stop() {
    watcher_.cancel();
}

void ExportDialog::finished() {
    noteBusy(false);
    if (watcher_.isCanceled() || watcher_.future().resultCount() == 0) {
        say(tr("Stopped; nothing was written."), false);
        return;
    }
    QStringList lines;
    for (const Problem& problem : watcher_.result())
        lines += coreText(problem.message);
    if (!lines.isEmpty()) {
        say(tr("Not written: %1").arg(lines.join(QStringLiteral("\n"))), true);
        return;
    }
    say(tr("Written: %1 (%2)")
            .arg(QFileInfo(file_).fileName(), locale().formattedDataSize(QFileInfo(file_).size())),
        false);
    noteFolder(file_);
    Q_EMIT written(file_);
}

void ExportDialog::noteBusy(bool isBusy) {
    for (QWidget* input :
         {static_cast<QWidget*>(track_), static_cast<QWidget*>(kind_),
          static_cast<QWidget*>(tolerance_), static_cast<QWidget*>(radii_),
          static_cast<QWidget*>(step_), static_cast<QWidget*>(cutter_), static_cast<QWidget*>(go_)})
        input->setEnabled(!isBusy);
    stop_->setEnabled(isBusy);
    progress_->setVisible(isBusy);
    progress_->setValue(0);
}

void ExportDialog::say(const QString& text, bool isWarning) {
    setMessage(*message_, text, isWarning);
}

void ExportDialog::done(int result) {
    stop();
    QDialog::done(result);
}

} // namespace lobewright::ui
