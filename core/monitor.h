#pragma once

#include "core/text/message.h"

#include <atomic>

namespace lobewright {

/// Progress and cancel, the only thing long work knows of its caller.
class Monitor {
  public:
    virtual ~Monitor() = default;
    /// Called between pieces of work, possibly from several threads at once.
    /// `fraction` 0 … 1. Returning false asks the work to stop; it then yields no result.
    virtual bool step(double fraction, const Message& what) = 0;
};

/// A monitor that never stops and shows nothing.
class SilentMonitor final : public Monitor {
  public:
    bool step(double, const Message&) override { return true; }
};

/// Tells the progress of one part of the work as progress of the whole.
class PartOfWork final : public Monitor {
  public:
    /// The part goes from `from` to `to`, 0 … 1 of the whole.
    PartOfWork(Monitor& whole, double from, double to) : whole_(whole), from_(from), to_(to) {}
    bool step(double fraction, const Message& what) override {
        return whole_.step(from_ + (to_ - from_) * fraction, what);
    }

  private:
    Monitor& whole_;
    double from_, to_;
};

/// Shows nothing and stops once the flag is set, from any thread: for pieces of work whose progress
/// is told between them.
class StoppedByFlag final : public Monitor {
  public:
    explicit StoppedByFlag(const std::atomic<bool>& stopped) : stopped_(stopped) {}
    bool step(double, const Message&) override { return !stopped_; }

  private:
    const std::atomic<bool>& stopped_;
};

} // namespace lobewright
