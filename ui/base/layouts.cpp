#include "ui/base/layouts.h"

namespace lobewright::ui {

namespace {

template <class Layout>
Layout* filled(QWidget* owner, LayoutParts parts) {
    auto* layout = new Layout(owner);
    for (const LayoutPart& part : parts) {
        if (part.widget)
            layout->addWidget(part.widget, part.stretch);
        else
            layout->addLayout(part.layout, part.stretch);
    }
    return layout;
}

template <class Layout>
Layout* spaced(Layout* layout, const QMargins& edges, int gap) {
    layout->setContentsMargins(edges);
    layout->setSpacing(gap);
    return layout;
}

} // namespace

QVBoxLayout* columnOf(QWidget* owner, LayoutParts parts) {
    return filled<QVBoxLayout>(owner, parts);
}

QVBoxLayout* columnOf(QWidget* owner, const QMargins& edges, int gap, LayoutParts parts) {
    return spaced(filled<QVBoxLayout>(owner, parts), edges, gap);
}

QHBoxLayout* rowOf(QWidget* owner, LayoutParts parts) {
    return filled<QHBoxLayout>(owner, parts);
}

QHBoxLayout* rowOf(QWidget* owner, const QMargins& edges, int gap, LayoutParts parts) {
    return spaced(filled<QHBoxLayout>(owner, parts), edges, gap);
}

} // namespace lobewright::ui
