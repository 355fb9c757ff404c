#pragma once

#include "core/study/operating_points.h"

namespace lobewright::study {

/// Evenly spaced values of one direction of a map, both ends included.
struct MapSteps {
    double from = 0.0, to = 0.0;
    int count = 2;
};

/// Columns of the map of a design behind the speed, by name: "load", then figures of the summary,
/// those of its air supply last.
std::vector<std::string> loadMapColumns(const design::Design& design);

/// What runs along the first direction of the map.
Column loadMapParameter();

/// A design over speed [1/min] and load (running.load, 0 … 1) in the way its `load_by` sets the
/// load. The table's parameter is the speed; points come load by load, each over all speeds.
/// A point where the engine cannot be built or run says why.
/// Errors (path ""): speeds not positive, loads beyond 0 … 1, fewer than two steps, cancelled.
Result<Table> loadMap(const design::Design& design, const MapSteps& speeds, const MapSteps& loads,
                      Monitor& monitor, const PointSink& sink = {});

} // namespace lobewright::study
