#pragma once

#include "core/text/message.h"

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace lobewright {

/// One thing wrong with the input: where it stands and which rule it breaks, with the value.
struct Problem {
    std::string
        path; ///< JSON pointer into the design file, e.g. "/mechanism/bore_mm"; may be empty.
    Message message; ///< One sentence with the value and the rule.
    bool operator==(const Problem&) const = default;
};
using Problems = std::vector<Problem>;

/// Either a value or the problems that prevented it (never both, never neither).
template <class T>
class Result {
  public:
    Result(T value) : value_(std::move(value)) {}
    Result(Problem problem) : problems_{std::move(problem)} {}
    Result(Problems problems) : problems_(std::move(problems)) { assert(!problems_.empty()); }

    explicit operator bool() const { return value_.has_value(); }
    const T& value() const& {
        assert(value_);
        return *value_;
    }
    T&& value() && {
        assert(value_);
        return std::move(*value_);
    }
    const T& operator*() const& { return value(); }
    const T* operator->() const { return &value(); }
    const Problems& problems() const { return problems_; }

  private:
    std::optional<T> value_;
    Problems problems_;
};

} // namespace lobewright
