#include "core/design/file.h"

#include "core/design/document.h"
#include "core/design/reader.h"
#include "core/design/validation.h"
#include "core/files/read_file.h"
#include "core/files/write_file.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::design {

Result<Design> readDesign(std::string_view text) {
    if (text.size() > largestDesign) {
        return Problem{
            "", Message(LW_TEXT("the file has more than %1 bytes (16 MiB); no design is larger"),
                        largestDesign)};
    }
    const Document document = parseDocument(text);
    if (!document.problems.empty()) {
        return document.problems;
    }
    if (!document.root.is_object()) {
        return Problem{"", LW_TEXT("the file holds no group of keys; a design is one JSON object")};
    }
    Reader reader(document.root);
    Design design;
    describe(reader, design);
    Problems problems = reader.finish();
    const Problems broken = brokenRules(design, problems);
    addProblems(problems, broken);
    const Problems kept = brokenSnapshotRules(design, problems);
    addProblems(problems, kept);
    if (problems.empty()) {
        problems = brokenKnowledgeRules(design);
    }
    if (!problems.empty()) {
        return problems;
    }
    return design;
}

Result<Design> loadDesign(const std::filesystem::path& file) {
    const auto text = files::readFile(file, largestDesign + 1);
    return text ? readDesign(*text) : Result<Design>(text.problems());
}

std::optional<Problem> saveDesign(const Design& design, const std::filesystem::path& file) {
    return files::writeFile(file, writeDesign(design));
}

} // namespace lobewright::design
