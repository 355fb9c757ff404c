#pragma once

#include <QBoxLayout>
#include <QWidget>

#include <initializer_list>

/// Parts of a widget below or beside one another.
namespace lobewright::ui {

/// A widget or a layout within a layout, and its share of the room that is left.
struct LayoutPart {
    LayoutPart(QWidget* part, int share = 0) : widget(part), stretch(share) {}
    LayoutPart(QLayout* part, int share = 0) : layout(part), stretch(share) {}

    QWidget* widget = nullptr;
    QLayout* layout = nullptr;
    int stretch = 0;
};
using LayoutParts = std::initializer_list<LayoutPart>;

/// Parts of `owner` (null: the layout is to stand within another one) below one another.
QVBoxLayout* columnOf(QWidget* owner, LayoutParts parts);
/// With edges and a gap of their own [px]; a gap of −1: that of the style.
QVBoxLayout* columnOf(QWidget* owner, const QMargins& edges, int gap, LayoutParts parts);
/// The same beside one another.
QHBoxLayout* rowOf(QWidget* owner, LayoutParts parts);
QHBoxLayout* rowOf(QWidget* owner, const QMargins& edges, int gap, LayoutParts parts);

} // namespace lobewright::ui
