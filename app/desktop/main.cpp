#include "ui/language.h"
#include "ui/workspace/main_window.h"

#include <QApplication>
#include <QCommandLineParser>

#include <algorithm>
#include <string_view>

namespace {

void name(QCoreApplication& application) {
    QCoreApplication::setOrganizationName(QStringLiteral("Lobewright"));
    QCoreApplication::setApplicationName(QStringLiteral("Lobewright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LOBEWRIGHT_VERSION));
    lobewright::ui::installLanguage(application, lobewright::ui::keptLanguage());
}

void describe(QCommandLineParser& arguments) {
    arguments.setApplicationDescription(
        QCoreApplication::translate("Desktop", "Design and judge cam-track engines."));
    arguments.addPositionalArgument(QStringLiteral("FILE"),
                                    QCoreApplication::translate("Desktop", "Design to open."),
                                    QStringLiteral("[FILE]"));
    arguments.addHelpOption();
    arguments.addVersionOption();
}

/// What asks for words and not for a window is answered where there is no display.
bool asksForWords(int argc, char** argv) {
    return std::any_of(argv + 1, argv + argc, [](std::string_view argument) {
        return argument == "-h" || argument == "--help" || argument == "--help-all" ||
               argument == "-v" || argument == "--version";
    });
}

} // namespace

/// lobewright [FILE]: the desktop program.
int main(int argc, char** argv) {
    if (asksForWords(argc, argv)) {
        QCoreApplication application(argc, argv);
        name(application);
        QCommandLineParser arguments;
        describe(arguments);
        arguments.process(application); // says them and ends
    }
    QApplication application(argc, argv);
    name(application);
    QApplication::setDesktopFileName(QStringLiteral("local.lobewright.lobewright"));
    QCommandLineParser arguments;
    describe(arguments);
    arguments.process(application);

    using namespace lobewright::ui;
    applyToProgram(Preferences::load());
    MainWindow window;
    window.show();
    window.openSomething(arguments.positionalArguments().value(0));
    return QApplication::exec();
}
