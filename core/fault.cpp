#include "core/fault.h"

#include <fmt/format.h>

#include <new>

namespace lobewright {

Problem faultOf(const std::exception_ptr& exception) {
    try {
        std::rethrow_exception(exception);
    } catch (const std::bad_alloc&) {
        return {"", "the memory does not suffice for this calculation"};
    } catch (const std::exception& error) {
        return {"", fmt::format("the calculation failed by a mistake of the program ({})",
                                error.what())};
    } catch (...) {
        return {"", "the calculation failed by a mistake of the program"};
    }
}

} // namespace lobewright
