#include "ui/base/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QTranslator>

namespace lobewright::ui {

namespace {

const auto languageSetting = QStringLiteral("window/language");

bool load(QCoreApplication& application, const QLocale& locale, const QString& name,
          const QString& folder) {
    auto* translator = new QTranslator(&application);
    if (translator->load(locale, name, QStringLiteral("_"), folder) &&
        QCoreApplication::installTranslator(translator))
        return true;
    delete translator;
    return false;
}

} // namespace

QString keptLanguage() {
    const QString kept = QSettings().value(languageSetting).toString();
    return kept == QLatin1String("en") || kept == QLatin1String("de") ? kept : QString();
}

void keepLanguage(const QString& language) {
    QSettings().setValue(languageSetting, language);
}

bool installLanguage(QCoreApplication& application, const QString& language) {
    const QLocale locale = language.isEmpty() ? QLocale::system() : QLocale(language);
    if (!language.isEmpty())
        QLocale::setDefault(locale);
    if (locale.language() == QLocale::English ||
        !load(application, locale, QStringLiteral("lobewright"), QStringLiteral(":/translations")))
        return false;
    load(application, locale, QStringLiteral("qtbase"),
         QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    return true;
}

QString shownLanguage() {
    return QCoreApplication::translate("Core", "en", "the language of these words");
}

} // namespace lobewright::ui
