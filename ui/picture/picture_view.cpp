#include "ui/picture/picture_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {
constexpr double grasp = 8.0;                       ///< of a placed point [pixel of the screen]
constexpr double mostZoom = 40.0, leastZoom = 0.02; ///< pixels of the screen a pixel
constexpr double zoomStep = 1.25;
constexpr size_t mostSteps = 500; ///< of undo
} // namespace

PictureView::PictureView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(320, 240);
    setCursor(Qt::CrossCursor);
    setAccessibleName(tr("Picture to measure in"));
}

void PictureView::setImage(const QImage& image) {
    image_ = image;
    marks_ = {};
    past_.clear();
    future_.clear();
    showAll();
    Q_EMIT changed();
}

void PictureView::setTool(PictureTool tool) {
    tool_ = tool;
    if (!marks_.open.empty() && marks_.tool != tool) {
        PictureMarks marks = marks_;
        marks.open.clear();
        change(marks);
    }
    update();
}

void PictureView::change(PictureMarks marks) {
    if (marks == marks_)
        return;
    past_.push_back(std::exchange(marks_, std::move(marks)));
    if (past_.size() > mostSteps)
        past_.erase(past_.begin());
    future_.clear();
    update();
    Q_EMIT changed();
}

void PictureView::undo() {
    if (past_.empty())
        return;
    future_.push_back(std::exchange(marks_, std::move(past_.back())));
    past_.pop_back();
    update();
    Q_EMIT changed();
}

void PictureView::redo() {
    if (future_.empty())
        return;
    past_.push_back(std::exchange(marks_, std::move(future_.back())));
    future_.pop_back();
    update();
    Q_EMIT changed();
}

QPointF PictureView::shown(picture::Place place) const {
    return corner_ + zoom_ * QPointF(place.x, place.y);
}

picture::Place PictureView::at(const QPointF& point) const {
    const QPointF place = (point - corner_) / zoom_;
    return {place.x(), place.y()};
}

void PictureView::showAll() {
    isFitted_ = true;
    if (image_.isNull())
        return;
    zoom_ = std::min(width() / static_cast<double>(image_.width()),
                     height() / static_cast<double>(image_.height()));
    corner_ = 0.5 * QPointF(width() - zoom_ * image_.width(), height() - zoom_ * image_.height());
    update();
}

void PictureView::zoom(double factor, const QPointF& about) {
    const double before = zoom_;
    zoom_ = std::clamp(zoom_ * factor, leastZoom, mostZoom);
    corner_ = about + (corner_ - about) * (zoom_ / before);
    isFitted_ = false;
    update();
}

void PictureView::resizeEvent(QResizeEvent*) {
    if (isFitted_)
        showAll();
}

picture::Place* PictureView::placeNear(const QPointF& point) {
    picture::Place* nearest = nullptr;
    double least = grasp;
    const auto look = [&](std::vector<picture::Place>& places) {
        for (picture::Place& place : places) {
            const double off =
                std::hypot(shown(place).x() - point.x(), shown(place).y() - point.y());
            if (off < least) {
                least = off;
                nearest = &place;
            }
        }
    };
    look(marks_.open);
    for (PictureMark& mark : marks_.readings)
        look(mark.places);
    for (auto* mark : {&marks_.scale, &marks_.axis}) {
        if (*mark)
            look((*mark)->places);
    }
    return nearest;
}

void PictureView::mousePressEvent(QMouseEvent* event) {
    pressed_ = mouse_ = event->position();
    if (image_.isNull())
        return;
    if (event->button() != Qt::LeftButton) {
        isMoving_ = true;
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    beforeDrag_ = marks_;
    dragged_ = placeNear(event->position());
}

void PictureView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF step = event->position() - mouse_;
    mouse_ = event->position();
    isOver_ = true;
    if (isMoving_) {
        corner_ += step;
        isFitted_ = false;
    } else if (dragged_) {
        dragged_->x += step.x() / zoom_;
        dragged_->y += step.y() / zoom_;
        Q_EMIT changed();
    }
    update();
}

void PictureView::mouseReleaseEvent(QMouseEvent* event) {
    if (isMoving_) {
        isMoving_ = false;
        setCursor(Qt::CrossCursor);
        return;
    }
    if (image_.isNull() || event->button() != Qt::LeftButton)
        return;
    if (dragged_) {
        dragged_ = nullptr;
        PictureMarks moved = std::exchange(marks_, beforeDrag_);
        change(std::move(moved));
        return;
    }
    PictureMarks marks = marks_;
    marks.place(tool_, at(pressed_));
    change(marks);
    if (tool_ == PictureTool::scale && marks_.open.empty() && marks_.scale)
        Q_EMIT scalePlaced();
}

void PictureView::mouseDoubleClickEvent(QMouseEvent* event) {
    mousePressEvent(event);
}

void PictureView::leaveEvent(QEvent*) {
    isOver_ = false;
    update();
}

void PictureView::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (!image_.isNull() && notches != 0.0)
        zoom(std::pow(zoomStep, notches), event->position());
    event->accept();
}

/// What the arrow keys move: the place that was put last.
picture::Place* PictureView::lastPlace() {
    if (!marks_.open.empty())
        return &marks_.open.back();
    if (tool_ == PictureTool::scale)
        return marks_.scale ? &marks_.scale->places.back() : nullptr;
    if (tool_ == PictureTool::axis)
        return marks_.axis ? &marks_.axis->places.back() : nullptr;
    return marks_.readings.empty() ? nullptr : &marks_.readings.back().places.back();
}

void PictureView::nudge(double right, double down) {
    const PictureMarks before = marks_;
    if (picture::Place* place = lastPlace()) {
        place->x += right;
        place->y += down;
        PictureMarks moved = std::exchange(marks_, before);
        change(std::move(moved));
    }
}

void PictureView::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? 0.2 : 1.0;
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: {
        PictureMarks marks = marks_;
        if (marks.finish())
            change(marks);
        return; // not the default button of the dialog
    }
    case Qt::Key_Escape:
        if (marks_.open.empty())
            break;
        {
            PictureMarks marks = marks_;
            marks.open.clear();
            change(marks);
        }
        return;
    case Qt::Key_Backspace:
        undo();
        return;
    case Qt::Key_Left:
        nudge(-step, 0.0);
        return;
    case Qt::Key_Right:
        nudge(step, 0.0);
        return;
    case Qt::Key_Up:
        nudge(0.0, -step);
        return;
    case Qt::Key_Down:
        nudge(0.0, step);
        return;
    case Qt::Key_Plus:
        zoom(zoomStep, QRectF(rect()).center());
        return;
    case Qt::Key_Minus:
        zoom(1.0 / zoomStep, QRectF(rect()).center());
        return;
    case Qt::Key_Home:
        showAll();
        return;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

} // namespace lobewright::ui
