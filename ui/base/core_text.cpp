#include "ui/base/core_text.h"

#include "ui/base/language.h"
#include "ui/base/units.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

namespace lobewright::ui {

namespace {

constexpr int mostDigits = 6; ///< of a value that was converted

class Translated : public MessageReader {
  public:
    std::string amount(const Amount& amount) const override {
        const Unit unit = unitFor(*amount.unit);
        Amount meant = amount;
        if (!unit.isMetric()) {
            if (meant.kind == Amount::Digits::decimals) {
                meant.digits = unit.decimals(amount.digits);
            } else if (meant.digits == 0 || meant.digits > mostDigits) {
                meant.digits = mostDigits;
            }
        }
        QString number = QString::fromStdString(digitsOf(meant, unit.shown(amount.shown())));
        if (number.startsWith(QLatin1Char('-')))
            number.replace(0, 1, QChar(0x2212));
        if (shownLanguage() != QLatin1String("en"))
            number.replace(QLatin1Char('.'), QLocale().decimalPoint());
        return lobewright::withUnit(number.toStdString(),
                                    amount.isBare ? std::string() : unit.text.toStdString());
    }

  protected:
    std::string text(TextId id) const override {
        return QCoreApplication::translate("Core", id.text).toStdString();
    }
};

} // namespace

QString coreTextToWrap(const Message& message) {
    return QString::fromStdString(Translated().read(message));
}

QString coreText(const Message& message) {
    return coreTextToWrap(message).remove(QChar::SoftHyphen);
}

QString amountText(const Amount& amount) {
    return QString::fromStdString(Translated().amount(amount));
}

QString localNumbers(const QString& text) {
    static const QRegularExpression fraction(
        QStringLiteral("(?<![\\w.,\u00A7])(?<!\u00A7 )(\\d+)\\.(\\d+)(?![\\d.])"));
    return QString(text).replace(fraction,
                                 QStringLiteral("\\1") + QLocale().decimalPoint() + "\\2");
}

QString inSentence(const QString& label) {
    return shownLanguage() == QLatin1String("de") ? label : label.toLower();
}

} // namespace lobewright::ui
