#pragma once

#include "ui/picture/picture_marks.h"

#include <QImage>
#include <QWidget>

namespace lobewright::ui {

/// A picture to click in: wheel zooms, the middle or right button moves it, a loupe follows the
/// mouse, placed points can be dragged or moved by the arrow keys. Every click can be undone.
class PictureView : public QWidget {
    Q_OBJECT

  public:
    explicit PictureView(QWidget* parent = nullptr);

    void setImage(const QImage& image);
    const QImage& image() const { return image_; }
    void setTool(PictureTool tool);
    PictureTool tool() const { return tool_; }

    const PictureMarks& marks() const { return marks_; }
    /// As an undo step of its own.
    void change(PictureMarks marks);
    bool canUndo() const { return !past_.empty(); }
    bool canRedo() const { return !future_.empty(); }
    void undo();
    void redo();

    /// Where a place of the picture is on the screen, and back.
    QPointF shown(picture::Place place) const;
    picture::Place at(const QPointF& point) const;
    void showAll();
    QSize sizeHint() const override { return {700, 520}; }

  Q_SIGNALS:
    void changed();
    /// The two places of the scale are there: how far are they apart?
    void scalePlaced();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void zoom(double factor, const QPointF& about);
    picture::Place* placeNear(const QPointF& point);
    picture::Place* lastPlace();
    void nudge(double right, double down);
    void paintMark(QPainter& painter, const PictureMark& mark, const QColor& colour) const;
    void paintLoupe(QPainter& painter) const;

    QImage image_;
    PictureTool tool_ = PictureTool::scale;
    PictureMarks marks_;
    std::vector<PictureMarks> past_, future_;
    double zoom_ = 1.0;    ///< pixels of the screen a pixel of the picture
    QPointF corner_;       ///< where the picture begins
    bool isFitted_ = true; ///< to the view, until the person zooms or moves
    QPointF mouse_, pressed_;
    bool isOver_ = false, isMoving_ = false;
    picture::Place* dragged_ = nullptr; ///< of marks_, while the button is down
    PictureMarks beforeDrag_;
};

} // namespace lobewright::ui
