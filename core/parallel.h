#pragma once

#if defined(__SANITIZE_THREAD__)
#include <algorithm>
#include <atomic>
#include <exception>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>
#else
#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>
#include <tbb/parallel_invoke.h>
#endif

/// Work on all cores at once, by oneTBB. That is not built with the sanitizer of threads, which
/// would take every task handed over for a race; under it each call starts threads of its own.
namespace lobewright {

/// Calls body(i) for each i from 0 up to `count`, each by itself: some take many times as long as
/// others. The order is not fixed. Throws what a body throws.
template <class Index, class Body>
void onAllCores(Index count, const Body& body) {
#if defined(__SANITIZE_THREAD__)
    constexpr Index mostThreads = 4;
    std::atomic<Index> next = 0;
    std::exception_ptr thrown;
    std::mutex oneAtATime;
    const auto some = [&] {
        try {
            for (Index i = next++; i < count; i = next++) {
                body(i);
            }
        } catch (...) {
            const std::lock_guard lock(oneAtATime);
            thrown = std::current_exception();
            next = count;
        }
    };
    std::vector<std::thread> threads;
    for (Index i = 0; i < std::min(count, mostThreads); ++i) {
        threads.emplace_back(some);
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    if (thrown) {
        std::rethrow_exception(thrown);
    }
#else
    const auto some = [&](const tbb::blocked_range<Index>& range) {
        for (Index i = range.begin(); i != range.end(); ++i) {
            body(i);
        }
    };
    tbb::parallel_for(tbb::blocked_range<Index>(0, count, 1), some, tbb::simple_partitioner{});
#endif
}

/// Calls each, at once where there are cores for it. Throws what one of them throws.
template <class... Works>
void allAtOnce(const Works&... works) {
#if defined(__SANITIZE_THREAD__)
    const std::vector<std::function<void()>> all = {works...};
    onAllCores(all.size(), [&](std::size_t i) { all[i](); });
#else
    tbb::parallel_invoke(works...);
#endif
}

} // namespace lobewright
