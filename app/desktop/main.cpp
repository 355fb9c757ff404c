#include "ui/look.h"
#include "ui/workspace/main_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QSettings>

/// lobewright [FILE]: the desktop program.
int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationVersion(QStringLiteral(LOBEWRIGHT_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("local.lobewright.lobewright"));

    QCommandLineParser arguments;
    arguments.setApplicationDescription(
        QApplication::translate("Desktop", "Design and judge cam-track engines."));
    arguments.addPositionalArgument(QStringLiteral("FILE"),
                                    QApplication::translate("Desktop", "Design to open."),
                                    QStringLiteral("[FILE]"));
    arguments.addHelpOption();
    arguments.addVersionOption();
    arguments.process(application);

    using namespace lobewright::ui;
    applyLook(application,
              themeNamed(QSettings().value(QStringLiteral("window/theme")).toString()));
    MainWindow window;
    window.show();
    window.openSomething(arguments.positionalArguments().value(0));
    return QApplication::exec();
}
