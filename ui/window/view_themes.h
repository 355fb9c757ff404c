#pragma once

#include "ui/window/views.h"

#include <functional>

class QMenu;

namespace lobewright::ui {

/// Views of one subject, as menus group them.
struct ViewTheme {
    QString title;
    QStringList views; ///< keys
};
const std::vector<ViewTheme>& viewThemes();

/// Fills a menu with a submenu for each theme. Every entry has its key as data; `checked`: the key
/// of the entry with a mark, may be empty.
void addViewMenus(QMenu& menu, const Views& views, const QString& checked,
                  const std::function<void(const QString&)>& choose);

} // namespace lobewright::ui
