#include "core/files/classic_locale.h"

namespace lobewright::files {

namespace {

::locale_t classic() {
    static const ::locale_t made = ::newlocale(LC_ALL_MASK, "C", nullptr); // cannot fail for "C"
    return made;
}

} // namespace

ClassicLocale::ClassicLocale() : before_(::uselocale(classic())) {}

ClassicLocale::~ClassicLocale() {
    ::uselocale(before_);
}

} // namespace lobewright::files
