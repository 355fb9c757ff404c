#include "core/solution/sides.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

TextId trackWord(const mechanism::OpposedPair& pair, End end) {
    if (pair.mechanism().isOneSided()) {
        return LW_TEXT("track");
    }
    return end == End::inlet ? LW_TEXT("inlet track") : LW_TEXT("exhaust track");
}

TextId ofPistonWords(const mechanism::OpposedPair& pair, End end) {
    if (pair.mechanism().isOneSided()) {
        return LW_TEXT("of the piston");
    }
    return end == End::inlet ? LW_TEXT("of the inlet piston") : LW_TEXT("of the exhaust piston");
}

TextId rollerWords(const mechanism::OpposedPair& pair, End end) {
    if (pair.mechanism().isOneSided()) {
        return LW_TEXT("The roller");
    }
    return end == End::inlet ? LW_TEXT("The roller of the inlet side")
                             : LW_TEXT("The roller of the exhaust side");
}

TextId rollerWithin(bool isOneSided, End end) {
    if (isOneSided) {
        return LW_TEXT("the roller");
    }
    return end == End::inlet ? LW_TEXT("the roller of the inlet side")
                             : LW_TEXT("the roller of the exhaust side");
}

Message ofTrack(const mechanism::OpposedPair& pair, const Message& what, End end) {
    return pair.mechanism().isOneSided() ? what : ofSide(what, end);
}

} // namespace lobewright::solution
