#pragma once

#include <QLineEdit>

#include <optional>

namespace lobewright::ui {

/// A line to type a number in, with decimal point or comma. Up and down keys step it in its second
/// digit (Shift: a tenth of that, Ctrl: ten times). What cannot be read is given back on leaving.
class NumberEdit : public QLineEdit {
    Q_OBJECT

  public:
    explicit NumberEdit(QWidget* parent = nullptr);

    /// Nothing: the field is empty, which stands for "not given".
    void setNumber(std::optional<double> number);
    /// Digits shown of a number that nobody would type, 0: all that it has.
    void setDigits(int digits) { digits_ = digits; }
    void setWhole(bool whole) { whole_ = whole; }
    void setMayBeEmpty(bool may) { mayBeEmpty_ = may; }
    /// Words that may follow the number and mean the unit shown beside it.
    void setUnits(const QStringList& units) { units_ = units; }

  Q_SIGNALS:
    /// The person typed another number and pressed Enter or left.
    void entered(std::optional<double> number);
    /// A step by key; more may follow until `stepsDone`.
    void stepped(double number);
    void stepsDone();
    /// What was typed is no number.
    void unreadable(const QString& text);
    /// What was typed was taken back.
    void givenUp();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void accept();
    void giveBack();
    QString numberShown() const;
    QString withoutUnit(const QString& text) const;
    std::optional<double> number_;
    QStringList units_;
    int digits_ = 0;
    bool whole_ = false;
    bool mayBeEmpty_ = false;
    bool stepping_ = false;
};

/// A number as typed: '.' or ',' for the decimals, a true or a keyboard minus.
std::optional<double> readNumber(const QString& text);
/// The shortest text that reads back as the same number.
QString numberText(double number);
/// Five digits of it, as they can be typed and read back: without groups, for 1,800 reads as 1.8.
QString proposedNumber(double number);

} // namespace lobewright::ui
