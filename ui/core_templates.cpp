#include "ui/core_templates.h"

#include <QFile>

#include <algorithm>

namespace lobewright::ui {

namespace {

/// "{{", "}}", "{}", "{:.4g}", "{0:.3g}".
const QRegularExpression& placePattern() {
    static const QRegularExpression pattern(
        QStringLiteral("\\{\\{|\\}\\}|\\{(\\d*)(?::([^{}]*))?\\}"));
    return pattern;
}

const auto anything = QStringLiteral("(.*?)");
const auto aNumber = QStringLiteral("([-+\u2212]?(?:\\d[\\d.]*(?:e[-+]?\\d+)?|inf|nan))");

std::vector<CoreTemplate> readTemplates() {
    QFile file(QStringLiteral(":/translations/core_formats.txt"));
    std::vector<CoreTemplate> all;
    if (!file.open(QIODevice::ReadOnly))
        return all;
    for (const QString& line :
         QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        all.emplace_back(line);
    std::ranges::stable_sort(all, std::ranges::greater(), &CoreTemplate::literalSize);
    return all;
}

} // namespace

CoreTemplate::CoreTemplate(const QString& format) {
    QString piece, pattern;
    qsizetype done = 0;
    const auto closePiece = [&] {
        pattern += QRegularExpression::escape(piece);
        key_ += piece;
        pieces_ << std::exchange(piece, {});
    };
    for (auto it = placePattern().globalMatch(format); it.hasNext();) {
        const auto match = it.next();
        piece += format.mid(done, match.capturedStart() - done);
        done = match.capturedEnd();
        if (match.captured().size() == 2 && match.captured() != QLatin1String("{}")) {
            piece += match.captured().at(0);
            continue;
        }
        Place place;
        place.argument = match.captured(1).isEmpty() ? static_cast<int>(places_.size())
                                                     : match.captured(1).toInt();
        const QString form = match.captured(2);
        place.isNumber = !form.isEmpty() && QStringLiteral("efgdEFG").contains(form.back());
        place.isQuoted = piece.endsWith(QLatin1Char('"')) &&
                         QStringView(format).mid(done).startsWith(QLatin1Char('"'));
        closePiece();
        pattern += place.isNumber ? aNumber : anything;
        key_ += QLatin1Char('%') + QString::number(place.argument + 1);
        places_.push_back(place);
    }
    piece += format.mid(done);
    closePiece();
    pattern_ = QRegularExpression(QRegularExpression::anchoredPattern(pattern),
                                  QRegularExpression::DotMatchesEverythingOption);
}

std::optional<QStringList> CoreTemplate::values(const QString& sentence) const {
    // Most formats are ruled out by their text alone.
    if (!sentence.startsWith(pieces_.front()) || !sentence.endsWith(pieces_.back()))
        return std::nullopt;
    for (const QString& piece : pieces_) {
        if (!sentence.contains(piece))
            return std::nullopt;
    }
    const auto match = pattern_.match(sentence);
    if (!match.hasMatch())
        return std::nullopt;
    QStringList values;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const int argument = places_[i].argument;
        while (values.size() <= argument)
            values << QString();
        values[argument] = match.captured(static_cast<int>(i) + 1);
    }
    return values;
}

bool CoreTemplate::isQuoted(qsizetype argument) const {
    return std::ranges::any_of(places_, [argument](const Place& place) {
        return place.isQuoted && place.argument == argument;
    });
}

const std::vector<CoreTemplate>& coreTemplates() {
    static const std::vector<CoreTemplate> all = readTemplates();
    return all;
}

} // namespace lobewright::ui
