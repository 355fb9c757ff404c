#pragma once

#include <string>

/// Where the sources lie and the batch program is. One file is told, so that a compiler's cache
/// serves every clone.
namespace lobewright::test {

const std::string& sourceFolder();
const std::string& batchProgram();

} // namespace lobewright::test
