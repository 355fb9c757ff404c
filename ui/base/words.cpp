#include "ui/base/words.h"

#include "core/units.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace lobewright::ui::words {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Scene)
};

} // namespace

QString number(double value, int decimals) {
    const double least = 0.5 * std::pow(10.0, -decimals);
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    QString shown = locale.toString(std::abs(value) < least ? 0.0 : value, 'f', decimals);
    return shown.replace(QLatin1Char('-'), QChar(0x2212));
}

QString degrees(double radians, int decimals) {
    return number(radians / units::degree, decimals) + QChar(0x00B0);
}

QString side(End end) {
    return end == End::inlet ? Words::tr("Inlet") : Words::tr("Exhaust");
}

QString segmentKind(motion::SegmentKind kind) {
    switch (kind) {
    case motion::SegmentKind::rise:
        return Words::tr("rise");
    case motion::SegmentKind::dwell:
        return Words::tr("dwell");
    case motion::SegmentKind::fall:
        return Words::tr("return");
    }
    return {};
}

} // namespace lobewright::ui::words
