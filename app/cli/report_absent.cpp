#include "app/cli/report_pdf.h"

namespace lobewright::cli {

bool canReport() {
    return false;
}

Result<std::string> reportPdf(const solution::Solution&, Monitor&) {
    return Problem{"", "this build has no report"};
}

} // namespace lobewright::cli
