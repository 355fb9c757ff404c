#include "core/exchange/track_drawing.h"

#include "core/exchange/chord.h"
#include "core/exchange/track_tables.h"
#include "core/exchange/track_text.h"
#include "core/files/classic_locale.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <dl_dxf.h>
#include <iterator>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

using units::millimetre;

/// dxflib's writer with its groups kept in memory.
class TextWriter final : public DL_WriterA {
  public:
    TextWriter() : DL_WriterA("", DL_VERSION_2000) {}
    std::string text() const { return text_; }

    void dxfReal(int code, double value) const override {
        std::string number = fmt::format("{:.9f}", value);
        number.erase(std::max(number.find_last_not_of('0') + 1, number.find('.') + 2));
        group(code, number);
    }
    void dxfInt(int code, int value) const override { group(code, fmt::format("{}", value)); }
    void dxfHex(int code, int value) const override { group(code, fmt::format("{:X}", value)); }
    void dxfString(int code, const char* value) const override { group(code, value); }
    void dxfString(int code, const std::string& value) const override { group(code, value); }

  private:
    void group(int code, const std::string& value) const {
        fmt::format_to(std::back_inserter(text_), "{:>3}\r\n{}\r\n", code, value);
    }
    mutable std::string text_;
};

/// Text as DXF 2000 stores it: ASCII, other characters by their number.
std::string escaped(const std::string& utf8) {
    std::string text;
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        if (lead < 0x80) {
            text += utf8[i++];
            continue;
        }
        const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
        unsigned code = length == 1 ? 0xFFFDU : lead & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length && i + k < utf8.size(); ++k) {
            code = code << 6U | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
        }
        text += code > 0xFFFF ? "?" : fmt::format("\\U+{:04X}", code);
        i += length;
    }
    return text;
}

struct Line {
    std::string layer;
    int colour = 7;
    std::vector<Eigen::Vector2d> points; ///< [m]
};

/// Colour numbers of the format.
enum Colour { blue = 5, red = 1, magenta = 6, grey = 8, foreground = 7 };

/// Pattern angles over the turn that shows polar angles 0 … 2π, in ascending polar angle: cylinder
/// coordinates fall with φ, so the turn is walked backwards.
class Unroller {
  public:
    Unroller(const TrackPart& part, double tolerance) : part_(part), tolerance_(tolerance) {}

    Line pitchCurve() const {
        const double radius = part_.pitchRadius;
        const auto at = [&](double phi) -> Eigen::Vector2d {
            return {part_.placement().polarAngle(phi) * radius,
                    part_.placement().axial(part_.curve().at(phi).y)};
        };
        return {"PITCH_CURVE", blue, sampled(at, part_.placement().turned)};
    }

    Line flank(const FlankForm& form, double radius) const {
        const auto at = [&](double phi) -> Eigen::Vector2d {
            const Section s = section(form, phi, radius);
            return {s.angle.value * radius, form.placement.axial(s.height.value)};
        };
        const bool isPush = form.flank == track::Flank::push;
        return {fmt::format("{}_FLANK_R{:.7g}", isPush ? "PUSH" : "PULL", radius / millimetre),
                isPush ? red : magenta, sampled(at, startOf(form, radius))};
    }

  private:
    /// φ whose section has polar angle 0.
    static double startOf(const FlankForm& form, double radius) {
        double phi = form.placement.turned;
        for (int i = 0; i < 60; ++i) { // Newton; the angle falls steadily with φ
            const Jet angle = section(form, phi, radius).angle;
            const double change = angle.value / angle.first;
            phi -= change;
            if (std::abs(change) < 1e-14) {
                break;
            }
        }
        return phi;
    }

    template <class Curve>
    std::vector<Eigen::Vector2d> sampled(const Curve& curve, double start) const {
        const std::vector<double> angles = chordParameters(
            stretchBounds(part_.curve(), start - units::turn, start), curve, tolerance_);
        std::vector<Eigen::Vector2d> points;
        for (auto phi = angles.rbegin(); phi != angles.rend(); ++phi) {
            points.push_back(curve(*phi));
        }
        return points;
    }

    const TrackPart& part_;
    double tolerance_;
};

void writeTables(DL_Dxf& dxf, TextWriter& writer, const std::vector<Line>& layers) {
    writer.sectionTables();
    dxf.writeVPort(writer);
    writer.tableLinetypes(3);
    dxf.writeLinetype(writer, DL_LinetypeData("BYBLOCK", "", 0, 0, 0.0));
    dxf.writeLinetype(writer, DL_LinetypeData("BYLAYER", "", 0, 0, 0.0));
    dxf.writeLinetype(writer, DL_LinetypeData("CONTINUOUS", "Continuous", 0, 0, 0.0));
    writer.tableEnd();
    writer.tableLayers(static_cast<int>(layers.size()) + 1);
    constexpr int defaultWidth = -3;
    dxf.writeLayer(writer, DL_LayerData("0", 0),
                   DL_Attributes("", foreground, defaultWidth, "CONTINUOUS", 1.0));
    for (const Line& layer : layers) {
        dxf.writeLayer(writer, DL_LayerData(layer.layer, 0),
                       DL_Attributes("", layer.colour, defaultWidth, "CONTINUOUS", 1.0));
    }
    writer.tableEnd();
    writer.tableStyle(1);
    dxf.writeStyle(writer, DL_StyleData("Standard", 0, 0.0, 1.0, 0.0, 0, 2.5, "txt", ""));
    writer.tableEnd();
    dxf.writeView(writer);
    dxf.writeUcs(writer);
    writer.tableAppid(1);
    dxf.writeAppid(writer, "ACAD");
    writer.tableEnd();
    dxf.writeDimStyle(writer, 1.0, 1.0, 1.0, 1.0, 2.5);
    dxf.writeBlockRecord(writer);
    writer.tableEnd();
    writer.sectionEnd();
    writer.sectionBlocks();
    for (const char* block : {"*Model_Space", "*Paper_Space", "*Paper_Space0"}) {
        dxf.writeBlock(writer, DL_BlockData(block, 0, 0.0, 0.0, 0.0));
        dxf.writeEndBlock(writer, block);
    }
    writer.sectionEnd();
}

void writeLine(DL_Dxf& dxf, TextWriter& writer, const Line& line) {
    const DL_Attributes byLayer(line.layer, 256, -1, "BYLAYER", 1.0);
    dxf.writePolyline(writer, DL_PolylineData(static_cast<int>(line.points.size()), 0, 0, 0),
                      byLayer);
    for (const Eigen::Vector2d& point : line.points) {
        dxf.writeVertex(writer,
                        DL_VertexData(point.x() / millimetre, point.y() / millimetre, 0.0, 0.0));
    }
    dxf.writePolylineEnd(writer);
}

void writeNotes(DL_Dxf& dxf, TextWriter& writer, const std::vector<std::string>& notes,
                const std::string& layer, double top, double height) {
    for (std::size_t i = 0; i < notes.size(); ++i) {
        const double y = top - 1.6 * height * static_cast<double>(i);
        dxf.writeText(writer,
                      DL_TextData(0.0, y, 0.0, 0.0, y, 0.0, height, 1.0, 0, 0, 0, escaped(notes[i]),
                                  "Standard", 0.0),
                      DL_Attributes(layer, 256, -1, "BYLAYER", 1.0));
    }
}

/// The planes of the blank as straight lines over the outside circumference.
std::vector<Line> planes(const TrackPart& part) {
    std::vector<Line> lines;
    std::vector<double> heights{part.backHeight};
    if (part.isClosed()) {
        heights.push_back(part.frontHeight);
    }
    for (double height : heights) {
        const double z = part.placement().axial(height);
        lines.push_back({"FACES", grey, {{0.0, z}, {units::turn * part.faceOuter, z}}});
    }
    return lines;
}

std::string written(const std::vector<Line>& lines, const std::vector<std::string>& notes) {
    std::vector<Line> layers; // names and colours, each once
    double lowest = 0.0, width = 0.0;
    for (const Line& line : lines) {
        const auto hasName = [&](const Line& other) { return other.layer == line.layer; };
        if (std::ranges::none_of(layers, hasName)) {
            layers.push_back({line.layer, line.colour, {}});
        }
        for (const Eigen::Vector2d& point : line.points) {
            lowest = std::min(lowest, point.y() / millimetre);
            width = std::max(width, point.x() / millimetre);
        }
    }
    layers.push_back({"NOTES", foreground, {}});
    const files::ClassicLocale numbers; // for whatever the library formats itself
    DL_Dxf dxf;
    TextWriter writer;
    for (const std::string& note : notes) {
        writer.comment(escaped(note).c_str());
    }
    dxf.writeHeader(writer);
    writer.dxfString(9, "$INSUNITS");
    constexpr int millimetresOfTheFormat = 4;
    writer.dxfInt(70, millimetresOfTheFormat);
    writer.sectionEnd();
    writeTables(dxf, writer, layers);
    writer.sectionEntities();
    for (const Line& line : lines) {
        writeLine(dxf, writer, line);
    }
    const double letter = 0.008 * width;
    writeNotes(dxf, writer, notes, "NOTES", lowest - 3.0 * letter, letter);
    writer.sectionEnd();
    dxf.writeObjects(writer);
    dxf.writeObjectsEnd(writer);
    writer.dxfEOF();
    return writer.text();
}

} // namespace

Result<std::string> trackDrawing(const TrackPart& part, const DrawingOptions& options,
                                 Monitor& monitor) {
    const std::vector<double> radii = options.radii.empty() ? usualRadii(part) : options.radii;
    if (Problems problems = checkRadii(part, radii); !problems.empty()) {
        return problems;
    }
    const Unroller unroller(part, options.tolerance);
    std::vector<Line> lines{unroller.pitchCurve()};
    const double all = static_cast<double>(part.flanks.size() * radii.size() + 1);
    for (const FlankForm& form : part.flanks) {
        for (double radius : radii) {
            if (!monitor.step(static_cast<double>(lines.size()) / all,
                              LW_TEXT("unrolling a flank"))) {
                return Problem{"", LW_TEXT("cancelled")};
            }
            lines.push_back(unroller.flank(form, radius));
        }
    }
    std::ranges::copy(planes(part), std::back_inserter(lines));
    const std::vector<std::string> notes = headLines(
        part, "unrolled pitch curve and flanks, seen from outside",
        fmt::format("chords stay within {:.6g} um of the curves",
                    options.tolerance / units::micrometre),
        {"Across: arc length on the cylinder named by the layer, from polar angle 0; up: towards "
         "the exhaust end, 0 at the roller axis in outer dead centre"});
    return written(lines, notes);
}

} // namespace lobewright::exchange
