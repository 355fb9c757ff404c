#include "ui/scene/solid/space_view.h"

#include <QLabel>
#include <QVBoxLayout>

#include <utility>

namespace lobewright::ui {

SpaceView::SpaceView(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("spaceView"));
    setAccessibleName(tr("3D view of the engine"));
    setToolTip(tr("Drag to rotate the view, turn the wheel to zoom."));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
}

void SpaceView::showGeometry(const GeometryPointer& geometry) {
    geometry_ = geometry;
    if (solid_)
        solid_->showGeometry(geometry);
}

void SpaceView::showSolution(const SolutionPointer& solution) {
    solution_ = solution;
    geometry_ = nullptr;
    if (solid_)
        solid_->showSolution(solution);
}

void SpaceView::showEvent(QShowEvent* event) {
    if (!EngineSolid::isAvailable() && layout()->isEmpty()) {
        auto* label = new QLabel(tr("This needs OpenGL, which this machine does not offer."), this);
        label->setWordWrap(true);
        label->setAlignment(Qt::AlignCenter);
        layout()->addWidget(label);
    }
    if (EngineSolid::isAvailable() && !solid_) {
        solid_ = new EngineSolid(cursor_, this);
        solid_->setView(view_);
        if (solution_)
            solid_->showSolution(solution_);
        if (geometry_)
            solid_->showGeometry(geometry_);
        layout()->addWidget(solid_);
        setFocusProxy(solid_);
    }
    QWidget::showEvent(event);
}

void SpaceView::hideEvent(QHideEvent* event) {
    if (solid_) {
        view_ = solid_->view();
        std::exchange(solid_, nullptr)->deleteLater();
    }
    QWidget::hideEvent(event);
}

} // namespace lobewright::ui
