#include "core/text/caution.h"

LW_TEXTS_OF(Core)

namespace lobewright {

TextId caution() {
    return LW_TEXT(
        "Estimates for comparison only; not a basis for manufacture, release or operation. No "
        "strength of pressure-containing or rotating parts is calculated. Local codes and "
        "regulations for pressure equipment, fuel gas, hydrogen and machinery take precedence; "
        "where the law requires it, have a licensed professional engineer approve the design. "
        "First runs: remote, behind guards, with independent overspeed trip and fuel shut-off; "
        "ventilate the crankcase; treat surfaces and exhaust as hot and toxic.");
}

TextId shortCaution() {
    return LW_TEXT("Estimates for comparison only; not a basis for manufacture, release or "
                   "operation.");
}

} // namespace lobewright
