#pragma once

#include <QString>

#include <functional>

class QPoint;
class QWidget;

/// What a widget does at events that it need not be a class of its own for.
namespace lobewright::ui {

/// Calls `act` whenever the widget has other tones or letters.
void whenLookChanges(QWidget& widget, std::function<void()> act);

/// What is said at the pointer, by where it is; empty: the tooltip of the whole widget.
void helpByPlace(QWidget& widget, std::function<QString(const QPoint&)> textAt);

} // namespace lobewright::ui
