#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/model.h"
#include "core/gas/cycle/running_cylinder.h"
#include "core/gas/cycle/trace.h"

#include <memory>
#include <vector>

namespace lobewright::gas {

/// Flows of a recorded period: the equations evaluated once more in the recorded states.
class RecordedFlows final : public FlowTrace {
  public:
    /// `changes`: where the equations change in the recorded window, ascending.
    RecordedFlows(const Model& model, std::shared_ptr<const RecordedTrace> trace,
                  std::vector<ModeChange> changes);

    GasFlows sample(const Samples& theta) const override;

  private:
    double localOf(double theta) const;
    const Memory& memoryAt(double window) const;
    /// Of the gas ahead of the flame [K].
    double unburnt(const Memory& memory, const RecordedTrace::State& state) const;

    std::shared_ptr<const RecordedTrace> trace_;
    Model model_; ///< its chamber is that of the trace
    std::vector<ModeChange> changes_;
};

} // namespace lobewright::gas
