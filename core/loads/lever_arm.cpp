#include "core/loads/lever_arm.h"

namespace lobewright::loads {

Samples leverArm(const Samples& y1) {
    return -y1;
}

Samples crankLeverArm(double stroke, double rodRatio, const Samples& tau) {
    const Samples sine = tau.sin();
    return 0.5 * stroke * sine *
           (1.0 + rodRatio * tau.cos() / (1.0 - rodRatio * rodRatio * sine.square()).sqrt());
}

} // namespace lobewright::loads
