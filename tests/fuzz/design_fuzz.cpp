// Any bytes as a design file: read or refused with reasons, never a crash; what was read is written
// so that it reads the same; and the published schema accepts exactly what the reader of single
// values accepts.

#include "core/design/document.h"
#include "core/design/file.h"
#include "core/design/reader.h"
#include "core/design/schema.h"
#include "tests/design/schema_check.h"
#include "tests/fuzz/property.h"

#include <algorithm>
#include <cstdint>
#include <string_view>

using namespace lobewright;

namespace {

std::string listed(const Problems& problems) {
    std::string text;
    for (const Problem& problem : problems) {
        text += problem.path + ": " + problem.message.english() + "\n";
    }
    return text;
}

/// As the schema asks of the names of inputs. The reader takes any name; one that names no input is
/// refused when all values are read.
bool isPointer(const std::string& name) {
    return name.starts_with('/') && !name.ends_with('/') && name.find("//") == std::string::npos;
}

void schemaAgrees(std::string_view text) {
    static const auto schema = nlohmann::json::parse(design::designSchema());
    const design::Document document = design::parseDocument(text);
    if (!document.problems.empty() || !document.root.is_object()) {
        return; // no JSON, or twice the same key, of which a schema knows nothing
    }
    design::Reader reader(document.root);
    design::Design design;
    describe(reader, design);
    const Problems problems = reader.finish();
    const bool isRead =
        problems.empty() && std::ranges::all_of(design.knowledge, [](const auto& known) {
            return isPointer(known.first);
        });
    const std::string broken = design::testing::brokenSchemaRule(schema, document.root);
    mustHold(isRead == broken.empty(), "schema and program agree",
             "schema: " + broken + "\nprogram: " + listed(problems));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const MustBeQuick watch;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    schemaAgrees(text);
    const auto read = design::readDesign(text);
    if (!read) {
        mustHold(read.problems().size() <= design::mostProblems + 1, "problems are counted");
        return 0;
    }
    const std::string written = design::writeDesign(*read);
    const auto again = design::readDesign(written);
    mustHold(static_cast<bool>(again), "what was written is read",
             again ? "" : listed(again.problems()));
    mustHold(*again == *read, "what was written reads the same");
    mustHold(design::writeDesign(*again) == written, "and is written the same");
    return 0;
}
