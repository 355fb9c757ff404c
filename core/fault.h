#pragma once

#include "core/result.h"

#include <exception>
#include <type_traits>

namespace lobewright {

/// What to say of an exception that nothing in the core is meant to throw: a mistake of the
/// program, not of its input.
Problem faultOf(const std::exception_ptr& exception);

/// Runs work and turns whatever it throws into its answer, so that a mistake ends the work and not
/// the program. The answer is a Result or a list of Problems.
template <class Work>
auto guarded(const Work& work) -> std::invoke_result_t<const Work&> {
    using Answer = std::invoke_result_t<const Work&>;
    try {
        return work();
    } catch (...) {
        return Answer(Problems{faultOf(std::current_exception())});
    }
}

} // namespace lobewright
