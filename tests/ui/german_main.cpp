#include "ui/base/language.h"
#include "ui/base/look.h"

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <gtest/gtest.h>

/// The window in German: a process of its own, because texts are read once.
int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Language tests"));
    if (!lobewright::ui::installLanguage(application, QStringLiteral("de"))) {
        fputs("no German translation in the program\n", stderr);
        return 1;
    }
    lobewright::ui::applyLook(*qApp, lobewright::ui::Theme::light);
    return RUN_ALL_TESTS();
}
