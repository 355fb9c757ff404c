#include "core/gas/ring.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double samePose = 0.05; ///< a hand's step moves a period's start less [rad]

bool alike(const Ring::Pose& a, const Ring::Pose& b) {
    return a.y.size() == b.y.size() &&
           std::equal(a.members.begin(), a.members.end(), b.members.begin(), b.members.end(),
                      [](const Ring::Pose::Stand& x, const Ring::Pose::Stand& y) {
                          return std::fabs(x.localStart - y.localStart) < samePose &&
                                 x.behind == y.behind && x.memory.cycle == y.memory.cycle;
                      });
}

/// Calls `use` with every number of what a cylinder remembers.
template <class Use>
void eachNumber(Memory& memory, Use&& use) {
    for (double* number : {&memory.trappedMass, &memory.trappedPressure, &memory.trappedTemperature,
                           &memory.trappedVolume, &memory.trappedAir, &memory.fuelMass,
                           &memory.burnableFuel, &memory.startPressure, &memory.startVolume,
                           &memory.motoredIndex, &memory.displacedUntil}) {
        use(*number);
    }
    for (Stream* stream : {&memory.residual, &memory.slug, &memory.exhaustBack}) {
        for (double* number : {&stream->products, &stream->temperature, &stream->enthalpy,
                               &stream->gasConstant, &stream->gamma}) {
            use(*number);
        }
    }
}

std::vector<double> numbersOf(Memory memory) {
    std::vector<double> numbers;
    eachNumber(memory, [&](double number) { numbers.push_back(number); });
    return numbers;
}

} // namespace

/// At a closing everything lies ahead, whichever port closes last.
std::vector<unsigned> Ring::eventsBehind(std::size_t member) const {
    return standsAtClosing(member) ? std::vector<unsigned>()
                                   : eventsUpTo(members_[member].localStart);
}

Ring::Pose Ring::pose() const {
    Pose pose;
    pose.y = y_;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        pose.members.push_back({members_[k].localStart, eventsBehind(k), members_[k].memory});
    }
    if (!neighbours_.none()) {
        pose.steps = steps_;
        pose.freshIntervals = freshIntervals_;
    }
    return pose;
}

bool Ring::assume(const Pose& pose) {
    const bool followed = !neighbours_.none();
    bool sameStands = pose.members.size() == members_.size();
    for (std::size_t k = 0; sameStands && k < members_.size(); ++k) {
        sameStands = pose.members[k].behind == eventsBehind(k);
    }
    if (pose.y.size() != y_.size() || followed == pose.steps.begin.empty() || !sameStands) {
        return false;
    }
    y_ = pose.y;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        members_[k].memory = pose.members[k].memory;
    }
    if (followed) {
        neighbours_.remember(pose.steps, pose.freshIntervals);
    }
    return true;
}

Ring::Pose blend(const std::vector<const Ring::Pose*>& poses, const std::vector<double>& weights) {
    Ring::Pose blended = *poses.front();
    if (!std::all_of(poses.begin(), poses.end(),
                     [&](const Ring::Pose* pose) { return alike(*pose, blended); })) {
        return blended;
    }
    for (std::size_t j = 0; j < blended.y.size(); ++j) {
        blended.y[j] = 0.0;
        for (std::size_t i = 0; i < poses.size(); ++i) {
            blended.y[j] += weights[i] * poses[i]->y[j];
        }
    }
    for (std::size_t k = 0; k < blended.members.size(); ++k) {
        std::vector<std::vector<double>> memories;
        for (const Ring::Pose* pose : poses) {
            memories.push_back(numbersOf(pose->members[k].memory));
        }
        std::size_t j = 0;
        eachNumber(blended.members[k].memory, [&](double& number) {
            number = 0.0;
            for (std::size_t i = 0; i < poses.size(); ++i) {
                number += weights[i] * memories[i][j];
            }
            ++j;
        });
    }
    return blended;
}

} // namespace lobewright::gas
