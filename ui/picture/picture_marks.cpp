#include "ui/picture/picture_marks.h"

#include <QCoreApplication>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Picture)
};

constexpr size_t fewestOfCircle = 3, fewestOfCurve = 5;

struct Tool {
    int places; ///< 0: as many as one likes
    bool needsAxis;
    QString name, help;
};

/// In the order of the tools.
const Tool& toolOf(PictureTool tool) {
    static const Tool all[] = {
        {2, false, Words::tr("&Scale"),
         Words::tr("Click two places whose distance is known, as far apart as possible, then type "
                   "the distance.")},
        {2, false, Words::tr("Shaft a&xis"),
         Words::tr("Click two places on the axis of the shaft.")},
        {2, false, Words::tr("&Distance"), Words::tr("Click both ends.")},
        {2, true, Words::tr("A&long the axis"),
         Words::tr("Click both ends; only the part along the shaft counts: a stroke, a port "
                   "height.")},
        {2, true, Words::tr("A&cross the axis"),
         Words::tr("Click both ends; only the part square to the shaft counts: a bore.")},
        {1, true, Words::tr("&From the axis"),
         Words::tr("Click a place; how far it is off the shaft axis counts: the pitch radius at a "
                   "cylinder's centre line.")},
        {0, false, Words::tr("Ci&rcle"),
         Words::tr("Click three or more places on the edge, then press Enter.")},
        {3, false, Words::tr("An&gle"),
         Words::tr("Click one arm, the corner, then the other arm.")},
        {0, false, Words::tr("Lob&e"),
         Words::tr("Follow the unrolled track from one outer dead centre to the next with ten to "
                   "fifty clicks, then press Enter.")}};
    return all[static_cast<size_t>(tool)];
}

} // namespace

int placesNeeded(PictureTool tool) {
    return toolOf(tool).places;
}

bool needsAxis(PictureTool tool) {
    return toolOf(tool).needsAxis;
}

QString toolName(PictureTool tool) {
    return toolOf(tool).name;
}

QString toolHelp(PictureTool tool) {
    return toolOf(tool).help;
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
