#include "core/exchange/step_solid.h"

#include "core/units.h"

#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <Geom2d_BSplineCurve.hxx>
#include <Geom2d_Line.hxx>
#include <Geom_BSplineCurve.hxx>
#include <Geom_BSplineSurface.hxx>
#include <Geom_BezierCurve.hxx>
#include <Geom_Circle.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <Geom_Line.hxx>
#include <Geom_Plane.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TColgp_Array1OfPnt2d.hxx>
#include <TColgp_Array2OfPnt.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shell.hxx>
#include <TopoDS_Vertex.hxx>
#include <TopoDS_Wire.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Ax3.hxx>
#include <gp_Circ.hxx>

namespace lobewright::exchange {

namespace {

using units::millimetre;

gp_Pnt toPoint(const Eigen::Vector3d& metres) {
    return {metres.x() / millimetre, metres.y() / millimetre, metres.z() / millimetre};
}

/// An edge with the direction in which a wire passes it.
struct Passage {
    TopoDS_Edge edge;
    bool isForward = true;
};

/// A closed line about the shaft on a cylinder, passed with growing pattern angle: falling polar
/// angle. Divided into two halves at the seams.
struct Ring {
    double radius = 0.0; ///< [mm]
    std::array<std::vector<TopoDS_Edge>, 2> halves;
    std::array<TopoDS_Vertex, 2> seams; ///< where each half begins
    std::array<double, 2> seamAngle{};  ///< polar angle [rad]
    std::array<double, 2> seamZ{};      ///< [mm]
};

class SolidBuilder {
  public:
    SolidBuilder(const TrackPart& part, const Sectors& sectors,
                 const std::vector<FlankFaces>& faces)
        : part_(part), sectors_(sectors), faces_(faces), isMirrored_(part.end == End::exhaust) {
        double deviation = 0.0;
        for (const FlankFaces& flank : faces) {
            for (const FlankSpline& spline : flank) {
                deviation = std::max(deviation, spline.deviation);
            }
        }
        // Curve on the surface and curve on the cylinder both stray by no more than the deviation.
        precision_ = std::max(2.0 * deviation / millimetre, 1e-7);
    }

    TopoDS_Solid build() {
        builder_.MakeShell(shell_);
        const double bore = part_.boreRadius / millimetre, outside = part_.faceOuter / millimetre;
        const Ring backBore = circle(bore, part_.backHeight);
        const Ring backOutside = circle(outside, part_.backHeight);
        const auto [pushInner, pushOuter] = flank(0);
        plane(part_.backHeight, backBore, backOutside, false);
        cylinder(outside, backOutside, pushOuter, true);
        if (part_.isClosed()) {
            const Ring frontBore = circle(bore, part_.frontHeight);
            const Ring frontOutside = circle(outside, part_.frontHeight);
            const auto [pullInner, pullOuter] = flank(1);
            plane(part_.frontHeight, frontBore, frontOutside, true);
            cylinder(bore, backBore, frontBore, false);
            cylinder(part_.faceInner / millimetre, pushInner, pullInner, true);
            cylinder(outside, pullOuter, frontOutside, true);
        } else {
            cylinder(bore, backBore, pushInner, false);
        }
        shell_.Closed(true);
        TopoDS_Solid solid;
        builder_.MakeSolid(solid);
        builder_.Add(solid, shell_);
        return solid;
    }

  private:
    double z(double height) const { return part_.placement().axial(height) / millimetre; }

    TopoDS_Vertex vertex(const gp_Pnt& point) {
        TopoDS_Vertex result;
        builder_.MakeVertex(result, point, precision_);
        return result;
    }

    TopoDS_Edge edge(const Handle(Geom_Curve) & curve, const TopoDS_Vertex& from,
                     const TopoDS_Vertex& to, double begin, double end) {
        TopoDS_Edge result;
        builder_.MakeEdge(result, curve, precision_);
        builder_.Add(result, from.Oriented(TopAbs_FORWARD));
        builder_.Add(result, to.Oriented(TopAbs_REVERSED));
        builder_.Range(result, begin, end);
        return result;
    }

    TopoDS_Wire wire(const std::vector<Passage>& passages) {
        TopoDS_Wire result;
        builder_.MakeWire(result);
        for (const Passage& passage : passages) {
            builder_.Add(result, passage.edge.Oriented(passage.isForward ? TopAbs_FORWARD
                                                                         : TopAbs_REVERSED));
        }
        result.Closed(true);
        return result;
    }

    static std::vector<Passage> backwards(std::vector<Passage> passages) {
        std::ranges::reverse(passages);
        for (Passage& passage : passages) {
            passage.isForward = !passage.isForward;
        }
        return passages;
    }

    /// Adds a face to the shell. `passages` run counterclockwise about the surface's own normal
    /// when `isCounterclockwise`; `isOutward`: that normal points out of the solid.
    TopoDS_Face face(const Handle(Geom_Surface) & surface) {
        TopoDS_Face result;
        builder_.MakeFace(result, surface, precision_);
        return result;
    }
    void bound(TopoDS_Face& on, const std::vector<Passage>& passages, bool isCounterclockwise) {
        builder_.Add(on, wire(isCounterclockwise ? passages : backwards(passages)));
    }
    void join(const TopoDS_Face& done, bool isOutward) {
        builder_.Add(shell_, done.Oriented(isOutward ? TopAbs_FORWARD : TopAbs_REVERSED));
    }

    double seamBound(int seam) const { return sectors_.bounds[seam == 0 ? 0 : sectors_.seam]; }

    Ring circle(double radius, double height) {
        Ring ring;
        ring.radius = radius;
        for (std::size_t seam : {0U, 1U}) {
            const double angle = part_.placement().polarAngle(seamBound(static_cast<int>(seam)));
            ring.seamAngle[seam] = angle;
            ring.seamZ[seam] = z(height);
            ring.seams[seam] =
                vertex({radius * std::cos(angle), radius * std::sin(angle), z(height)});
        }
        // The axis looks down, so that the parameter −ϑ grows with the pattern angle.
        const gp_Ax2 axes({0.0, 0.0, z(height)}, {0.0, 0.0, -1.0}, {1.0, 0.0, 0.0});
        const double begin = -ring.seamAngle[0], middle = -ring.seamAngle[1];
        const Handle(Geom_Circle) curve = new Geom_Circle(gp_Circ(axes, radius));
        ring.halves[0] = {edge(curve, ring.seams[0], ring.seams[1], begin, middle)};
        ring.halves[1] = {edge(curve, ring.seams[1], ring.seams[0], middle, begin + units::turn)};
        return ring;
    }

    static TColStd_Array1OfReal toKnots(const FlankSpline& spline) {
        TColStd_Array1OfReal knots(1, static_cast<int>(spline.knots.size()));
        for (std::size_t i = 0; i < spline.knots.size(); ++i) {
            knots.SetValue(static_cast<int>(i) + 1, spline.knots[i]);
        }
        return knots;
    }
    static TColStd_Array1OfInteger toMultiplicities(const FlankSpline& spline) {
        TColStd_Array1OfInteger result(1, static_cast<int>(spline.multiplicities.size()));
        for (std::size_t i = 0; i < spline.multiplicities.size(); ++i) {
            result.SetValue(static_cast<int>(i) + 1, spline.multiplicities[i]);
        }
        return result;
    }

    static Handle(Geom_BSplineSurface) toSurface(const FlankSpline& spline) {
        const int along = static_cast<int>(spline.poles.front().cols());
        const int across = static_cast<int>(spline.poles.size());
        TColgp_Array2OfPnt poles(1, along, 1, across);
        for (int j = 0; j < across; ++j) {
            for (int i = 0; i < along; ++i) {
                poles.SetValue(i + 1, j + 1,
                               toPoint(spline.poles[static_cast<std::size_t>(j)].col(i)));
            }
        }
        TColStd_Array1OfReal ends(1, 2);
        ends.SetValue(1, 0.0);
        ends.SetValue(2, 1.0);
        TColStd_Array1OfInteger full(1, 2);
        full.Init(spline.degreeAcross + 1);
        return new Geom_BSplineSurface(poles, toKnots(spline), ends, toMultiplicities(spline), full,
                                       FlankSpline::degreeAlong, spline.degreeAcross);
    }

    static Handle(Geom_BSplineCurve)
        toCurve(const FlankSpline& spline, const Eigen::Matrix3Xd& poles) {
        TColgp_Array1OfPnt points(1, static_cast<int>(poles.cols()));
        for (int i = 0; i < poles.cols(); ++i) {
            points.SetValue(i + 1, toPoint(poles.col(i)));
        }
        return new Geom_BSplineCurve(points, toKnots(spline), toMultiplicities(spline),
                                     FlankSpline::degreeAlong);
    }

    static Handle(Geom2d_BSplineCurve)
        toTrace(const FlankSpline& spline, const Eigen::Matrix2Xd& poles) {
        TColgp_Array1OfPnt2d points(1, static_cast<int>(poles.cols()));
        for (int i = 0; i < poles.cols(); ++i) {
            points.SetValue(i + 1, {poles(0, i), poles(1, i) / millimetre});
        }
        return new Geom2d_BSplineCurve(points, toKnots(spline), toMultiplicities(spline),
                                       FlankSpline::degreeAlong);
    }

    static Handle(Geom2d_Line) straight(double u, double v, double du, double dv) {
        return new Geom2d_Line(gp_Pnt2d(u, v), gp_Dir2d(du, dv));
    }

    /// One surface object for each half of a cylinder: a seam lies a turn further on for the half
    /// that ends there, and an edge keeps one curve for each surface object.
    Handle(Geom_CylindricalSurface) cylinderOf(double radius, std::size_t half) {
        for (const auto& known : cylinders_[half]) {
            if (known->Radius() == radius) {
                return known;
            }
        }
        cylinders_[half].push_back(new Geom_CylindricalSurface(gp_Ax3(), radius));
        return cylinders_[half].back();
    }

    /// All faces of one flank, with the rings that bound them.
    std::array<Ring, 2> flank(std::size_t index) {
        const FlankFaces& splines = faces_[index];
        const std::size_t count = splines.size();
        std::array<Ring, 2> rings;
        std::array<std::vector<TopoDS_Vertex>, 2> corners;
        std::vector<TopoDS_Edge> across;
        for (std::size_t k = 0; k < count; ++k) {
            const FlankSpline& spline = splines[k];
            const auto stations = static_cast<int>(spline.poles.size());
            TColgp_Array1OfPnt line(1, stations);
            for (int j = 0; j < stations; ++j) {
                line.SetValue(j + 1, toPoint(spline.poles[static_cast<std::size_t>(j)].col(0)));
            }
            for (std::size_t side : {0U, 1U}) {
                corners[side].push_back(vertex(line.Value(side == 0 ? 1 : stations)));
            }
            across.push_back(
                edge(new Geom_BezierCurve(line), corners[0][k], corners[1][k], 0.0, 1.0));
        }
        for (std::size_t k = 0; k < count; ++k) {
            sectorFace(index, k, corners, across, rings);
        }
        for (std::size_t side : {0U, 1U}) {
            rings[side].radius = (side == 0 ? part_.faceInner : part_.faceOuter) / millimetre;
            for (std::size_t seam : {0U, 1U}) {
                const std::size_t k = seam == 0 ? 0 : sectors_.seam;
                const Eigen::Matrix2Xd& trace =
                    side == 0 ? splines[k].innerTrace : splines[k].outerTrace;
                rings[side].seams[seam] = corners[side][k];
                rings[side].seamAngle[seam] = trace(0, 0);
                rings[side].seamZ[seam] = trace(1, 0) / millimetre;
            }
        }
        return rings;
    }

    void sectorFace(std::size_t index, std::size_t k,
                    const std::array<std::vector<TopoDS_Vertex>, 2>& corners,
                    const std::vector<TopoDS_Edge>& across, std::array<Ring, 2>& rings) {
        const FlankFaces& splines = faces_[index];
        const FlankSpline& spline = splines[k];
        const std::size_t next = (k + 1) % splines.size();
        const double begin = spline.knots.front(), end = spline.knots.back();
        TopoDS_Face on = face(toSurface(spline));
        std::array<TopoDS_Edge, 2> sides;
        for (std::size_t side : {0U, 1U}) {
            const auto& poles = side == 0 ? spline.poles.front() : spline.poles.back();
            sides[side] =
                edge(toCurve(spline, poles), corners[side][k], corners[side][next], begin, end);
            const double v = side == 0 ? 0.0 : 1.0;
            builder_.UpdateEdge(sides[side], straight(0.0, v, 1.0, 0.0), on, precision_);
            const double radius = (side == 0 ? part_.faceInner : part_.faceOuter) / millimetre;
            const std::size_t half = k < sectors_.seam ? 0 : 1;
            builder_.UpdateEdge(sides[side],
                                toTrace(spline, side == 0 ? spline.innerTrace : spline.outerTrace),
                                cylinderOf(radius, half), TopLoc_Location(), precision_);
            rings[side].halves[half].push_back(sides[side]);
        }
        builder_.UpdateEdge(across[k], straight(begin, 0.0, 0.0, 1.0), on, precision_);
        builder_.UpdateEdge(across[next], straight(end, 0.0, 0.0, 1.0), on, precision_);
        // Along × across is upward at the inlet end, downward at the exhaust end.
        bound(on, {{sides[0], true}, {across[next], true}, {sides[1], false}, {across[k], false}},
              true);
        const bool isPush = index == 0;
        join(on, isPush != isMirrored_);
    }

    /// Both halves of a cylinder between two rings, `upper` the one further inward.
    void cylinder(double radius, const Ring& lower, const Ring& upper, bool isOutward) {
        std::array<TopoDS_Edge, 2> rises;
        const double sense = upper.seamZ[0] > lower.seamZ[0] ? 1.0 : -1.0;
        for (std::size_t seam : {0U, 1U}) {
            const gp_Pnt foot = BRep_Tool::Pnt(lower.seams[seam]);
            rises[seam] =
                edge(new Geom_Line(foot, gp_Dir(0.0, 0.0, sense)), lower.seams[seam],
                     upper.seams[seam], 0.0, sense * (upper.seamZ[seam] - lower.seamZ[seam]));
        }
        for (std::size_t half : {0U, 1U}) {
            const std::size_t next = 1 - half;
            const Handle(Geom_CylindricalSurface) surface = cylinderOf(radius, half);
            traceCircles(lower, half, surface);
            traceCircles(upper, half, surface);
            for (std::size_t seam : {half, next}) {
                // The polar angle falls; the second half ends a turn below where the first began.
                const double angle =
                    lower.seamAngle[seam] - (half == 1 && seam == 0 ? units::turn : 0.0);
                builder_.UpdateEdge(rises[seam], straight(angle, lower.seamZ[seam], 0.0, sense),
                                    surface, TopLoc_Location(), precision_);
            }
            std::vector<Passage> passages;
            for (const TopoDS_Edge& e : lower.halves[half]) {
                passages.push_back({e, true});
            }
            passages.push_back({rises[next], true});
            for (auto e = upper.halves[half].rbegin(); e != upper.halves[half].rend(); ++e) {
                passages.push_back({*e, false});
            }
            passages.push_back({rises[half], false});
            TopoDS_Face on = face(surface);
            // Falling polar angle, then inward: clockwise about the outward normal at the inlet
            // end.
            bound(on, passages, isMirrored_);
            join(on, isOutward);
        }
    }

    void traceCircles(const Ring& ring, std::size_t half,
                      const Handle(Geom_CylindricalSurface) & surface) {
        for (const TopoDS_Edge& e : ring.halves[half]) {
            double begin = 0.0, end = 0.0;
            TopLoc_Location place;
            const Handle(Geom_Curve) curve = BRep_Tool::Curve(e, place, begin, end);
            if (curve->IsKind(STANDARD_TYPE(Geom_Circle))) {
                builder_.UpdateEdge(e, straight(0.0, ring.seamZ[0], -1.0, 0.0), surface,
                                    TopLoc_Location(), precision_);
            }
        }
    }

    void plane(double height, const Ring& inner, const Ring& outer, bool isUpward) {
        TopoDS_Face on = face(new Geom_Plane(gp_Ax3({0.0, 0.0, z(height)}, {0.0, 0.0, 1.0})));
        const auto passages = [](const Ring& ring) {
            std::vector<Passage> all;
            for (const auto& half : ring.halves) {
                for (const TopoDS_Edge& e : half) {
                    all.push_back({e, true});
                }
            }
            return all;
        };
        bound(on, passages(outer), false); // the rings run clockwise about +z
        bound(on, passages(inner), true);
        join(on, isUpward != isMirrored_);
    }

    const TrackPart& part_;
    const Sectors& sectors_;
    const std::vector<FlankFaces>& faces_;
    bool isMirrored_;
    double precision_ = 0.0; ///< [mm]
    BRep_Builder builder_;
    TopoDS_Shell shell_;
    std::array<std::vector<Handle(Geom_CylindricalSurface)>, 2> cylinders_;
};

} // namespace

TopoDS_Solid trackSolid(const TrackPart& part, const Sectors& sectors,
                        const std::vector<FlankFaces>& faces) {
    return SolidBuilder(part, sectors, faces).build();
}

} // namespace lobewright::exchange
