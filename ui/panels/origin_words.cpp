#include "ui/panels/origin_words.h"

#include "core/draft/rules.h"
#include "ui/base/core_text.h"
#include "ui/base/curve.h"
#include "ui/base/units.h"

#include <QCoreApplication>
#include <QStringList>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Origins)
};

using design::Origin;

QString optionLabel(const design::Field& field, const std::string& option) {
    const TextId label = design::choiceLabel(field, option);
    return label.empty() ? QString::fromStdString(option) : coreText(label);
}

} // namespace

QString originWord(Origin origin) {
    const QString words[] = {Words::tr("given"), Words::tr("measured"), Words::tr("derived"),
                             Words::tr("assumed"), Words::tr("chosen")};
    return words[static_cast<std::size_t>(origin)];
}

QString originLetter(Origin origin) {
    const QString letters[] = {Words::tr("g", "mark of an input that is given"),
                               Words::tr("m", "mark of an input that was measured"),
                               Words::tr("d", "mark of an input that was derived"),
                               Words::tr("a", "mark of an input that is assumed"),
                               {}};
    return letters[static_cast<std::size_t>(origin)];
}

QString rangeText(const design::Field& field, const design::Known& known) {
    if (known.low && known.high) {
        const Unit unit = unitFor(field.unit);
        const QString ends = endsText(unit.shown(*known.low), unit.shown(*known.high));
        return unit.text.isEmpty() ? ends : ends + QChar(0xA0) + unit.text;
    }
    QStringList options;
    for (const std::string& option : known.options)
        options << optionLabel(field, option);
    return options.join(QStringLiteral(", "));
}

QString originHelp(const design::Field& field, const design::Known& known) {
    QStringList lines;
    const QString range = rangeText(field, known);
    const QString word = originWord(known.origin);
    lines << (range.isEmpty() ? word : Words::tr("%1, range %2").arg(word, range));
    if (const auto* rule = draft::findRule(known.rule)) {
        lines << coreText(rule->title) + QStringLiteral(": ") + coreText(rule->formula);
        if (!rule->range.empty())
            lines << Words::tr("Assumed: %1").arg(coreText(rule->range));
        lines << Words::tr("Source: %1").arg(coreText(rule->source));
    }
    if (!known.source.empty())
        lines << QString::fromStdString(known.source);
    if (!known.group.empty())
        lines << Words::tr("Moves together with the others of its group");
    return lines.join(QLatin1Char('\n'));
}

QString originCountsText(const design::OriginCounts& counts, bool linked) {
    const std::pair<Origin, int> all[] = {{Origin::given, counts.given},
                                          {Origin::measured, counts.measured},
                                          {Origin::derived, counts.derived},
                                          {Origin::assumed, counts.assumed}};
    QStringList parts;
    for (const auto& [origin, count] : all) {
        if (count == 0)
            continue;
        const QString text =
            Words::tr("%1 %2", "number, origin").arg(count).arg(originWord(origin));
        parts << (linked ? QStringLiteral("<a href=\"origin:%1\">%2</a>")
                               .arg(static_cast<int>(origin))
                               .arg(text)
                         : text);
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace lobewright::ui
