#pragma once

#include "core/picture/readings.h"

#include <QString>

#include <optional>
#include <vector>

/// What a person placed in a picture, and what it says.
namespace lobewright::ui {

enum class PictureTool { scale, axis, distance, along, across, fromAxis, circle, angle, curve };

inline constexpr PictureTool pictureTools[] = {
    PictureTool::scale,  PictureTool::axis,   PictureTool::distance,
    PictureTool::along,  PictureTool::across, PictureTool::fromAxis,
    PictureTool::circle, PictureTool::angle,  PictureTool::curve};

/// How many clicks the tool needs; 0: as many as wanted, ended with Enter.
int placesNeeded(PictureTool tool);
bool needsAxis(PictureTool tool);
QString toolName(PictureTool tool);
/// What to click.
QString toolHelp(PictureTool tool);

/// One finished measurement.
struct PictureMark {
    PictureTool tool = PictureTool::distance;
    std::vector<picture::Place> places;
    std::string input; ///< JSON pointer that the reading goes to; empty: none
    bool operator==(const PictureMark&) const = default;
};

/// Everything in a picture. A plain value: undo keeps copies.
struct PictureMarks {
    std::optional<PictureMark> scale, axis;
    double scaleLength = 0.0; ///< what the scale stands for [m]; 0: not said yet
    std::vector<PictureMark> readings;
    PictureTool tool = PictureTool::scale; ///< of the places below
    std::vector<picture::Place> open;      ///< placed, not finished
    bool operator==(const PictureMarks&) const = default;

    /// Adds a place for the tool; finishes the mark where that was its last.
    void place(PictureTool with, picture::Place at);
    /// Ends a circle or a curve; false: it has too few places.
    bool finish();
    /// The scale, or why there is none.
    Result<picture::Scale> pixelScale() const;
    /// What a mark says; a curve and what lacks its scale or axis says nothing. `halved`: the
    /// radius of a circle, not its diameter.
    std::optional<picture::Reading> read(const PictureMark& mark, bool halved = false) const;
};

} // namespace lobewright::ui
