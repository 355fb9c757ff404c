#include "ui/document/samples.h"

#include "core/design/file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::ui {

namespace {

const auto folder = QStringLiteral(":/samples");
const auto opensWith = QStringLiteral("biogas");

/// Titles and notes of the files, for translators.
[[maybe_unused]] constexpr const char* texts[] = {
    QT_TRANSLATE_NOOP("Samples", "Biogas pump set"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. Three cylinders on two-lobed tracks drive an irrigation pump "
        "at a steady speed on cleaned biogas. Look at: the exhaust lead of 5 degrees, which opens "
        "the exhaust first and closes it first (drag it and watch blowdown and after-charge); the "
        "short dwell at inner dead centre, which holds the volume while the gas burns; six power "
        "strokes per revolution, which make torque smooth although every single piston pulses; the "
        "range of speed in which the rollers keep contact. It is started by a motor that turns it "
        "past about 330 rpm: below that, ring friction holds the pistons back on their way out."),
    QT_TRANSLATE_NOOP("Samples", "Classroom model"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. A demonstration model with one lobe and one cylinder, turned "
        "slowly by hand or motor without fuel. Look at: one revolution of the shaft is one cycle, "
        "so that shaft and cycle degrees are the same; the large ports, easy to see open and "
        "close, through which the faintest breath of a fan renews the charge many times over; the "
        "pressure, which rises and falls almost alike because nothing burns; the closed track, "
        "which also pulls the piston where gas and friction would lift it off."),
    QT_TRANSLATE_NOOP("Samples", "Fire pump with geared wheel"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. Three cylinders on two-lobed tracks drive the pump of a"
        " fire brigade on methane. A centrifugal wheel, geared to the shaft, fills the "
        "plenum, so that the pressure of the supply grows with the square of the speed. The "
        "adjuster follows the speed by a schedule: its helix turns the exhaust track and "
        "moves it outward, for high compression at low speed and less where the wheel gives "
        "more, and the peak pressure stays below 55 bar. Look at: the strip below the torque "
        "curve, where the points of the schedule are dragged and the dashed line is the fixed"
        " setting; Find the best, which says what the schedule buys; the map over speed and "
        "load; the air path with the wheel and its power. The closed track holds the rollers "
        "while the starter turns it."),
    QT_TRANSLATE_NOOP("Samples", "Harbour-crane auxiliary"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. One piston per cylinder works against a fixed head and "
        "uncovers both rows of ports; its back pumps the air through a reed valve and the inlet "
        "ports, so that no blower is needed. Look at: the section with its head and the ports side "
        "by side in one liner; the timing, the same before and after outer dead centre; the "
        "under-piston pressure beside that in the chamber; the delivery ratio of the pump and what "
        "it costs; the surface to volume that a head adds. The closed track holds the rollers "
        "while the starter turns it."),
    QT_TRANSLATE_NOOP("Samples", "Hydrogen buoy generator"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. One cylinder on three-lobed tracks charges the batteries of "
        "a measuring buoy on very lean hydrogen: three power strokes per revolution from a single "
        "chamber, slowly turning. Look at: three cycles in one revolution, so that 120 degrees of "
        "the shaft are 360 degrees of a cycle; the lean burn, short and cool, with a low peak "
        "pressure; the pressure angle, which three lobes on a small circle drive up (raise the "
        "stroke and watch the limit). The generator, used as a motor, starts it: the rollers keep "
        "contact above about 240 rpm only."),
    QT_TRANSLATE_NOOP("Samples", "Sketched lobes with blower"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. Two lobes sketched by hand as knots of a spline, four "
        "cylinders, and a positive-displacement blower with a plenum and an after-cooler instead "
        "of a given supply pressure. Look at: the knots on the unrolled track (drag one and every "
        "plot follows); the plenum pressure, which the blower builds up by itself and which rises "
        "with speed; the blower's share of the indicated work. A starter must turn it past about "
        "210 rpm before the rollers keep contact."),
    QT_TRANSLATE_NOOP("Samples", "Turbocharged works generator"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. Four cylinders on two-lobed tracks drive the generator of a "
        "workshop on methane. A turbine behind an exhaust plenum drives a compressor wheel, and a "
        "blower on the shaft follows the wheel: it brings the air to start with and at low speed. "
        "Look at: the air path with each stage, its power and who pays; the speed of the wheel, "
        "found where the powers meet; how little the blower costs once the wheel turns; the "
        "pressure in the exhaust plenum, against which the cylinders scavenge. The closed track "
        "holds the rollers while the starter turns it."),
    QT_TRANSLATE_NOOP("Samples", "Terrace sprayer"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. Two small one-sided cylinders draw petrol and air as a "
        "mixture: the skirt uncovers its own row of ports near inner dead centre, the back of the "
        "piston pumps, and what of the mixture is not trapped leaves unburnt through the exhaust. "
        "Look at: the fuel lost and what it does to the specific consumption; the pressure under "
        "the piston, low until the skirt uncovers its row; the mixture that is pushed back before "
        "the row closes; the same engine with the fuel injected. The closed track holds the "
        "rollers while the cord turns it."),
    QT_TRANSLATE_NOOP("Samples", "Unequal lobes"),
    QT_TRANSLATE_NOOP(
        "Samples",
        "Invented, not a real engine. One pattern fills the whole revolution with two different "
        "lobes: a long one with a dwell at inner dead centre and a short, quick one. Every rise "
        "and return is a cycle of its own. Look at: the two cycles side by side in pressure and "
        "torque; the port events, listed for each cycle; what the quick lobe costs in pressure "
        "angle and contact stress, and what it gains in time for the gas to change. A starter must "
        "turn it past about 360 rpm before the rollers keep contact."),
};

Result<design::Design> load(const QString& resource) {
    QFile file(resource);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{"", LW_TEXT("the sample is missing in this program")};
    return design::readDesign(file.readAll().toStdString());
}

std::vector<Sample> listed() {
    std::vector<Sample> all;
    for (const QFileInfo& info : QDir(folder).entryInfoList(QDir::Files)) {
        const auto design = load(info.filePath());
        if (design) {
            all.push_back({info.filePath(), QString::fromStdString(design->title),
                           QString::fromStdString(design->notes)});
        }
    }
    std::ranges::sort(all, {}, [](const Sample& sample) {
        return std::pair(!sample.resource.contains(opensWith), sample.title);
    });
    return all;
}

} // namespace

const std::vector<Sample>& samples() {
    static const std::vector<Sample> all = listed();
    return all;
}

Result<design::Design> loadSample(const Sample& sample) {
    return load(sample.resource);
}

QString sampleText(const QString& text) {
    return QCoreApplication::translate("Samples", text.toUtf8().constData());
}

} // namespace lobewright::ui
