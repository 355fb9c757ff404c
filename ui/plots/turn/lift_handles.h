#pragma once

#include "core/editing/lift_grips.h"
#include "ui/base/shown.h"
#include "ui/base/units.h"
#include "ui/plots/turn/turn_canvas.h"

#include <QObject>

#include <optional>

namespace lobewright::ui {

using editing::LiftGrip;

/// Bounds and knots of the tracks as handles on a plot of lift over the shaft angle, knots also on
/// the velocity or acceleration laid over it (right axis).
/// Drag with the mouse (Shift: fine); or click one and use the arrow keys; double click asks for
/// its exact number, on a free place of a curve it puts a knot there. Insert puts a knot at the
/// common angle, Delete takes the chosen one out, Backspace frees its slope. A bound, and a knot on
/// a derivative, keeps to the direction in which it is first moved.
class LiftHandles : public QObject, public Grips {
    Q_OBJECT

  public:
    LiftHandles(TurnCanvas& canvas, QObject* parent);

    /// `derivative`: the curve on the right axis that has handles too; lift: none.
    void show(const GeometryPointer& geometry, LiftGrip::Curve derivative = LiftGrip::Curve::lift);

    bool press(const QMouseEvent& event) override;
    bool drag(const QMouseEvent& event) override;
    bool release() override;
    bool hover(const QPointF& at) override;
    bool key(const QKeyEvent& event) override;
    bool doubleClick(const QPointF& at) override;

    /// Where a grip stands on the canvas, first repetition in view [px]; for tests and hints.
    std::optional<QPointF> placeOf(End end, LiftGrip::Kind kind, int index,
                                   LiftGrip::Curve curve = LiftGrip::Curve::lift) const;

    /// Whether a knot can be put in at all, one is chosen, and its slope is prescribed.
    bool hasKnots() const;
    bool knotChosen() const;
    bool slopeChosen() const;

  public Q_SLOTS:
    /// At the common angle, on the track of what is chosen, else on the first that has knots.
    void insertKnot();
    void removeChosen();
    void freeChosenSlope();

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    void fieldWanted(const QString& path);

  private:
    struct Handle {
        LiftGrip grip;
        double theta = 0.0;     ///< [rad]
        double plotted = 0.0;   ///< on its axis
        End shown = End::inlet; ///< whose curve it lies on; a pattern of both lies on two
    };
    const QCPAxis& axisOf(LiftGrip::Curve curve) const;
    /// How the values of its axis are shown now: mm, m/s, m/s² or their inch counterparts.
    static Unit unitOf(LiftGrip::Curve curve);
    /// Step of a grip's value, plain in the unit shown now.
    static double shownStep(LiftGrip::Curve curve, bool fine);
    /// Plotted value for one unit of a grip's value, mm, mm/deg or mm/deg².
    double plottedPerUnit(LiftGrip::Curve curve) const;
    double plottedAt(End end, LiftGrip::Curve curve, double theta) const;
    void addHandles(LiftGrip::Curve curve);
    QPointF placeOf(const Handle& handle) const;
    std::optional<size_t> at(const QPointF& position) const;
    bool isSame(const Handle& handle, const std::optional<LiftGrip>& grip) const;
    std::optional<LiftGrip> grip(const LiftGrip& like) const;
    void moveTo(double angle, double value);
    bool nudge(const QKeyEvent& event);
    bool addKnotAt(End end, double theta, const QPointF& pointer);
    void apply(const std::optional<Edit>& edit);
    void say(const QString& text, const QPointF& at) const;
    QString valueOf(const Handle& handle) const;
    const Handle* namedHandle() const;
    void paint(QCPPainter& painter) const;
    void paintLabel(QCPPainter& painter) const;

    TurnCanvas& canvas_;
    GeometryPointer geometry_;
    LiftGrip::Curve derivative_ = LiftGrip::Curve::lift;
    std::vector<Handle> handles_;
    std::optional<LiftGrip> hovered_, selected_;
    std::optional<LiftGrip> released_; ///< let go of: unnamed until the pointer has left it
    QPointF pointer_;
    struct Drag {
        LiftGrip grip; ///< as it was when pressed
        QPointF from;
        bool alongAngle = true, alongValue = true;
        bool decided = false;
    };
    std::optional<Drag> drag_;
};

} // namespace lobewright::ui
