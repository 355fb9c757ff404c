#include "core/unknowns/statistics.h"

#include <fmt/format.h>

#include <dlfcn.h>

namespace lobewright::unknowns {

namespace {

using Entry = const Statistics* (*)();

/// Found by the program's own search path: the build folder, or beside the installed libraries.
Result<const Statistics*> load() {
    void* library = dlopen(statisticsFile, RTLD_NOW | RTLD_LOCAL);
    if (library == nullptr) {
        return Problem{"",
                       fmt::format("the library of statistics cannot be loaded: {}", dlerror())};
    }
    const auto entry = reinterpret_cast<Entry>(dlsym(library, statisticsEntry));
    if (entry == nullptr) {
        return Problem{"", fmt::format("{} is of another version", statisticsFile)};
    }
    return entry();
}

} // namespace

Result<const Statistics*> statistics() {
    static const Result<const Statistics*> loaded = load();
    return loaded;
}

} // namespace lobewright::unknowns
