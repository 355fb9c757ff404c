#include "core/gas/cycle/coupled_cylinders.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <new>

namespace {

long allocations = 0; // of the whole program: the test runs one thread

} // namespace

void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size)) {
        return memory;
    }
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace lobewright::gas {
namespace {

Model modelOf(const Engine& engine) {
    auto model =
        makeModel(engine.chamber, engine.settings, workingGas(engine.settings.fuel), engine.run);
    EXPECT_TRUE(model);
    return std::move(model).value();
}

long stepsOf(const CoupledCylinders& cylinders) {
    const Effort effort = cylinders.effort();
    return effort.explicitSteps + effort.implicitSteps;
}

/// Allocations of the fourth of four windows.
long allocationsOfAWindow(CoupledCylinders& cylinders) {
    auto guess = cylinders.guess();
    EXPECT_TRUE(guess);
    CoupledCylinders::State state = std::move(guess).value();
    for (int i = 0; i < 3; ++i) {
        EXPECT_FALSE(cylinders.advance(state, 1e-7));
    }
    const long before = allocations;
    const long steps = stepsOf(cylinders);
    EXPECT_FALSE(cylinders.advance(state, 1e-7));
    const long taken = allocations - before;
    EXPECT_GT(stepsOf(cylinders) - steps, 50);
    return taken;
}

TEST(AllocationCounter, Counts) {
    const long before = allocations;
    const std::vector<double> some(100, 1.0);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(allocations, before);
}

// A period is integrated through every port event, flow reversal and burn without taking memory.
TEST(IntegrationLoop, TakesNoMemoryOnAReservoir) {
    for (const Engine& engine : {pumpEngine(), buoyEngine(), classroomEngine()}) {
        const Model model = modelOf(engine);
        CoupledCylinders cylinders(model, phasesOf(engine.run, model.period()));
        EXPECT_EQ(allocationsOfAWindow(cylinders), 0);
    }
}

// With a plenum, memory is taken for cylinders that come and go, not for steps: a hundred steps and
// seven hundred evaluations of the rates take less than the cylinders' own few.
TEST(IntegrationLoop, TakesLittleMemoryOnAPlenum) {
    Engine engine = pumpEngine();
    engine.settings.supply.kind = SupplyKind::blower;
    engine.settings.supply.displacement = 2e-3;
    const Model model = modelOf(engine);
    CoupledCylinders cylinders(model, phasesOf(engine.run, model.period()));
    EXPECT_LT(allocationsOfAWindow(cylinders), 20);
}

} // namespace
} // namespace lobewright::gas
