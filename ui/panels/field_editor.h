#pragma once

#include "core/design/fields.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace lobewright::ui {

class NumberEdit;

/// Edits one field of the design: a number with its unit, a choice, yes or no, a text.
/// Asks for a value; shows it only when the design has taken it.
class FieldEditor : public QWidget {
    Q_OBJECT

  public:
    FieldEditor(const design::Field& field, QWidget* parent);

    const std::string& path() const { return field_.path; }
    const design::Field& field() const { return field_; }
    /// The same field of a changed design.
    void show(const design::Field& field);
    /// A value that follows the speed is shown, and changed elsewhere.
    void setFollowsSpeed(bool follows);

  Q_SIGNALS:
    void wanted(const lobewright::design::FieldValue& value);
    /// One of many small steps.
    void stepped(const lobewright::design::FieldValue& value);
    void stepsDone();
    void unreadable(const QString& text);
    /// Something is typed anew, or what was typed was taken back.
    void touched();

  private:
    void buildNumber();
    void buildChoice();
    void buildFlag();
    void buildText();
    void showNumber();
    void nameUnit();
    design::FieldValue typed(double number) const;

    design::Field field_;
    NumberEdit* number_ = nullptr;
    QLabel* unit_ = nullptr;
    QComboBox* choice_ = nullptr; ///< of a number: "number" and the words instead of it
    QCheckBox* flag_ = nullptr;
    QLineEdit* line_ = nullptr;
    QPlainTextEdit* text_ = nullptr;
};

/// Help, range and symbol of a field, as tooltip.
QString fieldHelp(const design::Field& field);

} // namespace lobewright::ui
