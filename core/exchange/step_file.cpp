#include "core/exchange/step_file.h"

#include "core/exchange/step_solid.h"
#include "core/exchange/track_text.h"
#include "core/files/classic_locale.h"
#include "core/files/source_date.h"
#include "core/units.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <APIHeaderSection_MakeHeader.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_Printer.hxx>
#include <STEPControl_Writer.hxx>
#include <Standard_Failure.hxx>
#include <StepBasic_Product.hxx>
#include <StepData_Protocol.hxx>
#include <StepData_StepModel.hxx>
#include <StepData_StepWriter.hxx>
#include <TCollection_HAsciiString.hxx>
#include <XSControl_WorkSession.hxx>
#include <locale>
#include <mutex>
#include <sstream>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

/// Text as ISO 10303-21 stores it: printable ASCII, everything else by its number.
std::string encoded(const std::string& utf8) {
    std::string text;
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
        if (lead < 0x80) {
            text += utf8[i] == '\\' ? '/' : utf8[i];
        } else if (length == 1 || i + length > utf8.size()) {
            text += '?';
        } else {
            unsigned code = lead & (0xFFU >> (length + 1));
            for (std::size_t k = 1; k < length; ++k) {
                code = code << 6U | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
            }
            text += length == 4 ? fmt::format("\\X4\\{:08X}\\X0\\", code)
                                : fmt::format("\\X2\\{:04X}\\X0\\", code);
        }
        i += length;
    }
    return text;
}

/// The writer doubles every backslash, those of the numbers too; no other ones were let in. It may
/// have broken the line between the two.
std::string withSingleBackslashes(const std::string& text) {
    std::string single;
    single.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        single += text[i];
        if (text[i] != '\\') {
            continue;
        }
        while (i + 1 < text.size() && text[i + 1] == '\n') {
            ++i;
        }
        if (i + 1 < text.size() && text[i + 1] == '\\') {
            ++i;
        }
    }
    return single;
}

Handle(TCollection_HAsciiString) toText(const std::string& utf8) {
    return new TCollection_HAsciiString(encoded(utf8).c_str());
}

/// Everything of the STEP translator that is shared by the whole program: parameters and the
/// messages, which go to the standard output otherwise.
class Translator {
  public:
    Translator() : lock_(mutex()) {
        for (Message_SequenceOfPrinters::Iterator printer(
                 ::Message::DefaultMessenger()->Printers());
             printer.More(); printer.Next()) {
            printer.Value()->SetTraceLevel(Message_Fail);
        }
    }

    std::string write(const TopoDS_Solid& solid, const TrackPart& part, double tolerance) {
        STEPControl_Writer writer;
        Interface_Static::SetCVal("write.step.unit", "MM");
        Interface_Static::SetCVal("write.step.schema", "AP214IS");
        const std::string product = shortTitle(part.title, 120) + ", " + part.name().english();
        Interface_Static::SetCVal("write.step.product.name", encoded(product).c_str());
        if (writer.Transfer(solid, STEPControl_ManifoldSolidBrep) != IFSelect_RetDone) {
            return {};
        }
        Handle(StepData_StepModel) model = writer.Model();
        namePart(*model, toText(product));
        APIHeaderSection_MakeHeader header(model);
        header.SetName(toText(product));
        header.SetTimeStamp(toText(fmt::format("{:%Y-%m-%dT%H:%M:%S}", files::dateOfFiles())));
        header.SetAuthorValue(1, toText(""));
        header.SetOrganizationValue(1, toText(""));
        header.SetOriginatingSystem(toText("Lobewright"));
        std::string description;
        for (const std::string& line :
             headLines(part, "solid of the track",
                       fmt::format("track faces within {:.3g} um of the exact envelope",
                                   tolerance / units::micrometre))) {
            description += (description.empty() ? "" : "; ") + line;
        }
        header.SetDescriptionValue(1, toText(description));
        StepData_StepWriter text(model);
        text.SendModel(Handle(StepData_Protocol)::DownCast(writer.WS()->Protocol()));
        std::ostringstream stream;
        stream.imbue(std::locale::classic());
        return text.Print(stream) ? withSingleBackslashes(stream.str()) : std::string();
    }

  private:
    /// The library numbers the parts that it has ever written; a file does not depend on those
    /// before.
    static void namePart(const StepData_StepModel& model,
                         const Handle(TCollection_HAsciiString) & name) {
        for (int i = 1; i <= model.NbEntities(); ++i) {
            if (const auto product = Handle(StepBasic_Product)::DownCast(model.Value(i))) {
                product->SetId(name);
                product->SetName(name);
            }
        }
    }

    static std::mutex& mutex() {
        static std::mutex shared;
        return shared;
    }
    std::lock_guard<std::mutex> lock_;
    files::ClassicLocale numbers_;
};

const Problem cancelled{"", LW_TEXT("cancelled")};

Result<std::vector<FlankFaces>> fitted(const TrackPart& part, const Sectors& sectors,
                                       double tolerance, Monitor& monitor) {
    std::vector<FlankFaces> faces;
    const double all = static_cast<double>(part.flanks.size() * (sectors.bounds.size() - 1));
    double done = 0.0;
    for (const FlankForm& form : part.flanks) {
        faces.emplace_back();
        for (std::size_t k = 0; k + 1 < sectors.bounds.size(); ++k) {
            if (!monitor.step(0.3 * done / all, LW_TEXT("fitting the faces"))) {
                return cancelled;
            }
            auto spline = fitFlank(form, part.faceInner, part.faceOuter, sectors.bounds[k],
                                   sectors.bounds[k + 1], tolerance);
            if (!spline) {
                return spline.problems();
            }
            faces.back().push_back(std::move(spline).value());
            done += 1.0;
        }
    }
    return faces;
}

Result<std::string> translated(const TrackPart& part, const Sectors& sectors,
                               const std::vector<FlankFaces>& faces, double tolerance,
                               Monitor& monitor) {
    if (!monitor.step(0.3, LW_TEXT("building the solid"))) {
        return cancelled;
    }
    const TopoDS_Solid solid = trackSolid(part, sectors, faces);
    if (!BRepCheck_Analyzer(solid).IsValid()) {
        return Problem{
            "",
            Message(
                LW_TEXT("the faces of the %1 do not close to a valid solid at a tolerance of %2"),
                part.name(), Amount(tolerance, in::um, 3))};
    }
    if (!monitor.step(0.6, LW_TEXT("writing STEP"))) {
        return cancelled;
    }
    std::string text = Translator().write(solid, part, tolerance);
    if (text.empty()) {
        return Problem{"", LW_TEXT("Open CASCADE could not translate the solid to STEP")};
    }
    return text;
}

} // namespace

Result<std::string> stepText(const TrackPart& part, double tolerance, Monitor& monitor) {
    const Sectors divided = sectors(part.curve());
    // Half for the fit of the faces, so that sewing along the cylinders stays within the rest.
    auto faces = fitted(part, divided, 0.5 * tolerance, monitor);
    if (!faces) {
        return faces.problems();
    }
    try {
        return translated(part, divided, *faces, tolerance, monitor);
    } catch (const Standard_Failure& failure) {
        return Problem{"", Message(LW_TEXT("Open CASCADE failed on the %1: %2"), part.name(),
                                   std::string(failure.GetMessageString()))};
    }
}

} // namespace lobewright::exchange
