#pragma once

#include <QMenu>
#include <QWidget>

namespace lobewright::ui {

/// Opens the options of a view where it is clicked with the right button.
template <class View>
void offerOptions(View& view) {
    view.setContextMenuPolicy(Qt::CustomContextMenu);
    QObject::connect(&view, &QWidget::customContextMenuRequested, &view,
                     [&view](const QPoint& place) {
                         QMenu menu(&view);
                         view.addOptions(menu);
                         menu.exec(view.mapToGlobal(place));
                     });
}

} // namespace lobewright::ui
