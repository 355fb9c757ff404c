#pragma once

#include "ui/scene/base/shown_engine.h"

#include <QVector3D>

#include <vector>

namespace lobewright::ui {

/// Triangles with a normal at every corner, ready for a vertex buffer: x y z nx ny nz, in metres.
struct SolidMesh {
    std::vector<float> corners;
    /// Wound counter-clockwise as seen from where the normals point.
    void triangle(const QVector3D (&points)[3], const QVector3D (&normals)[3]);
    /// Two triangles a b c, a c d.
    void quad(const QVector3D (&points)[4], const QVector3D (&normals)[4]);
    void append(const SolidMesh& other);
    int size() const { return static_cast<int>(corners.size() / 6); }
};

/// Axial sizes of the solid view that the design does not state but a picture needs [m].
struct SolidSizes {
    double pistonLength = 0.0;  ///< crown to skirt end
    double axisDistance = 0.0;  ///< crown to roller axis
    double trackWidth = 0.0;    ///< radial width of the flanks
    double pullThickness = 0.0; ///< of a closed track's inner rim where it is thinnest
    double shaftRadius = 0.0;
    /// z of the roller axes at lift 0; 0 in the middle between the crowns at inner dead centre.
    PerEnd<double> rollerOrigin;
    double shaftLow = 0.0, shaftHigh = 0.0; ///< z of both ends of the shaft
};
/// Crown to skirt end of the piston drawn [m].
double drawnPistonLength(const mechanism::OpposedPair& pair);

/// Takes as long as a search over a turn: keep it while the pair stays.
SolidSizes solidSizes(const mechanism::OpposedPair& pair);

/// z of the outside of the head of a one-sided engine [m].
double headTop(const mechanism::OpposedPair& pair);

/// A track in its own frame, which turns about z with θ: what the rollers run on, and the blank
/// with both rims and the back. A closed track has the pull flank as well, and a groove between
/// them that opens away from the shaft.
struct TrackMesh {
    SolidMesh running, blank;
};
TrackMesh trackMesh(const mechanism::OpposedPair& pair, const SolidSizes& sizes, End end);

/// Tube or rod about z from z1 to z2; `from`, `to`: polar angles of a part of it [rad]. Capped when
/// whole and solid (`inner` = 0).
SolidMesh tubeMesh(double inner, double outer, double z1, double z2, double from, double to);

/// Block with its faces along the axes.
SolidMesh boxMesh(const QVector3D& low, const QVector3D& high);

/// What holds a roller, about the axis of the bore, whose polar angle 0 points away from the shaft;
/// z from the crown.
struct CrossheadMesh {
    SolidMesh steel;  ///< rod, plate and fork; of a closed track one arm outside the groove
    SolidMesh bronze; ///< pin and shoes
};
CrossheadMesh crossheadMesh(const mechanism::OpposedPair& pair, const SolidSizes& sizes);

/// Marks on a roller about its own axis, z along it: three lines over the running face that end on
/// its faces, so that it is seen to roll.
SolidMesh rollerMarks(const track::Roller& roller);

/// Piston rings about the axis of the bore; z from the crown.
SolidMesh ringMesh(const ShownEngine& engine);

} // namespace lobewright::ui
