#pragma once

#include "ui/base/background_work.h"
#include "ui/scene/base/turn_view.h"
#include "ui/scene/section/section_frame.h"

class QMenu;

namespace lobewright::study {
struct CrankCycle;
}

namespace lobewright::ui {

/// The cam-track cylinder above a pair of the same bore, strokes and ports on cranks, both to one
/// scale and on one clock: what the one has done when the other has turned so far. Each burns and
/// breathes in its own solved cycle; that of the cranks is solved in the background.
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
    ~ClockView() override;

    Gear gear() const { return gear_; }
    void setGear(Gear gear);
    /// Crank angle from inner dead centre of the pair [rad] when the shaft stands at θ.
    double crankAngle(End end, double theta) const;
    /// Lift of a piston on cranks [m].
    double crankLift(End end, double theta) const;
    /// How far a row of ports stands open on the cranks [m].
    double crankOpening(End side, const ports::Row& row, double theta) const;
    /// The gas between the pistons on cranks; nothing until its cycle has been solved.
    std::optional<GasMoment> crankGas(double theta) const;
    bool isComplete() override;
    /// The gas cycle of a turn that cylinder 1 is in, from 1; it begins at the last port closing.
    int gasCycle(double theta) const;

    void addOptions(QMenu& menu);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override { return {}; }

  private:
    double turnFromInnerDeadCentre(double theta) const;
    PerEnd<double> crankAngles(double theta) const;
    /// Solves the cycle of the cranks where that shown is of another engine or gear.
    void wantCranks(int settlingTime);
    void paintWords(QPainter& painter) const;
    QString camWords() const;
    QString crankWords() const;

    Gear gear_ = Gear::sameSpeed;
    SectionFrame cam_;
    QRectF crankArea_;
    double scale_ = 1.0; ///< of the cranks [px/m]
    /// Of the newest solution, or of one before while the next is being solved.
    std::shared_ptr<const study::CrankCycle> cranks_;
    struct Wanted {
        SolutionPointer solution;
        Gear gear = Gear::sameSpeed;
        bool operator==(const Wanted&) const = default;
    };
    Wanted wanted_; ///< what `cranks_` is of, or will be
    BackgroundWork work_;
};

} // namespace lobewright::ui
