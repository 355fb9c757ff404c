#pragma once

#include <tbb/blocked_range.h>
#include <tbb/parallel_for.h>
#include <tbb/parallel_invoke.h>

#if defined(__SANITIZE_THREAD__)
#include <sanitizer/tsan_interface.h>
#endif

/// Work on all cores at once. oneTBB is not built with the sanitizer of threads, which so cannot
/// see that a task begins after it was handed over and has ended when the call returns; here it is
/// told.
namespace lobewright {

/// What was done before give() stands before what is done after take(). Nothing but a word to the
/// sanitizer.
class Handover {
  public:
    void give() {
#if defined(__SANITIZE_THREAD__)
        __tsan_release(this);
#endif
    }
    void take() {
#if defined(__SANITIZE_THREAD__)
        __tsan_acquire(this);
#endif
    }

    /// The part of a task: takes what it is given, gives back what it has done, however it ends.
    class Task {
      public:
        Task(Handover& there, Handover& back) : back_(back) { there.take(); }
        ~Task() { back_.give(); }
        Task(const Task&) = delete;
        Task& operator=(const Task&) = delete;

      private:
        Handover& back_;
    };
};

/// Calls body(i) for each i from 0 up to `count`, each by itself: some take many times as long as
/// others. The order is not fixed. Throws what a body throws.
template <class Index, class Body>
void onAllCores(Index count, const Body& body) {
    Handover there, back;
    there.give();
    const auto some = [&](const tbb::blocked_range<Index>& range) {
        const Handover::Task task(there, back);
        for (Index i = range.begin(); i != range.end(); ++i) {
            body(i);
        }
    };
    tbb::parallel_for(tbb::blocked_range<Index>(0, count, 1), some, tbb::simple_partitioner{});
    back.take();
}

/// Calls each, at once where there are cores for it. Throws what one of them throws.
template <class... Works>
void allAtOnce(const Works&... works) {
    Handover there, back;
    there.give();
    tbb::parallel_invoke([&] {
        const Handover::Task task(there, back);
        works();
    }...);
    back.take();
}

} // namespace lobewright
