#include "ui/dialogs/lift_import_dialog.h"

#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/faults.h"
#include "ui/base/layouts.h"
#include "ui/base/message_line.h"
#include "ui/base/side_words.h"
#include "ui/base/units.h"
#include "ui/dialogs/lift_import_plot.h"
#include "ui/dialogs/table_file.h"
#include "ui/document/document.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QtConcurrentRun>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

using units::degree;
using units::micrometre;

constexpr qint64 largestFile = 16 << 20; ///< no lift table is larger [bytes]
constexpr int settleTime = 150;          ///< [ms]

} // namespace

LiftImportDialog::LiftImportDialog(Document& document, QWidget* parent)
    : QDialog(parent), document_(document) {
    setObjectName(QStringLiteral("liftImport"));
    setWindowTitle(tr("Lift table to knots"));
    auto* form = buildForm();
    plot_ = new LiftImportPlot(this);
    message_ = messageLine(4, this);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    use_ = addButton(*buttons, tr("&Use as track"), QDialogButtonBox::AcceptRole, "use");
    columnOf(this, {form, {plot_, 1}, message_, buttons});
    settle_.setSingleShot(true);
    settle_.setInterval(settleTime);
    connect(&settle_, &QTimer::timeout, this, &LiftImportDialog::refit);
    connect(&watcher_, &QFutureWatcherBase::finished, this, &LiftImportDialog::fitted);
    connect(buttons, &QDialogButtonBox::accepted, this, &LiftImportDialog::useFit);
    say(tr("A table of angle in degrees and lift in mm over one repetition of the pattern or a "
           "whole turn, measured or from elsewhere."),
        false);
    use_->setEnabled(false);
    resize(680, 680);
}

QFormLayout* LiftImportDialog::buildForm() {
    auto* form = new QFormLayout;
    file_ = new TableFile(tr("Open a lift table"), largestFile, this);
    track_ = new QComboBox(this);
    track_->setObjectName(QStringLiteral("track"));
    const auto& mechanism = document_.design().mechanism;
    for (const End end : mechanism.pistons())
        track_->addItem(trackTitle(end, mechanism.isOneSided()), static_cast<int>(end));
    tolerance_ = numberBox("tolerance", QStringLiteral("µm"), 0.01, 1000.0,
                           exchange::finestProposal / micrometre, 2, this);
    tolerance_->setToolTip(
        tr("Largest residual allowed; proposed from the noise measured in the table. Below the "
           "noise the fit follows it"));
    lobes_ = new QSpinBox(this);
    lobes_->setObjectName(QStringLiteral("lobes"));
    lobes_->setRange(0, 24);
    lobes_->setSpecialValueText(tr("from the table"));
    knots_ = new QSpinBox(this);
    knots_->setObjectName(QStringLiteral("knots"));
    knots_->setRange(3, 500);
    knots_->setValue(exchange::ImportOptions().mostKnots);
    form->addRow(tr("Table"), file_);
    form->addRow(tr("&Track"), track_);
    form->addRow(tr("&Lobes per revolution"), lobes_);
    form->addRow(tr("T&olerance"), tolerance_);
    form->addRow(tr("Maximum &knots"), knots_);
    connect(file_, &TableFile::opened, this, [this](const QByteArray& table) {
        table_ = table;
        isToleranceOwn_ = false;
        settle_.start();
    });
    connect(file_, &TableFile::refused, this, [this](const QString& why) { say(why, true); });
    connect(tolerance_, &QDoubleSpinBox::valueChanged, this, [this] {
        isToleranceOwn_ = true;
        settle_.start();
    });
    for (QSpinBox* box : {lobes_, knots_})
        connect(box, &QSpinBox::valueChanged, &settle_, QOverload<>::of(&QTimer::start));
    return form;
}

bool LiftImportDialog::openTable(const QString& file) {
    return file_->open(file);
}

void LiftImportDialog::takeTable(const QByteArray& table, const QString& name, End end,
                                 double tolerance) {
    table_ = table;
    file_->setName(name);
    track_->setCurrentIndex(track_->findData(static_cast<int>(end)));
    tolerance_->setValue(unitFor(QStringLiteral("µm")).shown(tolerance / micrometre));
    isToleranceOwn_ = true;
    settle_.start();
}

void LiftImportDialog::refit() {
    if (table_.isEmpty())
        return;
    fit_.reset();
    use_->setEnabled(false);
    say(tr("Fitting…"), false);
    const exchange::ImportOptions options{
        lobes_->value(),
        isToleranceOwn_ ? unitFor(QStringLiteral("µm")).metric(tolerance_->value()) * micrometre
                        : 0.0,
        knots_->value()};
    // A fit that is still running for older settings is no longer listened to.
    watcher_.setFuture(QtConcurrent::run([table = table_, options]() -> Answer {
        return guardedWork([&] {
            return exchange::importLift({table.constData(), static_cast<size_t>(table.size())},
                                        options);
        });
    }));
}

void LiftImportDialog::fitted() {
    const Answer answer = watcher_.result();
    if (!answer) {
        plot_->clear();
        say(TableFile::wordsOf(answer.problems().front()), true);
        return;
    }
    fit_ = *answer;
    if (!isToleranceOwn_) {
        const QSignalBlocker quiet(tolerance_);
        tolerance_->setValue(unitFor(QStringLiteral("µm")).shown(fit_->tolerance / micrometre));
    }
    showFit();
}

void LiftImportDialog::showFit() {
    plot_->setFit(*fit_);
    use_->setEnabled(fit_->withinTolerance);
    const auto& knots = std::get<motion::KnotShape>(fit_->pattern.shape).knots;
    QString text = tr("%1 rows, %2 knots, lobes per revolution: %3. Largest residual %4 at %5°, "
                      "root mean square %6.")
                       .arg(fit_->rows.size())
                       .arg(knots.size())
                       .arg(fit_->pattern.lobes)
                       .arg(quantityText(fit_->largestResidual / micrometre, QStringLiteral("µm")))
                       .arg(fit_->angle / degree, 0, 'g', 5)
                       .arg(quantityText(fit_->meanSquareRoot / micrometre, QStringLiteral("µm")));
    const bool isFollowed = fit_->tolerance < fit_->proposedTolerance;
    if (!fit_->withinTolerance)
        text += QStringLiteral(" ") +
                tr("That is beyond the tolerance: allow more knots or a wider tolerance.");
    else if (isFollowed)
        text += QStringLiteral(" ") +
                tr("The tolerance is below what the noise explains, %1: the pattern follows noise.")
                    .arg(quantityText(fit_->proposedTolerance / micrometre, QStringLiteral("µm")));
    say(text + QLatin1Char('\n') + noiseWords(), !fit_->withinTolerance || isFollowed);
}

/// What the noise means for this engine: a force at the roller.
QString LiftImportDialog::noiseWords() const {
    const auto& design = document_.design();
    const End end = static_cast<End>(track_->currentData().toInt());
    const double force = fit_->accelerationNoise * design.running.speed * design.running.speed *
                         design.mechanism.pistonMass[end];
    double highest = 0.0;
    for (const exchange::ImportedRow& row : fit_->rows)
        highest = std::max(highest, std::abs(row.acceleration));
    const auto acceleration = [](double value) {
        return quantityText(value / units::millimetre, QStringLiteral("mm/rad²"));
    };
    return tr("Noise of the table %1. Acceleration up to %2, of which noise about %3: %4 at the "
              "running speed.")
        .arg(quantityText(fit_->noise / micrometre, QStringLiteral("µm")), acceleration(highest),
             acceleration(fit_->accelerationNoise), quantityText(force, QStringLiteral("N")));
}

void LiftImportDialog::useFit() {
    if (!fit_ || !fit_->withinTolerance)
        return;
    Edit edit;
    edit.text = tr("Import a lift table");
    design::Design design = document_.design();
    motion::Pattern pattern = fit_->pattern;
    pattern.shape = editing::readable(std::get<motion::KnotShape>(pattern.shape));
    if (static_cast<End>(track_->currentData().toInt()) == End::inlet)
        design.tracks.inlet = std::move(pattern);
    else
        design.tracks.exhaust = std::move(pattern);
    edit.replacement = std::move(design);
    if (const Problems problems = document_.apply(edit); !problems.empty()) {
        say(tr("The design would break a rule: %1").arg(coreText(problems.front().message)), true);
        return;
    }
    accept();
}

void LiftImportDialog::say(const QString& text, bool isWarning) {
    setMessage(*message_, text, isWarning);
}

} // namespace lobewright::ui
