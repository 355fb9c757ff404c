#include "core/exchange/libraries.h"

#include <Eigen/Core>
#include <boost/version.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <tbb/version.h>

#include <Standard_Version.hxx>
#include <dl_dxf.h>

namespace lobewright::exchange {

std::vector<std::string> libraries() {
    const auto named = [](const char* name, int major, int minor, int patch) {
        return fmt::format("{} {}.{}.{}", name, major, minor, patch);
    };
    return {named("Eigen", EIGEN_WORLD_VERSION, EIGEN_MAJOR_VERSION, EIGEN_MINOR_VERSION),
            named("Boost", BOOST_VERSION / 100000, BOOST_VERSION / 100 % 1000, BOOST_VERSION % 100),
            named("fmt", FMT_VERSION / 10000, FMT_VERSION / 100 % 100, FMT_VERSION % 100),
            named("JSON for Modern C++", NLOHMANN_JSON_VERSION_MAJOR, NLOHMANN_JSON_VERSION_MINOR,
                  NLOHMANN_JSON_VERSION_PATCH),
            fmt::format("oneTBB {}", TBB_runtime_version()),
            fmt::format("OpenTURNS {}", LOBEWRIGHT_OPENTURNS_VERSION),
            fmt::format("Open CASCADE {}", OCC_VERSION_COMPLETE),
            fmt::format("dxflib {}", DL_VERSION),
#ifdef __VERSION__
            fmt::format("compiler {}", __VERSION__)
#endif
    };
}

} // namespace lobewright::exchange
