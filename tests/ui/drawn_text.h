#pragma once

#include <QColor>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QWidget>

#include <vector>

namespace lobewright::ui::test {

/// A piece of text as a widget draws it, in the widget's pixels.
struct DrawnText {
    QString text;
    QRectF box;          ///< upright hull of the letters' box
    QRectF clip;         ///< what may be drawn on when the text was; null: everything
    bool turned = false; ///< not written from left to right
};

/// The text that a widget itself draws, its children's left out; axis labels and marks of a plot
/// included.
std::vector<DrawnText> drawnText(QWidget& widget);

/// A line as a widget strokes it, in the widget's pixels.
struct DrawnStroke {
    QPolygonF line;
    QColor colour;
    QRectF clip; ///< null: everything
};
struct Drawn {
    std::vector<DrawnText> texts;
    std::vector<DrawnStroke> strokes;
};
Drawn drawn(QWidget& widget);
/// Whether any part of the stroke lies in the box.
bool meets(const DrawnStroke& stroke, const QRectF& box);

} // namespace lobewright::ui::test
