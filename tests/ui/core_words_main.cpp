// Writes the words of the core that the desktop shows as a file for lupdate, and its sentences with
// places for values as a list that the desktop recognises them by:
//   core_words WORDS FORMATS
#include "tests/ui/core_words_list.h"

#include <QCoreApplication>
#include <QSaveFile>

#include <cstdio>

namespace {

bool write(const char* name, const QByteArray& text) {
    QSaveFile file(QString::fromLocal8Bit(name));
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("usage: core_words WORDS FORMATS\n", stderr);
        return 2;
    }
    using namespace lobewright::ui::test;
    QByteArray text = "// Words of the core that the desktop shows; written by core_words, read by "
                      "lupdate, not compiled.\n"
                      "static const char* const words[] = {\n";
    for (QString word : coreWords()) {
        word.replace('\\', QLatin1String("\\\\")).replace('"', QLatin1String("\\\""));
        word.replace('\n', QLatin1String("\\n"));
        text += "    QT_TRANSLATE_NOOP(\"Core\", \"" + word.toUtf8() + "\"),\n";
    }
    text += "};\n";
    const QByteArray formats = (coreFormats().join(QLatin1Char('\n')) + QLatin1Char('\n')).toUtf8();
    return write(argv[1], text) && write(argv[2], formats) ? 0 : 1;
}
