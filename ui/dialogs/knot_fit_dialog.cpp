#include "ui/dialogs/knot_fit_dialog.h"

#include "core/editing/knot_edits.h"
#include "core/motion/jumps.h"
#include "core/units.h"
#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/message_line.h"
#include "ui/base/units.h"
#include "ui/dialogs/knot_fit_plot.h"
#include "ui/document/document.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace lobewright::ui {

namespace {

constexpr double roundingOff = 1e-6; // [µm]

constexpr int mostByTolerance = 100; // then the tolerance is out of reach of a hand

struct Peaks {
    double velocity = 0.0, acceleration = 0.0;
};

Peaks peaksOf(const motion::LiftCurve& curve) {
    const Samples phi = Samples::LinSpaced(1441, 0.0, curve.period());
    const motion::LiftSamples lift = curve.sample(phi);
    return {lift.y1.abs().maxCoeff(), lift.y2.abs().maxCoeff()};
}

} // namespace

KnotFitDialog::KnotFitDialog(Document& document, End end, QWidget* parent)
    : QDialog(parent), document_(document) {
    setObjectName(QStringLiteral("knotFit"));
    setWindowTitle(tr("Turn a track into knots"));
    auto* form = buildForm(end);
    plot_ = new KnotFitPlot(this);
    message_ = messageLine(4, this);
    auto* buttons = footOf(*this, QDialogButtonBox::Cancel);
    use_ = addButton(*buttons, tr("Turn into &knots"), QDialogButtonBox::AcceptRole, "use");
    use_->setDefault(true);
    columnOf(this, {form, {plot_, 1}, message_, buttons});
    connect(buttons, &QDialogButtonBox::accepted, this, &KnotFitDialog::useFit);
    resize(640, 640);
    choiceChanged();
}

QFormLayout* KnotFitDialog::buildForm(End end) {
    auto* form = new QFormLayout;
    track_ = new QComboBox(this);
    track_->setObjectName(QStringLiteral("track"));
    const design::Design& design = document_.design();
    track_->addItem(coreText(editing::trackLabel(design, End::inlet)),
                    static_cast<int>(End::inlet));
    if (design.tracks.exhaust) {
        track_->addItem(coreText(editing::trackLabel(design, End::exhaust)),
                        static_cast<int>(End::exhaust));
    }
    track_->setCurrentIndex(track_->findData(static_cast<int>(editing::patternEnd(design, end))));
    choice_ = new QComboBox(this);
    choice_->setObjectName(QStringLiteral("choice"));
    choice_->addItems({tr("As many knots as a tolerance asks"), tr("A number of knots")});
    tolerance_ = numberBox("tolerance", QStringLiteral("µm"), 0.01, 5000.0,
                           motion::FitOptions().tolerance / units::micrometre, 2, this);
    tolerance_->setToolTip(tr("Largest difference between the lifts"));
    count_ = new QSpinBox(this);
    count_->setObjectName(QStringLiteral("count"));
    count_->setRange(3, motion::mostFittedKnots);
    count_->setValue(12);
    count_->setToolTip(tr("Knots of one repetition of the pattern; fewer are easier to pull, more "
                          "follow more closely"));
    form->addRow(tr("&Track"), track_);
    form->addRow(tr("&Make"), choice_);
    form->addRow(tr("T&olerance"), tolerance_);
    form->addRow(tr("K&nots"), count_);
    connect(track_, &QComboBox::currentIndexChanged, this, &KnotFitDialog::refit);
    connect(choice_, &QComboBox::currentIndexChanged, this, &KnotFitDialog::choiceChanged);
    connect(tolerance_, &QDoubleSpinBox::valueChanged, this, &KnotFitDialog::refit);
    connect(count_, &QSpinBox::valueChanged, this, &KnotFitDialog::refit);
    return form;
}

End KnotFitDialog::end() const {
    return static_cast<End>(track_->currentData().toInt());
}

void KnotFitDialog::choiceChanged() {
    const bool byTolerance = choice_->currentIndex() == static_cast<int>(Choice::tolerance);
    tolerance_->setEnabled(byTolerance);
    count_->setEnabled(!byTolerance);
    refit();
}

void KnotFitDialog::refit() {
    const auto curve = motion::LiftCurve::make(document_.design().tracks[end()]);
    const bool byTolerance = choice_->currentIndex() == static_cast<int>(Choice::tolerance);
    const auto fit =
        !curve ? Result<motion::KnotFit>(curve.problems())
        : byTolerance
            ? motion::fitKnots(*curve, {unitFor(QStringLiteral("µm")).metric(tolerance_->value()) *
                                            units::micrometre,
                                        mostByTolerance})
            : motion::fitKnotCount(*curve, count_->value());
    fit_ = fit ? std::optional(*fit) : std::nullopt;
    use_->setEnabled(fit_.has_value());
    if (fit_) {
        showFit(*curve);
    } else {
        say(coreText(fit.problems().front().message), true);
    }
}

void KnotFitDialog::showFit(const motion::LiftCurve& curve) {
    const motion::LiftCurve made = motion::LiftCurve::make({curve.lobes(), fit_->shape}).value();
    const double omega = document_.design().running.speed;
    plot_->setEnd(end());
    plot_->show(curve, made, fit_->shape, omega);
    const Peaks peaks = peaksOf(curve);
    const auto at = [](double angle) {
        return localNumbers(QString::number(angle / units::degree, 'f', 1));
    };
    const auto share = [](double part, double whole) {
        return localNumbers(QString::number(100.0 * part / whole, 'g', 2));
    };
    const double off = fit_->largestError / units::micrometre;
    QString text =
        off < roundingOff
            ? tr("%1 knots; they give the track as it is.").arg(fit_->shape.knots.size())
            : tr("%1 knots. Off by at most: lift %2 at %3°; velocity %4 (%5 % of its "
                 "peak) at %6°; acceleration %7 (%8 % of its peak) at %9°.")
                  .arg(fit_->shape.knots.size())
                  .arg(quantityText(off, QStringLiteral("µm")), at(fit_->angle),
                       quantityText(fit_->slope->value * omega, QStringLiteral("m/s")),
                       share(fit_->slope->value, peaks.velocity), at(fit_->slope->angle),
                       quantityText(fit_->curvature->value * omega * omega, QStringLiteral("m/s²")),
                       share(fit_->curvature->value, peaks.acceleration),
                       at(fit_->curvature->angle));
    if (!motion::jumps(curve, 2).empty()) {
        text += QLatin1Char(' ') + tr("The jumps of its acceleration are rounded off: a spline has "
                                      "none.");
    }
    const bool isShort =
        choice_->currentIndex() == static_cast<int>(Choice::tolerance) && !fit_->withinTolerance;
    if (isShort)
        text += QLatin1Char(' ') + tr("That is beyond the tolerance; more knots are not made.");
    say(text, isShort);
}

void KnotFitDialog::useFit() {
    if (!fit_)
        return;
    const Edit edit = editing::knotsEdit(document_.design(), end(), *fit_);
    if (const Problems problems = document_.apply(edit); !problems.empty()) {
        say(tr("The design would break a rule: %1").arg(coreText(problems.front().message)), true);
        return;
    }
    accept();
}

void KnotFitDialog::say(const QString& text, bool isWarning) {
    setMessage(*message_, text, isWarning);
}

} // namespace lobewright::ui
