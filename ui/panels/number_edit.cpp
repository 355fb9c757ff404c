#include "ui/panels/number_edit.h"

#include "core/units/unit.h"

#include <QKeyEvent>
#include <QLocale>

#include <cmath>

namespace lobewright::ui {

namespace {

/// Few enough digits for somebody to have typed it; others come of a rule, a fit or a conversion.
bool isTyped(double number) {
    constexpr int most = 7;
    return roundedTo(most, number) == number;
}

} // namespace

std::optional<double> readNumber(const QString& text) {
    QString plain = text.trimmed();
    plain.replace(QChar(0x2212), QLatin1Char('-')).replace(QLatin1Char(','), QLatin1Char('.'));
    bool readable = false;
    const double number = QLocale::c().toDouble(plain, &readable);
    if (!readable || !std::isfinite(number))
        return std::nullopt;
    return number;
}

QString numberText(double number) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    // Nobody types 2E-05, nor reads it.
    const double size = std::abs(number);
    const bool isPlain = number == 0.0 || (size >= 1e-7 && size < 1e15);
    return locale.toString(number, isPlain ? 'f' : 'g', QLocale::FloatingPointShortest);
}

QString proposedNumber(double number) {
    constexpr int digits = 5;
    return numberText(roundedTo(digits, number));
}

NumberEdit::NumberEdit(QWidget* parent) : QLineEdit(parent) {
    setAlignment(Qt::AlignRight);
    setPlaceholderText(tr("not given"));
    connect(this, &QLineEdit::editingFinished, this, &NumberEdit::accept);
}

void NumberEdit::setNumber(std::optional<double> number) {
    number_ = number;
    giveBack();
}

QString NumberEdit::numberShown() const {
    if (!number_)
        return {};
    return numberText(digits_ > 0 && !isTyped(*number_) ? roundedTo(digits_, *number_) : *number_);
}

QString NumberEdit::withoutUnit(const QString& text) const {
    const QString plain = text.trimmed();
    for (const QString& unit : units_) {
        if (!unit.isEmpty() && plain.endsWith(unit, Qt::CaseInsensitive))
            return plain.chopped(unit.size());
    }
    return plain;
}

void NumberEdit::giveBack() {
    const QString text = numberShown();
    if (text != this->text())
        setText(text);
}

void NumberEdit::accept() {
    if (!isModified())
        return;
    setModified(false);
    const QString typed = text();
    if (typed.trimmed().isEmpty() && mayBeEmpty_) {
        giveBack();
        if (number_)
            Q_EMIT entered(std::nullopt);
        return;
    }
    const auto number = readNumber(withoutUnit(typed));
    // What is shown may be rounded: typed again it is no other number.
    const bool same = number == readNumber(numberShown());
    giveBack(); // the design decides; what it takes comes back by setNumber
    if (!number)
        Q_EMIT unreadable(typed);
    else if (!same)
        Q_EMIT entered(number);
}

void NumberEdit::keyPressEvent(QKeyEvent* event) {
    const bool up = event->key() == Qt::Key_Up;
    if ((!up && event->key() != Qt::Key_Down) || !number_ || isReadOnly()) {
        if (event->key() == Qt::Key_Escape && isModified()) {
            setModified(false);
            giveBack();
            selectAll();
            Q_EMIT givenUp();
            return;
        }
        QLineEdit::keyPressEvent(event);
        return;
    }
    double step = 1.0;
    if (!whole_ && *number_ != 0.0)
        step = std::pow(10.0, std::floor(std::log10(std::abs(*number_))) - 1.0);
    else if (!whole_)
        step = 0.1;
    if (event->modifiers() & Qt::ControlModifier)
        step *= 10.0;
    if ((event->modifiers() & Qt::ShiftModifier) && !whole_)
        step /= 10.0;
    // On the grid of the step, so that repeated steps leave no dust in the last digits.
    const double next = (std::round(*number_ / step) + (up ? 1.0 : -1.0)) * step;
    stepping_ = true;
    // What a step leaves beyond twelve digits is the rounding of the step.
    Q_EMIT stepped(whole_ ? std::round(next) : roundedTo(12, next));
    selectAll();
}

void NumberEdit::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (std::exchange(stepping_, false))
        Q_EMIT stepsDone();
}

} // namespace lobewright::ui
