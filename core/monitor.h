#pragma once

#include "core/text/message.h"

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

} // namespace lobewright
