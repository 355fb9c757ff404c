#include "ui/base/look.h"
#include "ui/base/memory.h"

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <gtest/gtest.h>

/// The tests of the window leave no settings behind and read none.
int main(int argc, char** argv) {
    lobewright::ui::shareMemoryBetweenThreads();
    ::testing::InitGoogleTest(&argc, argv);
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    const QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Desktop tests"));
    lobewright::ui::applyLook(*qApp, lobewright::ui::Theme::light);
    return RUN_ALL_TESTS();
}
