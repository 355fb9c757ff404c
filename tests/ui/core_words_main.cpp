// Writes the words of the core that the desktop shows as a file for lupdate:
//   core_words FILE
#include "tests/ui/core_words_list.h"

#include <QCoreApplication>
#include <QSaveFile>
#include <QSet>

#include <algorithm>
#include <cstdio>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 2) {
        std::fputs("usage: core_words FILE\n", stderr);
        return 2;
    }
    using namespace lobewright::ui::test;
    QStringList words = coreWords() + checkSentences() + checksOfSamples();
    words.removeDuplicates();
    std::ranges::sort(words);
    QByteArray text = "// Words of the core that the desktop shows; written by core_words, read by "
                      "lupdate, not compiled.\n"
                      "static const char* const words[] = {\n";
    for (QString word : words) {
        word.replace('\\', QLatin1String("\\\\")).replace('"', QLatin1String("\\\""));
        word.replace('\n', QLatin1String("\\n"));
        text += "    QT_TRANSLATE_NOOP(\"Core\", \"" + word.toUtf8() + "\"),\n";
    }
    text += "};\n";
    QSaveFile file(QString::fromLocal8Bit(argv[1]));
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit() ? 0
                                                                                               : 1;
}
