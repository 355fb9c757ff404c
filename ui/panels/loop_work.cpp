#include "ui/panels/loop_work.h"

#include "core/units.h"
#include "ui/base/units.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LoopWork)
};

constexpr double joule = units::bar * units::cubicCentimetre; ///< of one bar·cm³

} // namespace

std::optional<double> loopIntegralOf(const solution::Working& working) {
    if (working.formula.find(loopIntegral) == std::string::npos)
        return std::nullopt;
    solution::Working loop = working;
    loop.formula = loopIntegral;
    const auto value = solution::evaluate(loop);
    return value ? std::optional(*value) : std::nullopt;
}

QString loopWords(const solution::Working& working) {
    const auto loop = loopIntegralOf(working);
    if (!loop)
        return {};
    return Words::tr("∮p dV = %1 per cylinder and revolution: the area of the loop in the <a "
                     "href=\"view:pressure-volume\">p–V diagram</a>.")
        .arg(quantityText(*loop * joule, QStringLiteral("J")));
}

std::string withLoopValue(std::string numbers, const solution::Working& working) {
    const auto loop = loopIntegralOf(working);
    const auto place = numbers.find(loopIntegral);
    if (loop && place != std::string::npos) {
        numbers.replace(place, std::string_view(loopIntegral).size(),
                        QString::number(*loop, 'g', 6).toStdString());
    }
    return numbers;
}

} // namespace lobewright::ui
