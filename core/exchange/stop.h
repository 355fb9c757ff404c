#pragma once

#include "core/monitor.h"

#include <utility>

namespace lobewright::exchange {

/// Asks a monitor now and then, from within loops that run millions of times.
class Stop {
  public:
    /// `fraction` of the whole work that is done meanwhile, for the monitor.
    Stop(Monitor& monitor, double fraction, Message what)
        : monitor_(monitor), fraction_(fraction), what_(std::move(what)) {}

    /// True: stop, and return whatever is there; it is not used.
    bool isWanted() {
        constexpr int pause = 256; // calls, each some microseconds
        if (!isWanted_ && ++calls_ % pause == 0) {
            isWanted_ = !monitor_.step(fraction_, what_);
        }
        return isWanted_;
    }

  private:
    Monitor& monitor_;
    double fraction_;
    Message what_;
    int calls_ = 0;
    bool isWanted_ = false;
};

} // namespace lobewright::exchange
