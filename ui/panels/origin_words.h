#pragma once

#include "core/design/fields.h"
#include "core/design/ranged_inputs.h"

#include <QString>

/// Where an input comes from, in words on screen.
namespace lobewright::ui {

/// "assumed"
QString originWord(design::Origin origin);
/// "a", the mark beside the input; empty: chosen.
QString originLetter(design::Origin origin);
/// Origin, range in shown units, rule and source, for a tooltip.
QString originHelp(const design::Field& field, const design::Known& known);
/// "60 … 75 mm", or the options; empty: none.
QString rangeText(const design::Field& field, const design::Known& known);
/// "3 given, 2 measured, 9 derived, 31 assumed"; each count links to "origin:<number>" where
/// `linked`.
QString originCountsText(const design::OriginCounts& counts, bool linked);

} // namespace lobewright::ui
