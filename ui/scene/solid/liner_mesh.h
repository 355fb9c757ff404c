#pragma once

#include "ui/scene/solid/solid_mesh.h"

namespace lobewright::ui {

/// A port as a window of the wall, about the axis of the bore whose polar angle 0 points away from
/// the shaft: polar angles [rad] and heights [m].
struct Opening {
    double from, to, low, high;
};

/// The ports that an end's row has left in the cut liner, those that the skirt of that end uncovers
/// for the pump included.
std::vector<Opening> openingsOf(const ShownEngine& engine, End end);

/// How far the liner of an end reaches outward of the middle between the crowns [m]; 0 where a head
/// closes it.
double linerReach(const ShownEngine& engine, End end);

/// Half of what is cut out of a liner on the side away from the shaft [rad].
double linerCut();

/// Rails that the shoes of an end slide on, about the axis of the bore.
SolidMesh railMesh(const ShownEngine& engine, End end);

/// The faces of the ports of an end in the wall of the liner; about the axis of the bore.
SolidMesh portMesh(const ShownEngine& engine, End end);

/// The liner about the axis of the bore between two heights [m], cut open on the side away from the
/// shaft, with the ports left out of its wall.
SolidMesh linerMesh(const ShownEngine& engine, double low, double high);

} // namespace lobewright::ui
