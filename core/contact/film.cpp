#include "core/contact/film.h"

#include <cmath>

namespace lobewright::contact {

Samples lineFilm(const Lubricant& oil, const Samples& load, double length,
                 const Samples& entrainment, const Samples& radius, double modulus) {
    const double twice = 2.0 * modulus; // E'
    const Samples speed = oil.viscosity * entrainment.abs() / (twice * radius);
    const Samples loading = load / (twice * length * radius);
    const double material = std::pow(oil.pressureCoefficient * twice, 0.54);
    const Samples film =
        2.65 * material * radius * (0.70 * speed.log() - 0.13 * loading.log()).exp();
    return (speed > 0.0 && loading > 0.0).select(film, 0.0);
}

Samples ellipticalFilm(const Lubricant& oil, const Samples& load, const Samples& ellipticity,
                       const Samples& entrainment, const Samples& radius, double modulus) {
    const double twice = 2.0 * modulus; // E'
    const Samples speed = oil.viscosity * entrainment.abs() / (twice * radius);
    const Samples loading = load / (twice * radius.square());
    const double material = std::pow(oil.pressureCoefficient * twice, 0.49);
    const Samples film = 3.63 * material * radius *
                         (0.68 * speed.log() - 0.073 * loading.log()).exp() *
                         (1.0 - (-0.68 * ellipticity).exp());
    return (speed > 0.0 && loading > 0.0).select(film, 0.0);
}

double compositeRoughness(const Materials& materials) {
    return std::hypot(materials.trackRoughness, materials.rollerRoughness);
}

} // namespace lobewright::contact
