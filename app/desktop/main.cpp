#include "core/exchange/libraries.h"
#include "ui/language.h"
#include "ui/libraries.h"
#include "ui/workspace/main_window.h"

#include <QApplication>
#include <QCommandLineParser>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
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
    arguments.addOption({{QStringLiteral("v"), QStringLiteral("version")},
                         QCoreApplication::translate("Desktop", "Displays version information.")});
}

void say(std::FILE* stream, const QString& text) {
    std::fputs(qPrintable(text + QLatin1Char('\n')), stream);
}

/// The program and what it is made of.
void sayVersion() {
    say(stdout, QStringLiteral("Lobewright " LOBEWRIGHT_VERSION));
    for (const auto& made : {lobewright::exchange::libraries(), lobewright::ui::libraries()}) {
        for (const std::string& library : made)
            say(stdout, QStringLiteral("  ") + QString::fromStdString(library));
    }
}

/// Qt ends with a core dump and the advice to install it anew where no display can be opened.
void sayThatThereIsNoDisplay(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type != QtFatalMsg)
        return;
    say(stderr, text.section(QLatin1Char('\n'), 0, 0));
    say(stderr, QCoreApplication::translate(
                    "Desktop", "lobewright: no display can be opened. Start it in a graphical "
                               "session, or use lobewright-cli, which needs none."));
    std::_Exit(EXIT_FAILURE);
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
        arguments.process(application); // says the help and ends
        sayVersion();
        return EXIT_SUCCESS;
    }
    qInstallMessageHandler(sayThatThereIsNoDisplay);
    QApplication application(argc, argv);
    qInstallMessageHandler(nullptr);
    name(application);
    QApplication::setDesktopFileName(QStringLiteral("local.lobewright.lobewright"));
    QCommandLineParser arguments;
    describe(arguments);
    arguments.process(application);
    if (arguments.positionalArguments().size() > 1) {
        say(stderr, QCoreApplication::translate("Desktop", "Only one design can be opened."));
        constexpr int wrongUsage = 2;
        return wrongUsage;
    }

    using namespace lobewright::ui;
    applyToProgram(Preferences::load());
    MainWindow window;
    window.show();
    window.openSomething(arguments.positionalArguments().value(0));
    return QApplication::exec();
}
