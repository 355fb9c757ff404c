#pragma once

#include <QObject>

class QMainWindow;

namespace lobewright::ui {

/// Keeps the window's actions and the field that is being typed in from working past each other:
/// what was typed is entered before any action of the window, and keys of the window reach it from
/// a field that has no typing of its own to undo.
class FieldKeys final : public QObject {
  public:
    /// The window with all its menus.
    explicit FieldKeys(QMainWindow& window);

    /// Enters what was typed in the field that has the keyboard, as leaving it would.
    void commit();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    /// The field of the window that has the keyboard; null when something else has it.
    QWidget* field() const;
    bool isActionKey(const QKeyCombination& keys) const;

    QMainWindow& window_;
};

} // namespace lobewright::ui
