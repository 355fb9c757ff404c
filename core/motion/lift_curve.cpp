#include "core/motion/lift_curve.h"

#include "core/motion/lift_form.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::motion {

struct LiftCurve::Pieces {
    LiftForm form;
    int lobes;
    std::vector<double> divisions;
};

namespace {

bool finite(const Lift& lift) {
    return std::isfinite(lift.y) && std::isfinite(lift.y1) && std::isfinite(lift.y2) &&
           std::isfinite(lift.y3);
}

/// Input that is finite number by number may still overflow in the derivatives.
bool finite(const LiftForm& form) {
    const auto both = [](const Junction& j) { return finite(j.before) && finite(j.after); };
    double bound = form.stroke; // of the jerk of a series
    for (const Harmonic& term : form.harmonics) {
        const double order = term.order * units::turn / form.period;
        bound += order * order * order * std::hypot(term.cosine, term.sine);
    }
    for (std::size_t i = 0; i < form.pieces.size(); ++i) {
        const double begin = form.pieces[i].begin;
        const double end = i + 1 < form.pieces.size() ? form.pieces[i + 1].begin : form.period;
        if (!finite(evaluate(form.pieces[i], begin)) ||
            !finite(evaluate(form.pieces[i], 0.5 * (begin + end))))
            return false;
    }
    return std::isfinite(bound) && std::all_of(form.junctions.begin(), form.junctions.end(), both);
}

std::vector<double> divide(const LiftForm& form) {
    std::vector<double> bounds;
    for (const Piece& piece : form.pieces)
        bounds.push_back(piece.begin);
    if (form.pieces.empty()) {
        const int parts = 8 * form.harmonics.back().order;
        for (int i = 0; i < parts; ++i)
            bounds.push_back(form.period * i / parts);
    }
    bounds.push_back(form.period);
    return bounds;
}

} // namespace

LiftCurve::LiftCurve(std::shared_ptr<const Pieces> pieces) : pieces_(std::move(pieces)) {}

Result<LiftCurve> LiftCurve::make(const Pattern& pattern) {
    if (pattern.lobes < 1) {
        return Problem{"/lobes",
                       Message(LW_TEXT("lobes is %1, must be at least 1"), pattern.lobes)};
    }
    const double period = units::turn / pattern.lobes;
    Result<LiftForm> form =
        std::visit([&](const auto& shape) { return makeForm(shape, period); }, pattern.shape);
    if (!form)
        return form.problems();
    if (!finite(*form)) {
        return Problem{"",
                       Message(LW_TEXT("lift of %1 within %2 rad is beyond the range of numbers"),
                               Amount(form->stroke, in::m, 3), number(period, 3))};
    }
    std::vector<double> divisions = divide(*form);
    return LiftCurve(std::make_shared<const Pieces>(
        Pieces{std::move(form).value(), pattern.lobes, std::move(divisions)}));
}

LiftCurve LiftCurve::still(int lobes) {
    LiftForm form;
    form.period = units::turn / lobes;
    form.pieces = {Piece{}};
    form.plateaus = {{0.0, form.period, 0.0}};
    form.index();
    std::vector<double> divisions = divide(form);
    return LiftCurve(
        std::make_shared<const Pieces>(Pieces{std::move(form), lobes, std::move(divisions)}));
}

double LiftCurve::period() const {
    return pieces_->form.period;
}
double LiftCurve::stroke() const {
    return pieces_->form.stroke;
}
int LiftCurve::lobes() const {
    return pieces_->lobes;
}
int LiftCurve::risesPerPattern() const {
    return static_cast<int>(pieces_->form.turningPoints.size()) / 2;
}
int LiftCurve::cyclesPerTurn() const {
    return lobes() * risesPerPattern();
}

Lift LiftCurve::at(double phi) const {
    return pieces_->form.at(phi, LiftForm::Side::after);
}
Lift LiftCurve::before(double phi) const {
    return pieces_->form.at(phi, LiftForm::Side::before);
}

LiftSamples LiftCurve::sample(const Samples& phi) const {
    LiftSamples samples{Samples(phi.size()), Samples(phi.size()), Samples(phi.size()),
                        Samples(phi.size())};
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const Lift lift = at(phi(i));
        samples.y(i) = lift.y;
        samples.y1(i) = lift.y1;
        samples.y2(i) = lift.y2;
        samples.y3(i) = lift.y3;
    }
    return samples;
}

const std::vector<double>& LiftCurve::divisions() const {
    return pieces_->divisions;
}
const std::vector<Junction>& LiftCurve::junctions() const {
    return pieces_->form.junctions;
}
const std::vector<Plateau>& LiftCurve::plateaus() const {
    return pieces_->form.plateaus;
}
const std::vector<TurningPoint>& LiftCurve::turningPoints() const {
    return pieces_->form.turningPoints;
}

} // namespace lobewright::motion
