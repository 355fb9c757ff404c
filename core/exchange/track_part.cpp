#include "core/exchange/track_part.h"

#include "core/exchange/track_text.h"
#include "core/mechanism/extremes.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

using track::Flank;

constexpr double overhang = 0.1; ///< of the roller's width, at both edges [own estimate]
constexpr double web = 0.5;      ///< of the roller's width, under the groove floor [own estimate]

double steepestSlope(const motion::LiftCurve& curve) {
    // The slope is stationary where y'' = 0; sampled densely, then covered by what a stretch of
    // this size can add.
    constexpr int parts = 32;
    double steepest = 0.0;
    const std::vector<double>& bounds = curve.divisions();
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        const double step = (bounds[i + 1] - bounds[i]) / parts;
        for (int j = 0; j < parts; ++j) {
            const motion::Lift lift = curve.at(bounds[i] + (j + 0.5) * step);
            const double beyond =
                0.5 * step * std::abs(lift.y2) + 0.125 * step * step * std::abs(lift.y3);
            steepest = std::max(steepest, std::abs(lift.y1) + beyond);
        }
    }
    return steepest;
}

class Builder {
  public:
    Builder(const design::Design& design, End end) : design_(design), end_(end) {}

    Result<TrackPart> run() {
        const mechanism::Mechanism& m = design_.mechanism;
        if (m.uncovers(end_) != end_) {
            return Problem{"/mechanism/arrangement",
                           LW_TEXT("a one-sided engine has no exhaust track; export the inlet "
                                   "track")};
        }
        auto curve = motion::LiftCurve::make(design_.tracks[end_]);
        if (!curve) {
            const bool isShared = end_ == End::exhaust && !design_.tracks.exhaust;
            add(fmt::format("/tracks/{}", isShared ? "inlet" : lobewright::name(end_)),
                curve.problems());
        }
        add("/mechanism", track::checkRoller(m.roller, m.pitchRadius));
        if (!problems_.empty()) {
            return problems_;
        }
        start(*curve);
        settleBlank();
        if (problems_.empty()) {
            for (const FlankForm& form : part_.flanks) {
                checkUndercut(form);
            }
        }
        return problems_.empty() ? Result<TrackPart>(std::move(part_))
                                 : Result<TrackPart>(problems_);
    }

  private:
    void add(const std::string& prefix, const Problems& problems) {
        for (const Problem& problem : problems) {
            problems_.push_back({prefix + problem.path, problem.message});
        }
    }
    void require(bool isKept, const char* key, TextId what, double value, const Message& rule) {
        if (!isKept) {
            problems_.push_back({fmt::format("/track_blank/{}", key),
                                 Message(LW_TEXT("the %1 is %2; it must %3"), what,
                                         Amount(value, in::mm, 6), rule)});
        }
    }

    void start(const motion::LiftCurve& curve) {
        const mechanism::Mechanism& m = design_.mechanism;
        track::Placement placement{end_, 0.0, 0.0};
        if (end_ == End::exhaust) {
            placement.turned = m.exhaustLead + m.adjuster.setting;
        }
        part_.title = design_.title.empty() ? "Untitled design" : design_.title;
        part_.end = end_;
        part_.pitchRadius = m.pitchRadius;
        part_.roller = m.roller;
        part_.flanks.push_back({curve, m.roller.radius, Flank::push, placement});
        if (m.closedTrack) {
            part_.flanks.push_back({curve, m.roller.radius, Flank::pull, placement});
        }
    }

    void settleBlank() {
        const track::Blank& blank = design_.trackBlank;
        const double width = part_.roller.width, r = part_.roller.radius;
        const double innerEdge = part_.roller.innerEdge(part_.pitchRadius);
        const double outerEdge = part_.roller.outerEdge(part_.pitchRadius);
        const double slope = steepestSlope(part_.curve());
        const double contact = contactDistance(slope, outerEdge, r);
        const double margin = overhang * width;
        const double inside = std::max(innerEdge - margin, 0.5 * innerEdge);

        part_.faceOuter = 0.5 * blank.outsideDiameter.value_or(2.0 * (contact + margin));
        if (part_.isClosed()) {
            part_.faceInner = 0.5 * blank.grooveDiameter.value_or(2.0 * inside);
            const double bore = std::max(part_.faceInner - web * width, 0.5 * part_.faceInner);
            part_.boreRadius = 0.5 * blank.boreDiameter.value_or(2.0 * bore);
        } else {
            part_.boreRadius = 0.5 * blank.boreDiameter.value_or(2.0 * inside);
            part_.faceInner = part_.boreRadius;
        }
        part_.backHeight = -r - blank.backThickness.value_or(width);
        part_.frontHeight = part_.curve().stroke() + r + track::rimThickness(blank, part_.roller);
        checkBlank(innerEdge, contact, smallestSection(slope, r));
    }

    void checkBlank(double innerEdge, double contact, double smallest) {
        const TrackPart& p = part_;
        const char* innerKey = p.isClosed() ? "groove_diameter_mm" : "bore_diameter_mm";
        const TextId inner =
            p.isClosed() ? LW_TEXT("groove diameter") : LW_TEXT("bore diameter of the track blank");
        require(p.faceInner <= innerEdge, innerKey, inner, 2.0 * p.faceInner,
                Message(LW_TEXT("not exceed %1, where the inner edge of the roller runs"),
                        Amount(2.0 * innerEdge, in::mm, 6)));
        require(p.faceInner > smallest, innerKey, inner, 2.0 * p.faceInner,
                Message(LW_TEXT("exceed %1: this roller makes no flank further inside"),
                        Amount(2.0 * smallest, in::mm, 6)));
        require(p.faceOuter >= contact, "outside_diameter_mm", LW_TEXT("outside diameter"),
                2.0 * p.faceOuter,
                Message(LW_TEXT("reach %1 to carry the outer edge of the roller everywhere"),
                        Amount(2.0 * contact, in::mm, 6)));
        if (p.isClosed()) {
            require(p.boreRadius < p.faceInner, "bore_diameter_mm",
                    LW_TEXT("bore diameter of the track blank"), 2.0 * p.boreRadius,
                    Message(LW_TEXT("be less than the groove diameter, %1"),
                            Amount(2.0 * p.faceInner, in::mm, 6)));
            require(p.frontHeight > p.curve().stroke() + p.roller.radius, "front_thickness_mm",
                    LW_TEXT("front thickness"),
                    p.frontHeight - p.curve().stroke() - p.roller.radius, LW_TEXT("be positive"));
        }
        require(p.boreRadius > 0.0, "bore_diameter_mm", LW_TEXT("bore diameter of the track blank"),
                2.0 * p.boreRadius, LW_TEXT("be positive"));
        require(p.backHeight < -p.roller.radius, "back_thickness_mm", LW_TEXT("back thickness"),
                -p.roller.radius - p.backHeight, LW_TEXT("be positive"));
    }

    void checkUndercut(const FlankForm& form) {
        const track::Roller& roller = part_.roller;
        const auto found =
            track::smallestRelativeRadius(form.curve, part_.pitchRadius, roller, form.flank);
        if (found.value > 0.0) {
            checkOverhang(form);
            return;
        }
        const auto limit =
            track::largestRollerRadius(form.curve, part_.pitchRadius, roller.width, form.flank);
        problems_.push_back(
            {"/mechanism/roller/radius_mm",
             Message(
                 LW_TEXT("a roller of %1 radius undercuts the %2 flank of the %3: worst at pattern "
                         "angle %4, %5 from the shaft axis, where the relative radius is %6; no "
                         "cusp is cut up to a radius of %7, or by a gentler lift there"),
                 Amount(roller.radius, in::mm, 6), word(form.flank), part_.name(),
                 Amount(found.place.phi, in::degrees), Amount(found.place.rho, in::mm, 5),
                 Amount(found.value, in::mm, 3), Amount(limit ? limit->value : 0.0, in::mm, 5))});
    }

    /// The face is wider than the roller; where it folds its polar angle turns back.
    void checkOverhang(const FlankForm& form) {
        constexpr int parts = 64;
        const std::vector<double>& bounds = form.curve.divisions();
        for (const bool isInner : {true, false}) {
            const double radius = isInner ? part_.faceInner : part_.faceOuter;
            for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
                for (int j = 0; j <= parts; ++j) {
                    const double phi = bounds[i] + (bounds[i + 1] - bounds[i]) * j / parts;
                    const Limit limit = j < parts ? Limit::after : Limit::before;
                    if (section(form, phi, radius, limit).angle.first < 0.0) {
                        continue;
                    }
                    const char* inner =
                        part_.isClosed() ? "groove_diameter_mm" : "bore_diameter_mm";
                    problems_.push_back(
                        {fmt::format("/track_blank/{}", isInner ? inner : "outside_diameter_mm"),
                         Message(LW_TEXT("beside the roller, %1 from the shaft axis, the %2 flank "
                                         "of the %3 is undercut at pattern angle %4; the face must "
                                         "end closer to the roller"),
                                 Amount(radius, in::mm, 6), word(form.flank), part_.name(),
                                 Amount(phi, in::degrees))});
                    return;
                }
            }
        }
    }

    const design::Design& design_;
    End end_;
    TrackPart part_;
    Problems problems_;
};

/// The first place of the lowest and of the highest lift, both with y' = 0.
std::pair<double, double> deadCentres(const motion::LiftCurve& curve) {
    double lowest = 0.0, highest = 0.0;
    double low = 0.0, high = 0.0;
    bool isFirst = true;
    for (const mechanism::Extreme& extreme : mechanism::extremes(curve)) {
        if (isFirst || extreme.value < low) {
            low = extreme.value;
            lowest = extreme.middle();
        }
        if (isFirst || extreme.value > high) {
            high = extreme.value;
            highest = extreme.middle();
        }
        isFirst = false;
    }
    return {lowest, highest};
}

/// A jump of the acceleration below this share of it is rounding.
constexpr double rounding = 1e-9;
/// Junctions closer than this to a bound make no sector of their own [rad].
constexpr double distinct = 1e-9;

} // namespace

Message TrackPart::name() const {
    return Message(LW_TEXT("%1 track"), lobewright::word(end));
}

Result<TrackPart> trackPart(const design::Design& design, End end) {
    return Builder(design, end).run();
}

Sectors sectors(const motion::LiftCurve& curve) {
    const auto [lowest, highest] = deadCentres(curve);
    const double period = curve.period();
    std::vector<double> inside; // within one period from the first outer dead centre
    for (const motion::Junction& junction : curve.junctions()) {
        const double jump = std::abs(junction.after.y2 - junction.before.y2);
        if (jump > rounding * std::max(std::abs(junction.after.y2), curve.stroke())) {
            inside.push_back(mechanism::wrapped(junction.angle - lowest, period));
        }
    }
    if (curve.lobes() == 1) {
        inside.push_back(mechanism::wrapped(highest - lowest, period));
    }
    std::sort(inside.begin(), inside.end());
    Sectors result;
    for (int lobe = 0; lobe < curve.lobes(); ++lobe) {
        if (lobe == (curve.lobes() + 1) / 2) {
            result.seam = result.bounds.size();
        }
        const double begin = lowest + lobe * period;
        result.bounds.push_back(begin);
        for (double offset : inside) {
            const double bound = begin + offset;
            const bool isDistinct =
                bound - result.bounds.back() > distinct && begin + period - bound > distinct;
            if (curve.lobes() == 1 && offset == mechanism::wrapped(highest - lowest, period)) {
                result.seam = isDistinct ? result.bounds.size() : result.bounds.size() - 1;
            }
            if (isDistinct) {
                result.bounds.push_back(bound);
            }
        }
    }
    result.bounds.push_back(lowest + units::turn);
    return result;
}

std::vector<double> stretchBounds(const motion::LiftCurve& curve, double begin, double end) {
    std::vector<double> bounds{begin};
    const std::vector<double>& divisions = curve.divisions();
    const double first = std::floor(begin / curve.period());
    for (int turn = 0; first * curve.period() + turn * curve.period() < end; ++turn) {
        for (double division : divisions) {
            const double bound = (first + turn) * curve.period() + division;
            if (bound - bounds.back() > distinct && end - bound > distinct) {
                bounds.push_back(bound);
            }
        }
    }
    bounds.push_back(end);
    return bounds;
}

} // namespace lobewright::exchange
