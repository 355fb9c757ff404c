#include "ui/core_words.h"

#include "ui/core_templates.h"
#include "ui/language.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <optional>

namespace lobewright::ui {

namespace {

constexpr const char* context = "Core";
constexpr std::pair<const char*, const char*> sides[] = {
    {", inlet side", QT_TRANSLATE_NOOP("Core", ", inlet side")},
    {", exhaust side", QT_TRANSLATE_NOOP("Core", ", exhaust side")}};

QString spoken(const QString& text);

std::optional<QString> translated(const QString& text) {
    const QString found = QCoreApplication::translate(context, text.toUtf8().constData());
    return found == text ? std::nullopt : std::optional(found);
}

const QRegularExpression& numbers() {
    static const QRegularExpression pattern(
        QStringLiteral("(?<![\\w.\u2212-])[-\u2212]?\\d+(?:\\.\\d+)?(?:e[-+]?\\d+)?(?![\\w.]\\d)"),
        QRegularExpression::UseUnicodePropertiesOption);
    return pattern;
}

/// A hyphen before a number that follows no letter, digit or bracket is a minus.
QString withTrueMinus(QString text) {
    static const QRegularExpression minus(QStringLiteral("(?<![\\w\u2212.,/)\"-])-(?=\\d)"));
    return text.replace(minus, QStringLiteral("\u2212"));
}

/// Numbers taken out, in their order.
std::pair<QString, QStringList> parted(const QString& text) {
    static const QRegularExpression section(QStringLiteral("(\u00A7|table|part|ch\\.) ?$"));
    QString plain;
    QStringList found;
    qsizetype done = 0;
    auto matches = numbers().globalMatch(text);
    while (matches.hasNext() && found.size() < 9) {
        const auto match = matches.next();
        const QString before = text.mid(done, match.capturedStart() - done);
        const bool isSection = section.match(before).hasMatch();
        found << (isSection ? match.captured() : localNumbers(match.captured()));
        plain += before + QStringLiteral("%%1").arg(found.size());
        done = match.capturedEnd();
    }
    return {plain + text.mid(done), found};
}

/// In one pass: values may hold what looks like a place.
QString filled(const QString& text, const QStringList& values) {
    static const QRegularExpression place(QStringLiteral("%([1-9])"));
    QString whole;
    qsizetype done = 0;
    for (auto it = place.globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        whole += text.mid(done, match.capturedStart() - done) +
                 values.value(match.captured(1).toInt() - 1);
        done = match.capturedEnd();
    }
    return whole + text.mid(done);
}

std::optional<QString> byItsNumbers(const QString& text) {
    const auto [plain, found] = parted(text);
    const auto sentence = translated(plain);
    return sentence ? std::optional(filled(*sentence, found)) : std::nullopt;
}

std::optional<QString> byItsFormat(const QString& text) {
    for (const CoreTemplate& format : coreTemplates()) {
        auto values = format.values(text);
        if (!values)
            continue;
        const auto sentence = translated(format.key());
        if (!sentence)
            continue;
        for (qsizetype i = 0; i < values->size(); ++i) {
            if (!format.isQuoted(i))
                (*values)[i] = spoken((*values)[i]);
        }
        return filled(*sentence, *values);
    }
    return std::nullopt;
}

std::optional<QString> known(const QString& text) {
    auto found = byItsNumbers(text);
    return found ? found : byItsFormat(text);
}

/// "Stroke, inlet side", "Heywood, table 2.1 (from memory)": what comes last is known.
std::optional<QString> byItsTail(const QString& text) {
    for (auto at = text.indexOf(QLatin1String(", ")); at > 0;
         at = text.indexOf(QLatin1String(", "), at + 2)) {
        if (const auto tail = known(text.mid(at + 2)))
            return spoken(text.left(at)) + QStringLiteral(", ") + *tail;
    }
    const auto open = text.lastIndexOf(QLatin1String(" ("));
    if (open > 0 && text.endsWith(QLatin1Char(')'))) {
        if (const auto tail = known(text.mid(open + 2, text.size() - open - 3)))
            return spoken(text.left(open)) + QStringLiteral(" (") + *tail + QLatin1Char(')');
    }
    return std::nullopt;
}

/// A number with its unit.
bool isValue(const QString& text) {
    static const QRegularExpression value(
        QStringLiteral("^[-+\u2212]?\\d[\\d.]*(e[-+]?\\d+)?(\\s?\\S+){0,2}$"));
    return value.match(text).hasMatch();
}

QString spoken(const QString& text) {
    const QString inner = text.trimmed();
    if (inner.isEmpty() || inner.startsWith(QLatin1Char('"')))
        return known(text).value_or(text);
    if (inner.size() < text.size()) {
        const auto at = text.indexOf(inner);
        return text.left(at) + spoken(inner) + text.mid(at + inner.size());
    }
    if (text.startsWith(QLatin1String(", ")))
        return QStringLiteral(", ") + spoken(text.mid(2));
    if (text.startsWith(QLatin1Char('(')) && text.endsWith(QLatin1Char(')')))
        return QLatin1Char('(') + spoken(text.mid(1, text.size() - 2)) + QLatin1Char(')');
    for (const auto& [english, source] : sides) {
        if (text.endsWith(QLatin1String(english)))
            return spoken(text.chopped(static_cast<qsizetype>(qstrlen(english)))) +
                   QCoreApplication::translate(context, source);
    }
    if (const auto whole = known(text))
        return *whole;
    if (text.contains(QLatin1String("; "))) {
        QStringList parts = text.split(QStringLiteral("; "));
        for (QString& part : parts)
            part = spoken(part);
        return parts.join(QStringLiteral("; "));
    }
    if (const auto whole = byItsTail(text))
        return *whole;
    return isValue(text) ? localNumbers(text) : text;
}

} // namespace

QString localNumbers(const QString& text) {
    static const QRegularExpression fraction(
        QStringLiteral("(?<![\\w.,\u00A7])(?<!\u00A7 )(\\d+)\\.(\\d+)(?![\\d.])"));
    return QString(text).replace(fraction,
                                 QStringLiteral("\\1") + QLocale().decimalPoint() + "\\2");
}

QString inSentence(const QString& label) {
    return shownLanguage() == QLatin1String("de") ? label : label.toLower();
}

QString coreTemplate(const QString& text) {
    for (const auto& [english, source] : sides) {
        if (text.endsWith(QLatin1String(english)))
            return coreTemplate(text.chopped(static_cast<qsizetype>(qstrlen(english))));
    }
    return parted(text).first;
}

QString coreTextToWrap(std::string_view words) {
    const QString text = QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
    return withTrueMinus(shownLanguage() == QLatin1String("en") ? text : spoken(text));
}

QString coreText(std::string_view words) {
    return coreTextToWrap(words).remove(QChar::SoftHyphen);
}

} // namespace lobewright::ui
