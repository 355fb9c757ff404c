#include "core/gas/start.h"
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

/// Allocations of the fourth of four windows.
long allocationsOfAWindow(Ring& ring) {
    for (int i = 0; i < 3; ++i) {
        EXPECT_FALSE(ring.advance(1e-7));
    }
    const long before = allocations;
    const long steps = ring.stepCount();
    EXPECT_FALSE(ring.advance(1e-7));
    EXPECT_GT(ring.stepCount() - steps, 50);
    return allocations - before;
}

TEST(AllocationCounter, Counts) {
    const long before = allocations;
    const std::vector<double> some(100, 1.0);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(allocations, before);
}

// A window integrates through every port event, flow reversal and burn without taking memory.
TEST(IntegrationLoop, TakesNoMemoryOnAReservoir) {
    for (const Engine& engine : {pumpEngine(), buoyEngine(), classroomEngine()}) {
        const Model model = modelOf(engine);
        const SupplyState supply = constantSupply(model, 0.0);
        Ring ring(model, supply);
        ring.place(0, guessedCharge(model, supply));
        EXPECT_EQ(allocationsOfAWindow(ring), 0);
    }
}

TEST(IntegrationLoop, TakesNoMemoryOnAPlenum) {
    Engine engine = pumpEngine();
    engine.settings.supply.kind = SupplyKind::blower;
    engine.settings.supply.displacement = 2e-3;
    const Model model = modelOf(engine);
    const auto start = startOnConstantSupply(model, 1, {0.0});
    ASSERT_TRUE(start);
    Ring ring(model, {0.0}, {1.0}, true);
    placeOn(ring, model, *start, {0});
    EXPECT_EQ(allocationsOfAWindow(ring), 0);
}

} // namespace
} // namespace lobewright::gas
