#include "ui/language.h"
#include "ui/workspace/main_window.h"

#include <QApplication>
#include <QCommandLineParser>

/// lobewright [FILE]: the desktop program.
int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationName(QStringLiteral("Lobewright"));
    QApplication::setApplicationVersion(QStringLiteral(LOBEWRIGHT_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("local.lobewright.lobewright"));

    lobewright::ui::installLanguage(application, lobewright::ui::keptLanguage());

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
    applyToProgram(Preferences::load());
    MainWindow window;
    window.show();
    window.openSomething(arguments.positionalArguments().value(0));
    return QApplication::exec();
}
