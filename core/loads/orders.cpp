#include "core/loads/orders.h"

#include "core/units.h"

#include <cassert>
#include <complex>

namespace lobewright::loads {

Samples evenAngles(int count) {
    return Samples::LinSpaced(count, 0.0, units::turn * (count - 1) / count);
}

Eigen::ArrayXcd orders(const Samples& evenSamples, int highest, int repeats) {
    const Eigen::Index count = evenSamples.size();
    assert(highest >= 0 && repeats >= 1 && 2 * highest < count * repeats);
    const Samples angles = evenAngles(static_cast<int>(count));
    const Samples cosine = angles.cos();
    const Samples sine = angles.sin();
    Eigen::ArrayXcd result = Eigen::ArrayXcd::Zero(highest + 1);
    for (Eigen::Index q = 0; q * repeats <= highest; ++q) {
        double real = 0.0;
        double imaginary = 0.0;
        Eigen::Index at = 0; // q·j modulo the number of samples
        for (Eigen::Index j = 0; j < count; ++j) {
            real += evenSamples(j) * cosine(at);
            imaginary -= evenSamples(j) * sine(at);
            at += q;
            if (at >= count) {
                at -= count;
            }
        }
        const double scale = (q == 0 ? 1.0 : 2.0) / static_cast<double>(count);
        result(q * repeats) = scale * std::complex<double>(real, imaginary);
    }
    return result;
}

} // namespace lobewright::loads
