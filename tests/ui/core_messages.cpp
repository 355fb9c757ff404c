#include "tests/ui/core_messages.h"

#include "tests/places.h"
#include "ui/core_templates.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <set>

namespace lobewright::ui::test {

namespace {

/// Beginnings of texts that stand in exported files, which are in English for other programs, or in
/// no text at all.
const char* const notForPeople[] = {"points and outward unit normals",
                                    "exact flank, coordinates",
                                    "x, y, z: coordinates",
                                    "planar_deviation_um:",
                                    "solid of the track",
                                    "track faces within",
                                    "STL stores",
                                    "Lobewright, mm, chord",
                                    "unrolled pitch curve",
                                    "chords stay within",
                                    "Across: arc length",
                                    "{:+.3f} to {:+.3f} um",
                                    "Left by this cutter",
                                    "lift of the roller axis from",
                                    "lift rounded to",
                                    "path of a cylindrical cutter",
                                    "rows every {:.6g} degrees",
                                    "straight lines between rows",
                                    "rotary_angle_deg:",
                                    "offset_mm:",
                                    "Part: {}",
                                    "Units: millimetres",
                                    "Estimates only: have",
                                    "Lobewright design",
                                    "given-{}",
                                    "mean-effective-pressure-{}",
                                    "indicated-pressure-{}"};

/// Literals of C++ sources; neighbours are one, as for the compiler.
class Literals {
  public:
    explicit Literals(const QString& source) : source_(source) {}

    QStringList all() {
        while (at_ < source_.size()) {
            if (skipsComment() || skipsRawText() || skipsCharacter())
                continue;
            if (source_[at_] == QLatin1Char('"')) {
                joined_ += text();
                open_ = true;
                continue;
            }
            if (!source_[at_].isSpace())
                close();
            ++at_;
        }
        close();
        return found_;
    }

  private:
    bool startsWith(const char* text) const {
        return QStringView(source_).mid(at_).startsWith(QLatin1String(text));
    }
    void skipTo(const QString& end) {
        const auto place = source_.indexOf(end, at_);
        at_ = place < 0 ? source_.size() : place + end.size();
    }
    bool skipsComment() {
        const bool isLine = startsWith("//") || (startsWith("#") && isFirstInLine());
        if (!isLine && !startsWith("/*"))
            return false;
        skipTo(isLine ? QStringLiteral("\n") : QStringLiteral("*/"));
        return true;
    }
    bool isFirstInLine() const {
        const auto begin = source_.lastIndexOf(QLatin1Char('\n'), at_ - 1) + 1;
        return QStringView(source_).mid(begin, at_ - begin).trimmed().isEmpty();
    }
    bool skipsRawText() {
        if (!startsWith("R\""))
            return false;
        const auto bracket = source_.indexOf(QLatin1Char('('), at_);
        skipTo(QLatin1Char(')') + source_.mid(at_ + 2, bracket - at_ - 2) + QLatin1Char('"'));
        return true;
    }
    bool skipsCharacter() {
        const bool isSeparator = at_ > 0 && source_[at_ - 1].isLetterOrNumber();
        if (source_[at_] != QLatin1Char('\'') || isSeparator)
            return false;
        close();
        at_ += at_ + 1 < source_.size() && source_[at_ + 1] == QLatin1Char('\\') ? 3 : 2;
        skipTo(QStringLiteral("'"));
        return true;
    }
    QString text() {
        QString text;
        for (++at_; at_ < source_.size() && source_[at_] != QLatin1Char('"'); ++at_) {
            if (source_[at_] == QLatin1Char('\\') && ++at_ < source_.size())
                text += source_[at_] == QLatin1Char('n') ? QLatin1Char('\n') : source_[at_];
            else
                text += source_[at_];
        }
        ++at_;
        return text;
    }
    void close() {
        if (std::exchange(open_, false))
            found_ << std::exchange(joined_, {});
    }

    const QString& source_;
    QString joined_;
    QStringList found_;
    qsizetype at_ = 0;
    bool open_ = false;
};

bool matches(const QString& text, const char* pattern) {
    return QRegularExpression(QLatin1String(pattern)).match(text).hasMatch();
}

/// Whether people read it: it has words, and more than a formula or a list of keys has.
bool isForPeople(const QString& text) {
    for (const char* beginning : notForPeople) {
        if (text.startsWith(QLatin1String(beginning)))
            return false;
    }
    if (matches(text, "=(field|figure|value|channel):"))
        return false;
    const CoreTemplate parts(text);
    if (parts.hasPlaces())
        return parts.literalSize() >= leastLiteral &&
               matches(parts.literal(), "(?<![A-Za-z_/.])[A-Za-z]{2,}(?![A-Za-z_(/])");
    return text.contains(QLatin1Char(' ')) &&
           matches(text, "(?<![A-Za-z_/.{])[A-Za-z]{4,}(?![A-Za-z_(}/])");
}

/// Without what joins it to its neighbours.
QString bare(const QString& literal) {
    QString text = literal.trimmed();
    if (text.startsWith(QLatin1String(", ")))
        text = text.mid(2);
    if (text.endsWith(QLatin1Char(',')))
        text.chop(1);
    if (text.startsWith(QLatin1Char('(')) && text.endsWith(QLatin1Char(')')))
        text = text.mid(1, text.size() - 2);
    return text;
}

} // namespace

QStringList coreLiterals() {
    std::set<QString> found;
    QDirIterator files(QString::fromStdString(lobewright::test::sourceFolder() + "/core"),
                       {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const QString source = QString::fromUtf8(file.readAll());
        for (const QString& literal : Literals(source).all()) {
            if (const QString text = bare(literal); isForPeople(text))
                found.insert(text);
        }
    }
    return {found.begin(), found.end()};
}

} // namespace lobewright::ui::test
