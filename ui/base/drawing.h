#pragma once

#include <QPainter>

/// What shapes drawn next have: an outline, a ground, or both.
namespace lobewright::ui {

inline void fillOnly(QPainter& painter, const QBrush& ground) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
}

inline void outlineOnly(QPainter& painter, const QPen& line) {
    painter.setPen(line);
    painter.setBrush(Qt::NoBrush);
}

inline void fillAndOutline(QPainter& painter, const QBrush& ground, const QPen& line) {
    painter.setPen(line);
    painter.setBrush(ground);
}

} // namespace lobewright::ui
