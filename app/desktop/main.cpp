#include "core/exchange/libraries.h"
#include "ui/base/faults.h"
#include "ui/base/language.h"
#include "ui/base/memory.h"
#include "ui/base/plain_message.h"
#include "ui/window/libraries.h"
#include "ui/window/main_window.h"
#include "ui/window/preferences.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QProcess>

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
    arguments.addPositionalArgument(
        QStringLiteral("FILE"),
        QCoreApplication::translate("Desktop", "Design to open; each in a window of its own."),
        QStringLiteral("[FILE…]"));
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

/// What asks for words and not for a window is answered where there is no display.
bool asksForWords(int argc, char** argv) {
    return std::any_of(argv + 1, argv + argc, [](std::string_view argument) {
        return argument == "-h" || argument == "--help" || argument == "--help-all" ||
               argument == "-v" || argument == "--version";
    });
}

/// Where no window can be opened Qt ends with an abort and advises to install the program anew.
void sayThatThereIsNoDisplay(QtMsgType type, const QMessageLogContext&, const QString& message) {
    say(stderr, message);
    if (type != QtFatalMsg)
        return;
    say(stderr, QCoreApplication::translate(
                    "Desktop", "lobewright: there is no display to open a window on. Start it in a "
                               "desktop session, or use lobewright-cli, which needs none."));
    std::_Exit(EXIT_FAILURE);
}

/// Every design has a program of its own, so that a failure takes one design at most.
void openElsewhere(const QStringList& files, QWidget& window) {
    for (const QString& file : files) {
        if (!QProcess::startDetached(QCoreApplication::applicationFilePath(),
                                     {QStringLiteral("--"), file})) {
            lobewright::ui::warn(
                &window, QCoreApplication::translate("Desktop", "File not opened"),
                QCoreApplication::translate("Desktop", "No further window can be opened for %1.")
                    .arg(file));
        }
    }
}

} // namespace

/// lobewright [FILE…]: the desktop program.
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
    lobewright::ui::shareMemoryBetweenThreads();
    const QtMessageHandler usual = qInstallMessageHandler(sayThatThereIsNoDisplay);
    lobewright::ui::GuardedApplication application(argc, argv);
    qInstallMessageHandler(usual);
    name(application);
    QApplication::setDesktopFileName(QStringLiteral("local.lobewright.lobewright"));
    QCommandLineParser arguments;
    describe(arguments);
    arguments.process(application);

    using namespace lobewright::ui;
    applyToProgram(Preferences::load());
    MainWindow window;
    window.show();
    const QStringList files = arguments.positionalArguments();
    openElsewhere(files.mid(1), window);
    window.openSomething(files.value(0));
    return QApplication::exec();
}
