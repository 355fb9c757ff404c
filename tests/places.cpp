#include "tests/places.h"

namespace lobewright::test {

const std::string& sourceFolder() {
    static const std::string folder = LOBEWRIGHT_SOURCE_DIR;
    return folder;
}

const std::string& batchProgram() {
    static const std::string program = LOBEWRIGHT_CLI;
    return program;
}

} // namespace lobewright::test
