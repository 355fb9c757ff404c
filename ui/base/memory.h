#pragma once

namespace lobewright::ui {

/// To be called first of all in a program, while it has one thread. The memory that solvers and
/// studies give back goes to few heaps: the allocator would otherwise keep one for each of the
/// threads that came and went, each with room of its own that no other thread ever uses.
void shareMemoryBetweenThreads();

} // namespace lobewright::ui
