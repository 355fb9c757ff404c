#pragma once

#include <QLabel>
#include <QPointer>

namespace lobewright::ui {

/// Says under a field which rule its new value broke. Lies over what follows, so that nothing moves
/// away under the mouse, and lets the mouse through.
class FieldNote : public QLabel {
    Q_OBJECT

  public:
    /// `ground` holds the fields, however deep.
    explicit FieldNote(QWidget* ground);

    void showUnder(QWidget& field, const QString& text);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void place();
    QPointer<QWidget> field_;
};

} // namespace lobewright::ui
