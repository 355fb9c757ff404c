#pragma once

namespace lobewright::test {

/// Makes one system call of this thread fail while it lives: the one before which `calls` others
/// went well, with the error `reason`. Counted are the calls that writing a file makes.
class FailingCall {
  public:
    FailingCall(int calls, int reason);
    /// In place of a reason: the program is killed before the call.
    static constexpr int killed = -1;
    ~FailingCall();
    FailingCall(const FailingCall&) = delete;
    FailingCall& operator=(const FailingCall&) = delete;

    /// The name of the call that failed; nullptr: there were not as many.
    static const char* failed();
};

} // namespace lobewright::test
