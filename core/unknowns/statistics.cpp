#include "core/unknowns/statistics.h"

#include <dlfcn.h>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

using Entry = const Statistics* (*)();

/// Found by the program's own search path: the build folder, or beside the installed libraries.
Result<const Statistics*> load() {
    void* library = dlopen(statisticsFile, RTLD_NOW | RTLD_LOCAL);
    if (library == nullptr) {
        return Problem{"", Message(LW_TEXT("The library of statistics cannot be loaded: %1."),
                                   std::string(dlerror()))};
    }
    const auto entry = reinterpret_cast<Entry>(dlsym(library, statisticsEntry));
    if (entry == nullptr) {
        return Problem{"", Message(LW_TEXT("%1 is of another version of the program."),
                                   std::string(statisticsFile))};
    }
    return entry();
}

} // namespace

Result<const Statistics*> statistics() {
    static const Result<const Statistics*> loaded = load();
    return loaded;
}

} // namespace lobewright::unknowns
