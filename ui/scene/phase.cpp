#include "ui/scene/phase.h"

#include <QCoreApplication>

namespace lobewright::ui {

Phase phaseAt(const ShownEngine& engine, double theta) {
    const auto events = engine.eventsSince(theta);
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

QString phaseName(Phase phase) {
    const auto text = [](const char* source) {
        return QCoreApplication::translate("Phase", source);
    };
    switch (phase) {
    case Phase::compression:
        return text("compression");
    case Phase::burning:
        return text("burning");
    case Phase::expansion:
        return text("expansion");
    case Phase::blowdown:
        return text("blowdown");
    case Phase::inletFirst:
        return text("inlet open first");
    case Phase::scavenging:
        return text("scavenging");
    case Phase::afterCharge:
        return text("after-charge");
    case Phase::exhaustRemains:
        return text("exhaust open last");
    }
    return {};
}

} // namespace lobewright::ui
