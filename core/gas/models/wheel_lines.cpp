#include "core/gas/models/wheel_lines.h"

#include "core/gas/models/compressor.h"

#include <algorithm>

namespace lobewright::gas {

std::vector<WheelLine> wheelLines(const Wheel& wheel, const std::vector<double>& speeds,
                                  int points) {
    std::vector<WheelLine> lines;
    for (const double speed : speeds) {
        const TurningWheel turning(wheel, dryAir(), wheel.referencePressure,
                                   wheel.referenceTemperature, speed);
        const double from = turning.curve().surgeFlow(), to = turning.curve().chokeFlow();
        WheelLine line{speed, {}, {}, {}};
        for (int i = 0; i < points; ++i) {
            const double flow = turning.flowUnit() * (from + (to - from) * i / (points - 1));
            line.flow.push_back(flow);
            line.ratio.push_back(turning.pressureRatio(flow));
            line.efficiency.push_back(turning.efficiency(flow));
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<double> measuredSpeeds(const Wheel& wheel) {
    std::vector<double> speeds;
    for (const WheelPoint& point : wheel.points) {
        speeds.push_back(point.speed);
    }
    std::ranges::sort(speeds);
    const auto repeated = std::ranges::unique(speeds);
    speeds.erase(repeated.begin(), repeated.end());
    return speeds;
}

} // namespace lobewright::gas
