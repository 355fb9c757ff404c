#include "ui/panels/track_shape_choice.h"

#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"

#include <QComboBox>
#include <QLabel>
#include <QToolButton>

#include <cmath>

namespace lobewright::ui {

TrackShapeChoice::TrackShapeChoice(End end, QWidget* parent)
    : QWidget(parent), end_(end), shape_(new QComboBox(this)), line_(buildLine()),
      shift_(new QLabel(this)) {
    shift_->setObjectName(QStringLiteral("knotShift"));
    shift_->setWordWrap(true);
    columnOf(this, {0, 0, 0, 0}, 0, {line_, shift_});
    connect(shape_, &QComboBox::activated, this,
            [this](int index) { Q_EMIT shapeWanted(static_cast<editing::TrackShape>(index)); });
}

QWidget* TrackShapeChoice::buildLine() {
    auto* line = new QWidget(this);
    auto* layout = new QHBoxLayout(line);
    layout->setContentsMargins(0, 4, 0, 4);
    auto* label = new QLabel(tr("Described by"), line);
    // The panel is narrow: long words of a language must not push the units out of sight.
    shape_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    shape_->setMinimumContentsLength(6);
    shape_->addItems({tr("Segments"), tr("Knots"), tr("Harmonics")});
    shape_->setToolTip(tr("Segments with motion laws, knots to pull by hand, or a sum of "
                          "waves. The lift is carried over as nearly as it can be."));
    label->setBuddy(shape_);
    toKnots_ = new QToolButton(line);
    toKnots_->setObjectName(QStringLiteral("toKnots"));
    toKnots_->setText(tr("To knots…"));
    toKnots_->setToolTip(
        tr("Turn this track into knots by a tolerance or by number, and see how far "
           "lift, velocity and acceleration stray (Ctrl+K)"));
    connect(toKnots_, &QToolButton::clicked, this, &TrackShapeChoice::knotsWanted);
    layout->addWidget(label, 1);
    layout->addWidget(shape_, 1);
    layout->addWidget(toKnots_);
    return line;
}

void TrackShapeChoice::show(const design::Design& design) {
    const bool own = end_ == End::inlet || design.tracks.exhaust.has_value();
    shape_->setCurrentIndex(static_cast<int>(editing::shapeOf(design.tracks[end_])));
    line_->setVisible(own);
    const bool isOnly = design.mechanism.isOneSided();
    shape_->setAccessibleName(isOnly               ? tr("Track described by")
                              : end_ == End::inlet ? tr("Inlet track described by")
                                                   : tr("Exhaust track described by"));
    toKnots_->setAccessibleName(isOnly               ? tr("Turn the track into knots")
                                : end_ == End::inlet ? tr("Turn the inlet track into knots")
                                                     : tr("Turn the exhaust track into knots"));
    const double shift = own ? editing::knotShift(design, end_) / units::millimetre : 0.0;
    const QString moved = quantityText(std::abs(shift), QStringLiteral("mm"), 2);
    shift_->setVisible(std::abs(shift) >= 0.005);
    shift_->setText((shift < 0.0 ? tr("Plots show lift = knot − %1: the lowest place of the curve "
                                      "counts as lift 0.")
                                 : tr("Plots show lift = knot + %1: the lowest place of the curve "
                                      "counts as lift 0."))
                        .arg(moved));
}

} // namespace lobewright::ui
