#include "ui/editing/edit.h"

#include "ui/base/core_text.h"

namespace lobewright::ui {

Edit::Edit(editing::Change change)
    : text(coreText(change.text)), changes(std::move(change.fields)),
      replacement(std::move(change.replacement)),
      mergeKey(QString::fromStdString(change.mergeKey)) {}

} // namespace lobewright::ui
