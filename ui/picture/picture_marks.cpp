#include "ui/picture/picture_marks.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Picture)
};

constexpr size_t fewestOfCircle = 3, fewestOfCurve = 5;

} // namespace

int placesNeeded(PictureTool tool) {
    switch (tool) {
    case PictureTool::fromAxis:
        return 1;
    case PictureTool::angle:
        return 3;
    case PictureTool::circle:
    case PictureTool::curve:
        return 0;
    default:
        return 2;
    }
}

bool needsAxis(PictureTool tool) {
    return tool == PictureTool::along || tool == PictureTool::across ||
           tool == PictureTool::fromAxis;
}

QString toolName(PictureTool tool) {
    switch (tool) {
    case PictureTool::scale:
        return Words::tr("&Scale");
    case PictureTool::axis:
        return Words::tr("Shaft a&xis");
    case PictureTool::distance:
        return Words::tr("&Distance");
    case PictureTool::along:
        return Words::tr("A&long the axis");
    case PictureTool::across:
        return Words::tr("A&cross the axis");
    case PictureTool::fromAxis:
        return Words::tr("&From the axis");
    case PictureTool::circle:
        return Words::tr("Ci&rcle");
    case PictureTool::angle:
        return Words::tr("An&gle");
    case PictureTool::curve:
        break;
    }
    return Words::tr("Lob&e");
}

QString toolHelp(PictureTool tool) {
    switch (tool) {
    case PictureTool::scale:
        return Words::tr("Click two places whose distance is known, as far apart as possible, then "
                         "type the distance.");
    case PictureTool::axis:
        return Words::tr("Click two places on the axis of the shaft.");
    case PictureTool::distance:
        return Words::tr("Click both ends.");
    case PictureTool::along:
        return Words::tr("Click both ends; only the part along the shaft counts: a stroke, a port "
                         "height.");
    case PictureTool::across:
        return Words::tr("Click both ends; only the part square to the shaft counts: a bore.");
    case PictureTool::fromAxis:
        return Words::tr("Click a place; how far it is off the shaft axis counts: the pitch radius "
                         "at a cylinder's centre line.");
    case PictureTool::circle:
        return Words::tr("Click three or more places on the edge, then press Enter.");
    case PictureTool::angle:
        return Words::tr("Click one arm, the corner, then the other arm.");
    case PictureTool::curve:
        break;
    }
    return Words::tr("Follow the unrolled track from one outer dead centre to the next with ten to "
                     "fifty clicks, then press Enter.");
}

void PictureMarks::place(PictureTool with, picture::Place at) {
    if (with != tool)
        open.clear();
    tool = with;
    open.push_back(at);
    const int needed = placesNeeded(tool);
    if (needed == 0 || static_cast<int>(open.size()) < needed)
        return;
    const PictureMark mark{tool, std::exchange(open, {}), {}};
    if (tool == PictureTool::scale) {
        scale = mark;
    } else if (tool == PictureTool::axis) {
        axis = mark;
    } else {
        readings.push_back(mark);
    }
}

bool PictureMarks::finish() {
    const size_t fewest = tool == PictureTool::circle  ? fewestOfCircle
                          : tool == PictureTool::curve ? fewestOfCurve
                                                       : open.size() + 1;
    if (open.size() < fewest)
        return false;
    readings.push_back({tool, std::exchange(open, {}), {}});
    return true;
}

Result<picture::Scale> PictureMarks::pixelScale() const {
    if (!scale)
        return Problem{"", Message()};
    return picture::Scale::make(scale->places[0], scale->places[1], scaleLength);
}

std::optional<picture::Reading> PictureMarks::read(const PictureMark& mark, bool halved) const {
    const auto& at = mark.places;
    if (mark.tool == PictureTool::angle) {
        const auto angle = picture::angle(at[0], at[1], at[2]);
        return angle ? std::optional(*angle) : std::nullopt;
    }
    const auto pixels = pixelScale();
    if (!pixels || (needsAxis(mark.tool) && !axis))
        return std::nullopt;
    const auto shaft = axis ? picture::Axis{axis->places[0], axis->places[1]} : picture::Axis{};
    switch (mark.tool) {
    case PictureTool::distance:
        return picture::distance(*pixels, at[0], at[1]);
    case PictureTool::along:
        return picture::along(*pixels, shaft, at[0], at[1]);
    case PictureTool::across:
        return picture::across(*pixels, shaft, at[0], at[1]);
    case PictureTool::fromAxis:
        return picture::fromAxis(*pixels, shaft, at[0]);
    case PictureTool::circle:
        if (const auto circle = picture::circle(at))
            return pixels->length((halved ? 1.0 : 2.0) * circle->radius);
        return std::nullopt;
    default:
        return std::nullopt;
    }
}

} // namespace lobewright::ui
