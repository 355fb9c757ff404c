#include "ui/scene/base/phase.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

// An event reached over several turns may miss its own angle by rounding [rad].
constexpr double rounding = 1e-9;

} // namespace

Phase phaseAt(const ShownEngine& engine, double theta) {
    const auto events = engine.eventsSince(theta);
    theta += rounding;
    const auto open = [&](End end) {
        return theta >= events.opens(end) && theta < events.closes(end);
    };
    const bool inlet = open(End::inlet), exhaust = open(End::exhaust);
    if (inlet && exhaust)
        return Phase::scavenging;
    if (exhaust)
        return theta < events.inletOpens ? Phase::blowdown : Phase::exhaustRemains;
    if (inlet)
        return theta < events.exhaustOpens ? Phase::inletFirst : Phase::afterCharge;
    const auto gas = engine.gasAt(theta);
    if (gas && gas->burning)
        return Phase::burning;
    return theta < events.firstOpening() ? Phase::expansion : Phase::compression;
}

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Phase)
};
} // namespace

QString phaseName(Phase phase) {
    const QString names[] = {Words::tr("compression"),      Words::tr("combustion"),
                             Words::tr("expansion"),        Words::tr("blowdown"),
                             Words::tr("inlet open first"), Words::tr("scavenging"),
                             Words::tr("after-charge"),     Words::tr("exhaust open last")};
    return names[static_cast<std::size_t>(phase)];
}

} // namespace lobewright::ui
