#pragma once

#include "ui/editing/edit.h"

#include <QLineF>
#include <QPointF>
#include <QString>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lobewright::ui {

/// One number that a handle changes, in the unit of the design file.
struct HandleAxis {
    QString label; ///< "Edge"
    QString unit;  ///< metric, "mm"
    double value = 0.0;
    double min = 0.0, max = 0.0; ///< inclusive
    double snap = 0.1;           ///< step of a drag and of an arrow key
    double fine = 0.01;          ///< the same with Shift
    int decimals = 2;
    QPointF perUnit; ///< screen movement for one unit [px]; not null
    /// What stands behind the value in the tag, e.g. a sum that it is part of; may be empty.
    std::function<QString(double)> note = {};
    /// How the value is put into words where number and unit do not do.
    std::function<QString(double)> words = {};
};

/// Something in a drawing that can be gripped with the mouse or the keyboard.
struct Handle {
    std::string key;              ///< the same for the same thing from one painting to the next
    QString label;                ///< "Inlet port row 1, inner edge"
    QPointF at;                   ///< [px]
    QLineF grip;                  ///< drawn as a short bar; null: a dot
    std::vector<HandleAxis> axes; ///< one or two, at right angles on the screen
    enum class Mark { dot, diamond } mark = Mark::dot; ///< of one without a bar
    std::optional<End> side;                           ///< drawn in its colour
    bool isMinor = false;                              ///< drawn smaller
    bool goesOneWay = false; ///< a drag keeps to the axis along which it begins
    bool inTabOrder = true;  ///< false: a repetition of another handle
    bool atRest = false;     ///< a bar that shows while the pointer is elsewhere too
    /// The edit for the given axis values.
    std::function<Edit(const std::vector<double>&)> edit;
    /// The edit that takes it away; empty, or no edit, where it has to stay.
    std::function<std::optional<Edit>()> removal;
};

/// Of a place to the handle [px].
double distanceTo(const Handle& handle, const QPointF& point);

/// Something to be put into a drawing, and where its handle will stand.
struct Addition {
    Edit edit;
    QPointF at; ///< [px]
};

/// `value` moved onto the grid of `step`, or of the plain step nearest to it in the unit shown
/// now; kept in the axis' limits.
double snapped(const HandleAxis& axis, double value, double step);

/// "27.50 mm", "12.5°".
QString shownValue(const HandleAxis& axis, double value);

} // namespace lobewright::ui
