#include "ui/document/change_design.h"

#include "ui/document/document.h"

namespace lobewright::ui {

ChangeDesign::ChangeDesign(Document& document, design::Design before, design::Design after,
                           const QString& text, const QString& mergeKey, quint64 drag)
    : QUndoCommand(text), document_(document), before_(std::move(before)), after_(std::move(after)),
      mergeKey_(mergeKey), drag_(drag) {}

void ChangeDesign::undo() {
    document_.setDesign(before_, Document::Change::settled);
}

void ChangeDesign::redo() {
    document_.setDesign(after_, drag_ ? Document::Change::dragging : Document::Change::settled);
    drag_ = document_.isDragging() ? drag_ : 0; // redone later it is no drag any more
}

int ChangeDesign::id() const {
    return mergeKey_.isEmpty() ? -1 : 1;
}

bool ChangeDesign::mergeWith(const QUndoCommand* other) {
    const auto* next = static_cast<const ChangeDesign*>(other);
    if (next->mergeKey_ != mergeKey_ || next->drag_ != drag_ || !drag_)
        return false;
    after_ = next->after_;
    setObsolete(after_ == before_);
    return true;
}

} // namespace lobewright::ui
