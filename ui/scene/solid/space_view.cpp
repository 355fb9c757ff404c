#include "ui/scene/solid/space_view.h"

#include "ui/base/controls.h"
#include "ui/base/layouts.h"
#include "ui/plots/base/plot_export.h"

#include <QLabel>
#include <QMenu>
#include <QToolButton>
#include <QVBoxLayout>

#include <utility>

namespace lobewright::ui {

SpaceView::SpaceView(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setObjectName(QStringLiteral("spaceView"));
    describe(*this, tr("3D view of the engine"),
             tr("Drag to rotate the view, turn the wheel to zoom."));
    columnOf(this, {0, 0, 0, 0}, 0, {});
}

void SpaceView::addOptions(QMenu& menu) {
    if (names_)
        names_->addAction(menu);
    addPictureActions(menu, *this, tr("3D view of the engine"));
}

void SpaceView::setPartNames(PartNames& names) {
    names_ = &names;
    if (solid_)
        solid_->setPartNames(names);
}

QWidget* SpaceView::makeButtons() {
    auto* row = new QWidget(this);
    auto* layout = rowOf(row, {4, 0, 4, 0}, 4, {});
    const auto add = [&](const QString& text, const QString& tip) {
        auto* button = wordButton(text, tip, row);
        layout->addWidget(button);
        return button;
    };
    connect(add(tr("Whole"), tr("The whole engine, as at first (Home)")), &QToolButton::clicked,
            this, &SpaceView::showWhole);
    connect(
        add(tr("Along the shaft"), tr("Seen along the shaft: how the cylinders stand round it")),
        &QToolButton::clicked, this, &SpaceView::showAlongShaft);
    connect(add(tr("From the side"), tr("Seen across the shaft: pistons between the two tracks")),
            &QToolButton::clicked, this, &SpaceView::showFromSide);
    connect(add(tr("On a roller"), tr("Close to a roller of cylinder 1 on its track")),
            &QToolButton::clicked, this, &SpaceView::showRoller);
    auto* exploded =
        add(tr("Exploded"), tr("Tracks, pistons and rollers drawn apart along the shaft"));
    exploded->setCheckable(true);
    exploded->setChecked(view_.apart > 0.0F);
    connect(exploded, &QToolButton::toggled, this, &SpaceView::setExploded);
    layout->addStretch(1);
    return row;
}

void SpaceView::look(float azimuth, float height, float distance, bool onRoller) {
    if (!solid_)
        return;
    EngineSolid::View view = solid_->view();
    view.azimuth = azimuth;
    view.height = height;
    view.distance = distance;
    view.onRoller = onRoller;
    solid_->setView(view);
}

void SpaceView::showWhole() {
    const EngineSolid::View first;
    look(first.azimuth, first.height, first.distance, false);
}

void SpaceView::showAlongShaft() {
    look(-90.0F, 0.0F, 1.0F, false);
}

void SpaceView::showFromSide() {
    look(0.0F, 0.0F, 1.0F, false);
}

void SpaceView::showRoller() {
    look(232.0F, 36.0F, 0.28F, true); // from outside, on the face that it runs on
}

void SpaceView::setExploded(bool exploded) {
    if (!solid_)
        return;
    EngineSolid::View view = solid_->view();
    view.apart = exploded ? 1.0F : 0.0F;
    solid_->setView(view);
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
        if (names_)
            solid_->setPartNames(*names_);
        if (solution_)
            solid_->showSolution(solution_);
        if (geometry_)
            solid_->showGeometry(geometry_);
        if (!buttons_) {
            buttons_ = makeButtons();
            layout()->addWidget(buttons_);
        }
        static_cast<QVBoxLayout*>(layout())->addWidget(solid_, 1);
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
