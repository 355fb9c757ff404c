#pragma once

#include "ui/scene/base/turn_view.h"
#include "ui/scene/section/section_frame.h"

class QMenu;

namespace lobewright::ui {

/// The cam-track cylinder above a pair of the same bore, strokes and ports on cranks, both to one
/// scale and on one clock: what the one has done when the other has turned so far.
class ClockView : public TurnView {
    Q_OBJECT

  public:
    /// How fast the cranks turn beside the shaft of the cam tracks.
    enum class Gear {
        sameSpeed,  ///< turn for turn
        sameStrokes ///< as many power strokes a second
    };
    Q_ENUM(Gear)

    explicit ClockView(TurnCursor& cursor, QWidget* parent = nullptr);

    Gear gear() const { return gear_; }
    void setGear(Gear gear);
    /// Crank angle from inner dead centre of the pair [rad] when the shaft stands at θ.
    double crankAngle(End end, double theta) const;
    /// Lift of a piston on cranks [m].
    double crankLift(End end, double theta) const;
    /// The gas cycle of a turn that cylinder 1 is in, from 1; it begins at the last port closing.
    int gasCycle(double theta) const;

    void addOptions(QMenu& menu);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override { return {}; }

  private:
    double turnFromInnerDeadCentre(double theta) const;
    void paintCranks(QPainter& painter) const;
    void paintCrank(QPainter& painter, End end) const;
    void paintWords(QPainter& painter) const;
    QString camWords() const;
    QString crankWords() const;

    Gear gear_ = Gear::sameSpeed;
    SectionFrame cam_;
    QRectF crankArea_;
    double scale_ = 1.0; ///< of the cranks [px/m]
};

} // namespace lobewright::ui
