#include "core/exchange/stl_file.h"

#include "core/exchange/track_text.h"
#include "core/units.h"

#include <Eigen/Geometry>
#include <fmt/format.h>

#include <bit>
#include <cstring>

namespace lobewright::exchange {

namespace {

constexpr std::size_t headSize = 80, triangleSize = 50;

static_assert(std::endian::native == std::endian::little, "STL stores little-endian numbers");

template <class Number>
char* put(char* place, const Number& value) {
    std::memcpy(place, &value, sizeof value);
    return place + sizeof value;
}

char* put(char* place, const Eigen::Vector3d& vector) {
    const Eigen::Vector3f single = vector.cast<float>();
    std::memcpy(place, single.data(), 3 * sizeof(float));
    return place + 3 * sizeof(float);
}

/// The free text; readers take a file that begins with "solid" for the other kind of STL.
std::string head(const TrackPart& part, double chordError) {
    const std::string fixed =
        fmt::format("Lobewright, mm, chord {:.3g} um, {}: ", chordError / units::micrometre,
                    part.name().english());
    std::string text = fixed + shortTitle(part.title, headSize - fixed.size());
    text.resize(headSize, ' ');
    return text;
}

} // namespace

std::string stlBytes(const TrackPart& part, const Mesh& mesh, double chordError) {
    const std::string text = head(part, chordError);
    std::string bytes(headSize + 4 + triangleSize * mesh.triangles.size(), '\0');
    std::memcpy(bytes.data(), text.data(), headSize);
    char* place = put(bytes.data() + headSize, static_cast<std::uint32_t>(mesh.triangles.size()));
    for (const auto& triangle : mesh.triangles) {
        const Eigen::Vector3d a = mesh.vertices.col(triangle[0]) / units::millimetre;
        const Eigen::Vector3d b = mesh.vertices.col(triangle[1]) / units::millimetre;
        const Eigen::Vector3d c = mesh.vertices.col(triangle[2]) / units::millimetre;
        place = put(place, Eigen::Vector3d((b - a).cross(c - a).normalized()));
        for (const Eigen::Vector3d& corner : {a, b, c}) {
            place = put(place, corner);
        }
        place = put(place, std::uint16_t{0});
    }
    return bytes;
}

} // namespace lobewright::exchange
