#pragma once

#include "core/editing/lift_grips.h"
#include "ui/base/shown.h"
#include "ui/base/units.h"
#include "ui/handles/hand.h"
#include "ui/plots/turn/turn_canvas.h"

#include <QObject>

#include <optional>

namespace lobewright::ui {

using editing::LiftGrip;

/// Bounds and knots of the tracks as handles on a plot of lift over the shaft angle, knots also on
/// the velocity or acceleration laid over it (right axis). A double click on a free place of a
/// curve puts a knot there, Insert one at the common angle; Backspace frees the slope of the chosen
/// one.
class LiftHandles : public QObject {
    Q_OBJECT

  public:
    LiftHandles(TurnCanvas& canvas, QObject* parent);

    /// `derivative`: the curve on the right axis that has handles too; lift: none.
    void show(const GeometryPointer& geometry, LiftGrip::Curve derivative = LiftGrip::Curve::lift);

    /// Where a grip stands on the canvas, first repetition in view [px]; for tests and hints.
    std::optional<QPointF> placeOf(End end, LiftGrip::Kind kind, int index,
                                   LiftGrip::Curve curve = LiftGrip::Curve::lift);

    /// Whether a knot can be put in at all, one is chosen, and its slope is prescribed.
    bool hasKnots() const;
    bool knotChosen() const { return chosenKnot() != nullptr; }
    bool slopeChosen() const;

    bool eventFilter(QObject* watched, QEvent* event) override;

  public Q_SLOTS:
    /// At the common angle, on the track of what is chosen, else on the first that has knots.
    void insertKnot();
    void removeChosen();
    void freeChosenSlope();

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();

  private:
    /// What the places of the handles depend on.
    struct Scale {
        GeometryPointer geometry;
        QCPRange angle, left, right;
        QRect inside;
        UnitSystem units = UnitSystem::metric;
        bool operator==(const Scale&) const = default;
    };
    Scale scale() const;
    const QCPAxis& axisOf(LiftGrip::Curve curve) const;
    /// Plotted value for one unit of a grip's value, mm, mm/deg or mm/deg².
    double plottedPerUnit(LiftGrip::Curve curve) const;
    double plottedAt(End end, LiftGrip::Curve curve, double theta) const;
    QString plottedWords(LiftGrip::Curve curve, double value) const;
    void freshen();
    void addHandles(LiftGrip::Curve curve, std::vector<Handle>& handles);
    void addRepetitions(const Handle& handle, const LiftGrip& grip, End shown,
                        std::vector<Handle>& handles);
    const LiftGrip* chosenKnot() const;
    bool addKnotOnCurve(const QPointF& at);
    bool addKnotAt(End end, double theta, const QPointF& pointer);
    void say(const QString& text, const QPointF& at) const;

    TurnCanvas& canvas_;
    Hand* hand_;
    GeometryPointer geometry_;
    LiftGrip::Curve derivative_ = LiftGrip::Curve::lift;
    std::optional<Scale> fresh_;  ///< that the handles were made for
    std::vector<LiftGrip> grips_; ///< of the handles, by index
};

} // namespace lobewright::ui
