#include "core/study/law_comparison.h"

#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

using motion::Law;
using motion::Segment;
using motion::SegmentKind;

motion::Pattern& patternOf(design::Design& design, End end) {
    return end == End::exhaust && design.tracks.exhaust ? *design.tracks.exhaust
                                                        : design.tracks.inlet;
}

std::string trackPath(const design::Design& design, End end) {
    return std::string("/tracks/") + name(design.tracks.exhaust ? end : End::inlet);
}

bool takesLaw(const Segment& segment, int index, std::optional<int> chosen) {
    return segment.kind != SegmentKind::dwell && (!chosen || *chosen == index);
}

Problems checkChoice(const design::Design& design, End end, std::optional<int> segment) {
    const auto* shape = std::get_if<motion::SegmentShape>(&design.tracks[end].shape);
    if (!shape) {
        return {
            {trackPath(design, end), LW_TEXT("the track has no segments that could take a law")}};
    }
    if (!segment)
        return {};
    const std::string path = fmt::format("{}/segments/{}", trackPath(design, end), *segment);
    if (*segment < 0 || *segment >= static_cast<int>(shape->segments.size())) {
        return {{path, Message(LW_TEXT("segment is %1, must be 0 to %2"), *segment,
                               shape->segments.size() - 1)}};
    }
    if (shape->segments[static_cast<std::size_t>(*segment)].kind == SegmentKind::dwell)
        return {{path, LW_TEXT("the segment is a dwell; it must be a rise or return")}};
    return {};
}

bool hasLaw(const motion::SegmentShape& shape, std::optional<int> segment, Law law) {
    for (int i = 0; i < static_cast<int>(shape.segments.size()); ++i) {
        const Segment& each = shape.segments[static_cast<std::size_t>(i)];
        if (takesLaw(each, i, segment) && each.law != law)
            return false;
    }
    return true;
}

void addMotion(ComparedLaw& row, const motion::SegmentShape& shape, std::optional<int> segment,
               double omega) {
    for (const motion::SegmentPeaks& peaks : motion::segmentPeaks(shape)) {
        if (segment && peaks.segment != *segment)
            continue;
        row.velocity = std::max(row.velocity, peaks.velocity * omega);
        row.acceleration = std::max(row.acceleration, peaks.acceleration * omega * omega);
        row.jerk = std::max(row.jerk, peaks.jerk * std::pow(omega, 3));
    }
    if (std::isinf(row.factors.jerk))
        row.jerk = row.factors.jerk;
}

void addTrack(ComparedLaw& row, const motion::SegmentShape& shape,
              const mechanism::OpposedPair& pair, End end) {
    const mechanism::Mechanism& mechanism = pair.mechanism();
    const motion::LiftCurve& curve = pair.curve(end);
    double steepest = 0.0;
    for (const motion::SegmentPeaks& peaks : motion::segmentPeaks(shape))
        steepest = std::max(steepest, peaks.velocity);
    row.pressureAngle = std::atan(steepest / mechanism.pitchRadius);
    row.relativeRadius = std::numeric_limits<double>::infinity();
    for (const track::Flank flank : {track::Flank::push, track::Flank::pull}) {
        if (flank == track::Flank::pull && !mechanism.closedTrack)
            continue;
        row.relativeRadius =
            std::min(row.relativeRadius, track::smallestRelativeRadius(curve, mechanism.pitchRadius,
                                                                       mechanism.roller, flank)
                                             .value);
    }
}

/// Of this end, or the worse of both where they share the pattern.
void addLoads(ComparedLaw& row, const solution::Solution& solved, End end, bool isShared) {
    for (const End each : solved.pair.pistons()) {
        if (each != end && !isShared)
            continue;
        const auto pressure = solved.valueOf({"peak_contact_pressure", &in::MPa, each});
        const auto force = solved.valueOf({"lowest_contact_force", &in::N, each});
        if (pressure)
            row.contactPressure = std::max(row.contactPressure.value_or(*pressure), *pressure);
        if (force)
            row.leastContactForce = std::min(row.leastContactForce.value_or(*force), *force);
    }
}

} // namespace

design::Design withLaw(const design::Design& design, End end, std::optional<int> segment, Law law) {
    design::Design changed = design;
    auto& segments = std::get<motion::SegmentShape>(patternOf(changed, end).shape).segments;
    for (int i = 0; i < static_cast<int>(segments.size()); ++i) {
        Segment& each = segments[static_cast<std::size_t>(i)];
        if (takesLaw(each, i, segment))
            each.law = law;
    }
    return changed;
}

Result<std::vector<ComparedLaw>> compareLaws(const design::Design& design, End end,
                                             std::optional<int> segment, Monitor& monitor,
                                             const solution::Solution* previous) {
    if (Problems problems = checkChoice(design, end, segment); !problems.empty())
        return problems;
    const auto& present = std::get<motion::SegmentShape>(design.tracks[end].shape);
    std::vector<ComparedLaw> rows;
    constexpr int count = static_cast<int>(std::size(motion::allLaws));
    for (const Law law : motion::allLaws) {
        ComparedLaw row;
        row.law = law;
        row.isPresent = hasLaw(present, segment, law);
        row.factors = motion::characteristicFactors(law);
        const design::Design changed = withLaw(design, end, segment, law);
        const auto& shape = std::get<motion::SegmentShape>(changed.tracks[end].shape);
        addMotion(row, shape, segment, design.running.speed);
        const double done = static_cast<double>(rows.size() + 1) / count;
        PartOfWork part(monitor, static_cast<double>(rows.size()) / count, done);
        const auto solved = solution::solve(changed, part, previous, solution::Detail::figures);
        if (!monitor.step(done, LW_TEXT("law comparison")))
            return Problem{"", LW_TEXT("cancelled")};
        if (!solved && row.isPresent)
            return solved.problems();
        if (solved) {
            addTrack(row, shape, solved->pair, end);
            addLoads(row, *solved, end, !design.tracks.exhaust);
        } else {
            row.problem = solved.problems().front().message;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace lobewright::study
