#pragma once

#include "ui/scene/base/turn_view.h"
#include "ui/scene/tracks/unrolled_frame.h"

namespace lobewright::ui {

/// Both tracks unrolled over a turn with the rollers of all cylinders. Segment bounds, strokes and
/// knots can be dragged, knots also added (double click on the track, Insert) and taken out
/// (Delete); dragging the exhaust track along changes the exhaust lead.
class UnrolledTracks : public TurnView {
    Q_OBJECT

  public:
    explicit UnrolledTracks(TurnCursor& cursor, QWidget* parent = nullptr);
    const UnrolledFrame& frame() const { return frame_; }
    const TrackLimits& limits(End end) const { return limits_[end]; }
    void addOptions(QMenu& menu);

  public Q_SLOTS:
    /// The cylinder that a click brings to the clicked place; counted from 0.
    void setCylinder(int index);

  protected:
    void layOut() override;
    void paintDrawing(QPainter& painter) override;
    std::vector<Handle> makeHandles() const override;
    bool showsGas() const override { return false; }
    double radiansPerPixel() const override { return 1.0 / frame_.pixelsPerRadian(); }
    bool clickedGround(const QPointF& point) override;
    std::optional<Addition> additionAt(const QPointF& point) const override;
    std::optional<Addition> additionAtAngle() const override;

  private:
    std::optional<Addition> addition(End end, double u) const;
    void paintTrack(QPainter& painter, End end) const;
    void paintLimits(QPainter& painter, End end) const;
    void paintChain(QPainter& painter, End end) const;
    void paintMiddle(QPainter& painter) const;
    void paintRollers(QPainter& painter) const;
    void paintCaption(QPainter& painter, End end) const;
    double paintFigure(QPainter& painter, const QPointF& at, const QString& text, bool bad) const;

    UnrolledFrame frame_;
    PerEnd<TrackLimits> limits_;
    PerEnd<QPolygonF> surfaces_, pullSurfaces_, pitchCurves_;
    int cylinder_ = 0;
};

/// Handles on a track's pattern: one per bound between segments, or per knot, on every lobe.
std::vector<Handle> patternHandles(const ShownEngine& engine, const UnrolledFrame& frame, End end);
/// Grip that slides the exhaust track along the inlet track.
Handle leadHandle(const ShownEngine& engine, const UnrolledFrame& frame);

} // namespace lobewright::ui
