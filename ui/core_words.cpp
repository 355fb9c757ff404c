#include "ui/core_words.h"

#include "ui/language.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <optional>

namespace lobewright::ui {

namespace {

constexpr const char* context = "Core";
constexpr std::pair<const char*, const char*> sides[] = {
    {", inlet side", QT_TRANSLATE_NOOP("Core", ", inlet side")},
    {", exhaust side", QT_TRANSLATE_NOOP("Core", ", exhaust side")}};

QString translated(const QString& text) {
    return QCoreApplication::translate(context, text.toUtf8().constData());
}

const QRegularExpression& numbers() {
    static const QRegularExpression pattern(
        QStringLiteral("(?<![\\w.\u2212-])[-\u2212]?\\d+(?:\\.\\d+)?(?:e[-+]?\\d+)?(?![\\w.]\\d)"),
        QRegularExpression::UseUnicodePropertiesOption);
    return pattern;
}

/// Numbers taken out, in their order.
std::pair<QString, QStringList> parted(const QString& text) {
    QString plain;
    QStringList found;
    qsizetype done = 0;
    auto matches = numbers().globalMatch(text);
    while (matches.hasNext() && found.size() < 9) {
        const auto match = matches.next();
        found << match.captured();
        plain +=
            text.mid(done, match.capturedStart() - done) + QStringLiteral("%%1").arg(found.size());
        done = match.capturedEnd();
    }
    return {plain + text.mid(done), found};
}

} // namespace

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

QString coreText(std::string_view words) {
    const QString text = QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
    if (text.isEmpty())
        return text;
    for (const auto& [english, source] : sides) {
        if (!text.endsWith(QLatin1String(english)))
            continue;
        const QString base = text.chopped(static_cast<qsizetype>(qstrlen(english)));
        return coreText(base.toStdString()) + QCoreApplication::translate(context, source);
    }
    const auto [plain, found] = parted(text);
    QString whole = translated(plain);
    // The longest numbers of places first: %1 would else take the beginning of %10.
    for (qsizetype i = found.size(); i > 0; --i)
        whole.replace(QLatin1Char('%') + QString::number(i), found[i - 1]);
    return whole;
}

} // namespace lobewright::ui
