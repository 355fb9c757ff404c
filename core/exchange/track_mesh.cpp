#include "core/exchange/track_mesh.h"

#include "core/exchange/refine.h"
#include "core/exchange/stop.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

using Vector = Eigen::Vector3d;

/// Sagittas at the middle of the edges of a triangle may add up towards its centre; this share of
/// the tolerance at the edges keeps the centre within it [own estimate, held by a test].
constexpr double edgeShare = 0.7;
constexpr double finest = 1e-8; ///< chord error below which numbers in files lose meaning [m]
constexpr int stationCounts[] = {1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64};

/// How finely a face must be divided.
struct Grid {
    std::vector<double> phi; ///< pattern angles of one repetition, both ends included [rad]
    int across = 1;          ///< intervals between the two cylinders
    std::size_t size() const { return phi.size() * static_cast<std::size_t>(across + 1); }
    bool isTooFine() const { return phi.empty(); }
};

class Gridder {
  public:
    Gridder(const TrackPart& part, double begin, double chordError, Monitor& monitor)
        : part_(part), begin_(begin), allowed_(edgeShare * chordError),
          stop_(monitor, 0.1, LW_TEXT("dividing the faces")) {}

    /// The smallest grid of several that keeps the chord error, without angles where each would
    /// make too many triangles; nothing when the work is to stop.
    std::optional<Grid> best() {
        Grid best;
        for (int across : stationCounts) {
            if (across < stationCounts[std::size(stationCounts) - 1] && !isFineAcross(across)) {
                continue;
            }
            Grid grid{along(across), across};
            if (grid.isTooFine()) {
                continue;
            }
            // More stations save angles until the walls alone decide them; from then on they only
            // add.
            if (!best.phi.empty() && grid.size() >= best.size()) {
                break;
            }
            best = std::move(grid);
        }
        return stop_.isWanted() ? std::nullopt : std::optional(std::move(best));
    }

  private:
    double radius(double share) const {
        return part_.faceInner + share * (part_.faceOuter - part_.faceInner);
    }

    /// Whether the lines between neighbouring stations keep the chord error, which no finer
    /// division along the track can better.
    bool isFineAcross(int across) {
        constexpr int places = 64; // in each stretch
        const motion::LiftCurve& curve = part_.curve();
        const std::vector<double>& bounds = curve.divisions();
        for (const FlankForm& form : part_.flanks) {
            for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
                for (int k = 0; k < places; ++k) {
                    const double phi = bounds[i] + (bounds[i + 1] - bounds[i]) * (k + 0.5) / places;
                    if (stop_.isWanted()) {
                        return true;
                    }
                    if (!isLineFine(form, phi, across)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
    bool isLineFine(const FlankForm& form, double phi, int across) const {
        for (int j = 0; j < across; ++j) {
            const Vector inner = spacePoint(form, phi, radius(1.0 * j / across)).value;
            const Vector outer = spacePoint(form, phi, radius((j + 1.0) / across)).value;
            if (off(form, phi, radius((j + 0.5) / across), inner, outer) > allowed_) {
                return false;
            }
        }
        return true;
    }

    /// When the work is to stop everything counts as fine; empty where the triangles would be too
    /// many. At about 0.01 µm the digits of the surface itself run out: no division is fine enough.
    std::vector<double> along(int across) {
        const motion::LiftCurve& curve = part_.curve();
        const std::size_t most =
            mostTriangles /
            (2 * static_cast<std::size_t>(across * curve.lobes()) * part_.flanks.size());
        std::size_t divided = 0;
        const auto isFine = [&](double a, double b) {
            if (stop_.isWanted() || divided > most) {
                return true;
            }
            const bool fine = std::ranges::all_of(part_.flanks, [&](const FlankForm& form) {
                return isWallFine(form, a, b) && isFaceFine(form, a, b, across);
            });
            divided += fine ? 0 : 1;
            return fine;
        };
        auto angles = refined(stretchBounds(curve, begin_, begin_ + curve.period()), isFine, 24);
        return divided > most ? std::vector<double>() : angles;
    }

    /// Sagitta of the boundary curves on their cylinders.
    bool isWallFine(const FlankForm& form, double a, double b) const {
        for (double s : {part_.faceInner, part_.faceOuter}) {
            const double turn =
                section(form, a, s).angle.value - section(form, b, s, Limit::before).angle.value;
            if (s * (1.0 - std::cos(0.5 * turn)) > allowed_) {
                return false;
            }
        }
        return true;
    }

    /// Distance of the surface from the middles of all edges of the two triangles of each
    /// quadrilateral, along its normal.
    bool isFaceFine(const FlankForm& form, double a, double b, int across) const {
        const double middle = 0.5 * (a + b);
        std::array<Vector, 2> previous{Vector::Zero(), Vector::Zero()};
        for (int j = 0; j <= across; ++j) {
            const double s = radius(static_cast<double>(j) / across);
            const std::array<Vector, 2> here{spacePoint(form, a, s).value,
                                             spacePoint(form, b, s, Limit::before).value};
            if (off(form, middle, s, here[0], here[1]) > allowed_) {
                return false;
            }
            if (j > 0) {
                const double between = radius((j - 0.5) / across);
                if (off(form, middle, between, previous[0], here[1]) > allowed_) {
                    return false;
                }
            }
            previous = here;
        }
        return true;
    }

    double off(const FlankForm& form, double phi, double s, const Vector& p,
               const Vector& q) const {
        const Vector at = spacePoint(form, phi, s).value;
        return std::abs((at - 0.5 * (p + q)).dot(normal(form, phi, s)));
    }

    const TrackPart& part_;
    double begin_, allowed_;
    Stop stop_;
};

/// A closed line about the shaft: polar angles descending over one turn, and its vertices.
struct Ring {
    std::vector<double> angle;
    std::vector<std::uint32_t> vertex;
    std::size_t size() const { return vertex.size(); }
    /// Counts on past the turn.
    double angleAt(std::size_t i) const {
        return i < size() ? angle[i] : angle[i - size()] - units::turn;
    }
    std::uint32_t vertexAt(std::size_t i) const { return vertex[i < size() ? i : i - size()]; }
};

class Mesher {
  public:
    Mesher(const TrackPart& part, Monitor& monitor, double chordError)
        : part_(part), monitor_(monitor), chordError_(chordError),
          isMirrored_(part.end == End::exhaust) {}

    Result<Mesh> run() {
        const double begin = sectors(part_.curve()).bounds.front();
        if (!monitor_.step(0.05, LW_TEXT("dividing the faces"))) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        const auto grid = Gridder(part_, begin, chordError_, monitor_).best();
        if (!grid) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        if (grid->isTooFine()) {
            return Problem{"/tolerance_um",
                           Message(LW_TEXT("a mesh within %1 has more than %2 million triangles; "
                                           "allow a coarser tolerance"),
                                   Amount(chordError_, in::um, 3), mostTriangles / 1000000)};
        }
        std::vector<Face> faces;
        for (const FlankForm& form : part_.flanks) {
            const double done = 0.2 + 0.3 * static_cast<double>(faces.size());
            if (!monitor_.step(done, LW_TEXT("placing points"))) {
                return Problem{"", LW_TEXT("cancelled")};
            }
            Stop stop(monitor_, done, LW_TEXT("placing points"));
            faces.push_back(face(form, *grid, stop));
            if (stop.isWanted()) {
                return Problem{"", LW_TEXT("cancelled")};
            }
        }
        if (!monitor_.step(0.8, LW_TEXT("joining the walls"))) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        close(faces, part_.placement().polarAngle(begin));
        mesh_.vertices.resize(3, static_cast<Eigen::Index>(points_.size()));
        for (std::size_t i = 0; i < points_.size(); ++i) {
            mesh_.vertices.col(static_cast<Eigen::Index>(i)) = points_[i];
        }
        return std::move(mesh_);
    }

  private:
    struct Face {
        Ring inner, outer;
    };

    std::uint32_t add(const Vector& point) {
        points_.push_back(point);
        return static_cast<std::uint32_t>(points_.size() - 1);
    }
    /// Corners counterclockwise seen from outside at the inlet end, from inside where `isFlipped`.
    void triangle(std::uint32_t a, std::uint32_t b, std::uint32_t c, bool isFlipped) {
        mesh_.triangles.push_back(isFlipped != isMirrored_ ? std::array{a, c, b}
                                                           : std::array{a, b, c});
    }

    Face face(const FlankForm& form, const Grid& grid, Stop& stop) {
        const double period = form.curve.period();
        const std::size_t perLobe = grid.phi.size() - 1;
        const std::size_t count = perLobe * static_cast<std::size_t>(form.curve.lobes());
        const auto stations = static_cast<std::size_t>(grid.across) + 1;
        const auto first = static_cast<std::uint32_t>(points_.size());
        Face result;
        for (std::size_t i = 0; i < count && !stop.isWanted(); ++i) {
            const std::size_t lobe = i / perLobe;
            const double phi = grid.phi[i % perLobe] + static_cast<double>(lobe) * period;
            for (std::size_t j = 0; j < stations; ++j) {
                const double share = static_cast<double>(j) / grid.across;
                const double s = part_.faceInner + share * (part_.faceOuter - part_.faceInner);
                const std::uint32_t index = add(spacePoint(form, phi, s).value);
                for (Ring* ring : {j == 0 ? &result.inner : nullptr,
                                   j + 1 == stations ? &result.outer : nullptr}) {
                    if (ring) {
                        ring->angle.push_back(section(form, phi, s).angle.value);
                        ring->vertex.push_back(index);
                    }
                }
            }
        }
        const bool isPull = form.flank == track::Flank::pull;
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t j = 0; j + 1 < stations; ++j) {
                const auto at = [&](std::size_t along, std::size_t across) {
                    return first + static_cast<std::uint32_t>((along % count) * stations + across);
                };
                triangle(at(i, j), at(i + 1, j), at(i + 1, j + 1), isPull);
                triangle(at(i, j), at(i + 1, j + 1), at(i, j + 1), isPull);
            }
        }
        return result;
    }

    /// A circle about the shaft, begun at this polar angle.
    Ring circle(double radius, double height, double begin) {
        const double largest =
            2.0 * std::acos(1.0 - std::min(edgeShare * chordError_ / radius, 0.5));
        const auto count =
            std::max<std::size_t>(12, static_cast<std::size_t>(std::ceil(units::turn / largest)));
        Ring ring;
        for (std::size_t i = 0; i < count; ++i) {
            const double angle =
                begin - units::turn * static_cast<double>(i) / static_cast<double>(count);
            ring.angle.push_back(angle);
            ring.vertex.push_back(add({radius * std::cos(angle), radius * std::sin(angle),
                                       part_.placement().axial(height)}));
        }
        return ring;
    }

    /// Triangles between two rings that begin at the same polar angle; always the ring that lags
    /// behind goes on, so that no triangle spans more than the longer of two steps.
    void strip(const Ring& a, const Ring& b, bool isFlipped) {
        std::size_t i = 0, j = 0;
        while (i < a.size() || j < b.size()) {
            const bool isFirst =
                j == b.size() || (i < a.size() && a.angleAt(i + 1) >= b.angleAt(j + 1));
            if (isFirst) {
                triangle(a.vertexAt(i), a.vertexAt(i + 1), b.vertexAt(j), isFlipped);
                ++i;
            } else {
                triangle(a.vertexAt(i), b.vertexAt(j + 1), b.vertexAt(j), isFlipped);
                ++j;
            }
        }
    }

    void close(const std::vector<Face>& faces, double begin) {
        const TrackPart& p = part_;
        const Ring backBore = circle(p.boreRadius, p.backHeight, begin);
        const Ring backOutside = circle(p.faceOuter, p.backHeight, begin);
        strip(backBore, backOutside, true);
        strip(backOutside, faces[0].outer, true);
        if (!p.isClosed()) {
            strip(backBore, faces[0].inner, false);
            return;
        }
        const Ring frontBore = circle(p.boreRadius, p.frontHeight, begin);
        const Ring frontOutside = circle(p.faceOuter, p.frontHeight, begin);
        strip(backBore, frontBore, false);
        strip(frontBore, frontOutside, false);
        strip(faces[0].inner, faces[1].inner, true);
        strip(faces[1].outer, frontOutside, true);
    }

    const TrackPart& part_;
    Monitor& monitor_;
    double chordError_;
    bool isMirrored_;
    std::vector<Vector> points_;
    Mesh mesh_;
};

} // namespace

Result<Mesh> trackMesh(const TrackPart& part, double chordError, Monitor& monitor) {
    if (!(chordError >= finest)) {
        return Problem{"/tolerance_um",
                       Message(LW_TEXT("the chord error is %1; it must be at least %2"),
                               Amount(chordError, in::um, 3), Amount(finest, in::um, 3))};
    }
    return Mesher(part, monitor, chordError).run();
}

} // namespace lobewright::exchange
