// The part of EngineSolid that makes its solids.
#include "core/units.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/liner_mesh.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

void EngineSolid::load(Part& part, const SolidMesh& mesh) {
    if (!part.buffer.isCreated())
        part.buffer.create();
    part.buffer.bind();
    part.buffer.allocate(mesh.corners.data(),
                         static_cast<int>(mesh.corners.size() * sizeof(float)));
    part.buffer.release();
    part.size = mesh.size();
}

void EngineSolid::loadParts() {
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const SolidSizes& sizes = sizes_;
    const double b = 0.5 * mechanism.bore, r = mechanism.roller.radius;
    const double whole = units::turn;
    for (const End end : bothEnds) {
        if (pair.uncovers(end) == end) {
            const TrackMesh track = trackMesh(pair, sizes, end);
            load(running_[end], track.running);
            load(blanks_[end], track.blank);
            load(rails_[end], railMesh(engine_, end));
            rolled_[end] = RolledPath(pair.curve(end), mechanism.pitchRadius);
        }
        load(ports_[end], portMesh(engine_, end));
    }
    loadShaft();
    const double crown = 0.05 * b; // in the colour of its side
    load(crown_, tubeMesh(0.0, 0.985 * b, 0.0, crown, 0.0, whole));
    load(piston_, tubeMesh(0.0, 0.985 * b, crown, sizes.pistonLength, 0.0, whole));
    load(rings_, ringMesh(engine_));
    const CrossheadMesh crosshead = crossheadMesh(pair, sizes);
    load(fork_, crosshead.steel);
    load(bronze_, crosshead.bronze);
    const double w = mechanism.roller.width;
    load(roller_, tubeMesh(0.0, r, -0.5 * w, 0.5 * w, 0.0, whole));
    load(marks_, rollerMarks(mechanism.roller));
    const double face = 0.5 * mechanism.clearance;
    const bool isOneSided = mechanism.isOneSided();
    load(liner_, linerMesh(engine_, -linerReach(engine_, End::inlet),
                           isOneSided ? face : linerReach(engine_, End::exhaust)));
    if (isOneSided)
        load(head_, tubeMesh(0.0, 1.12 * b, face, headTop(pair), 0.0, whole));
    load(gas_, tubeMesh(0.0, 0.98 * b, 0.0, 1.0, 0.0, whole));
    stale_ = false;
}

/// The shaft, a line along it that shows how it stands, and a web with a hub behind each track.
void EngineSolid::loadShaft() {
    const SolidSizes& sizes = sizes_;
    const auto& pair = engine_.pair();
    const auto& mechanism = pair.mechanism();
    const double r = mechanism.roller.radius, whole = units::turn;
    const double s = sizes.shaftRadius;
    const double low = sizes.shaftLow, high = sizes.shaftHigh;
    load(shaft_, tubeMesh(0.0, s, low, high, 0.0, whole));
    const double half = 0.5 * units::degree * 8.0;
    load(key_, tubeMesh(0.9 * s, 1.08 * s, low, high, -half, half));
    const double rim = mechanism.pitchRadius - 0.5 * sizes.trackWidth;
    for (const End side : pair.pistons()) {
        const double sign = side == End::inlet ? -1.0 : 1.0;
        const double face = std::abs(sizes.rollerOrigin[side]) + 2.0 * r;
        const auto part = [&](double outer, double from, double to) {
            return tubeMesh(s, outer, std::min(sign * from, sign * to),
                            std::max(sign * from, sign * to), 0.0, whole);
        };
        SolidMesh web = part(1.02 * rim, face - 0.5 * r, face - 0.03 * r);
        const SolidMesh hub = part(std::min(1.6 * s, rim), face - 1.2 * r, face + 0.5 * r);
        web.corners.insert(web.corners.end(), hub.corners.begin(), hub.corners.end());
        load(webs_[side], web);
    }
}

} // namespace lobewright::ui
