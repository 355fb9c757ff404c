#pragma once

#include "ui/base/palette.h"

#include <QRectF>

#include <optional>

class QPainter;

namespace lobewright::ui {

/// The colours of gas over its temperature in one line of text: a bar between the two
/// temperatures it spans, with a mark at the present one [K].
void paintHeatKey(QPainter& painter, const Palette& tones, const QRectF& row,
                  std::optional<double> temperature);

} // namespace lobewright::ui
