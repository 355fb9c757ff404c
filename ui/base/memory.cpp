#include "ui/base/memory.h"

#include <cstdlib> // tells whose library it is

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace lobewright::ui {

void shareMemoryBetweenThreads() {
#ifdef __GLIBC__
    constexpr int heaps = 2; // the window's and one for all that works behind it
    mallopt(M_ARENA_MAX, heaps);
#endif
}

} // namespace lobewright::ui
