#include "tests/ui/english_words.h"

#include <QRegularExpression>

namespace lobewright::ui::test {

QString englishIn(QString text) {
    static const QRegularExpression quoted(QStringLiteral("\"[^\"]*\"|„[^“]*“"));
    static const QRegularExpression title(
        QStringLiteral("Internal Combustion Engine Fundamentals|Contact Mechanics|Cam Design and "
                       "Manufacturing Handbook|Design and Simulation of Two-Stroke Engines|Design "
                       "of Machinery|Fluid Film Lubrication|GNU General Public License"));
    static const QRegularExpression english(
        QStringLiteral(
            "\\b(the|of|is|are|must|and|at|by|from|or|not|with|has|than|to|for|it|which|given|"
            "positive|side|needs?|into|every|turn|shaft|lobes?|stroke|torque|pressure|speed|force|"
            "power|cylinders?|track|lift|angle|largest|lowest|highest|inlet|exhaust|inner|outer)"
            "\\b"),
        QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression path(QStringLiteral("/[\\w/*]+"));
    text.remove(quoted).remove(title).remove(path);
    return english.match(text).captured();
}

} // namespace lobewright::ui::test
