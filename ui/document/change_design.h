#pragma once

#include "core/design/design.h"

#include <QUndoCommand>

namespace lobewright::ui {

class Document;

/// The one undo step there is: the design before and after. Steps of one drag merge by key until
/// the document closes the drag.
class ChangeDesign : public QUndoCommand {
  public:
    /// `drag` > 0 numbers the drag that this step belongs to, 0: none.
    ChangeDesign(Document& document, design::Design before, design::Design after,
                 const QString& text, const QString& mergeKey, quint64 drag);

    void undo() override;
    void redo() override;
    int id() const override;
    bool mergeWith(const QUndoCommand* other) override;

  private:
    Document& document_;
    design::Design before_, after_;
    QString mergeKey_;
    quint64 drag_;
};

} // namespace lobewright::ui
