#pragma once

// QCustomPlot spells Qt's keywords as macros; the program does without them, because other
// libraries use the same names. They are lent to this one header.
#include <QtWidgets>
// clang-format off
#define signals Q_SIGNALS
#define slots Q_SLOTS
#define emit Q_EMIT
#define foreach Q_FOREACH
#include <qcustomplot.h>
#undef signals
#undef slots
#undef emit
#undef foreach
// clang-format on
