#pragma once

#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/solid/engine_solid.h"

#include <QWidget>

class QMenu;

namespace lobewright::ui {

/// The place of the engine in space. The drawing and its OpenGL context exist only while it is
/// seen. Without OpenGL a sentence stands here instead.
class SpaceView : public QWidget {
    Q_OBJECT

  public:
    explicit SpaceView(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);
    void setPartNames(PartNames& names);
    QSize sizeHint() const override { return {520, 400}; }
    QSize minimumSizeHint() const override { return {240, 160}; }

    /// Null while out of sight.
    EngineSolid* solid() const { return solid_; }

  public Q_SLOTS:
    /// The whole engine from the first place.
    void showWhole();
    void showAlongShaft();
    void showFromSide();
    void showRoller();
    void setExploded(bool exploded);

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    QWidget* makeButtons();
    void look(float azimuth, float height, float distance, bool onRoller);

    TurnCursor& cursor_;
    GeometryPointer geometry_;
    SolutionPointer solution_;
    PartNames* names_ = nullptr;
    EngineSolid::View view_;
    EngineSolid* solid_ = nullptr;
    QWidget* buttons_ = nullptr;
};

} // namespace lobewright::ui
