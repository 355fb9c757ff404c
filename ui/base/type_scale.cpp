#include "ui/base/type_scale.h"

#include <algorithm>

namespace lobewright::ui {

QFont sized(const QFont& base, TypeSize size) {
    constexpr double bodySize = 14.0; // what the other sizes are told against
    const double wanted = size == TypeSize::small     ? 12.0
                          : size == TypeSize::heading ? 17.0
                          : size == TypeSize::title   ? 22.0
                                                      : bodySize;
    QFont font = base;
    if (size != TypeSize::body)
        font.setPointSizeF(base.pointSizeF() * wanted / bodySize);
    return font;
}

QFont fitted(const QFont& base, double share) {
    constexpr double least = 0.7; // legible still
    QFont font = base;
    font.setPointSizeF(base.pointSizeF() * std::clamp(share, least, 1.0));
    return font;
}

QFont inBold(QFont base) {
    base.setBold(true);
    return base;
}

} // namespace lobewright::ui
