#include "core/solution/checks/checks.h"
#include "core/units.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void addSupplyChecks(CheckList& list, const gas::CycleSolution& gas, const design::Design& design) {
    if (!gas.compressor) {
        return;
    }
    const gas::CompressorFigures& compressor = *gas.compressor;
    const double phi = compressor.flowCoefficient;
    if (phi < compressor.surgeFlow) {
        list.add(
            {"compressor-surge", Severity::warning,
             Message(LW_TEXT("The compressor surges at %1 of the shaft, its wheel at %2: flow "
                             "coefficient %3, surge below %4. Use a smaller or slower wheel or "
                             "larger ports. The results are means of a flow that pulsates."),
                     Amount(design.running.speed, in::rpm), Amount(compressor.wheelSpeed, in::rpm),
                     number(phi, 3), number(compressor.surgeFlow, 3)),
             phi, compressor.surgeFlow, &in::pure, "/gas/supply/wheel/diameter_mm", std::nullopt,
             QuantityId{"compressor_flow_coefficient"}});
    }
    list.atMost({"compressor-choke", LW_TEXT("Flow coefficient of the compressor wheel"), &in::pure,
                 "/gas/supply/wheel/diameter_mm",
                 LW_TEXT("use a larger or faster wheel; this one is choked"), std::nullopt,
                 QuantityId{"compressor_flow_coefficient"}},
                phi, {0.95 * compressor.chokeFlow, compressor.chokeFlow});
    if (gas.turbine && !gas.turbine->sustained) {
        list.add({"turbocharger-idles", Severity::warning,
                  Message(LW_TEXT("At %1 of the shaft the turbocharger does not sustain itself: "
                                  "its wheel idles, and the blower alone delivers the air. A "
                                  "smaller nozzle or a hotter exhaust lowers that speed."),
                          Amount(design.running.speed, in::rpm)),
                  0.0, 1.0, &in::pure, "/gas/supply/turbine/nozzle_mm2", std::nullopt,
                  QuantityId{"wheel_sustained"}});
    }
}

} // namespace lobewright::solution
