#pragma once

/// Marks a function that is compiled twice: for every processor, and for those with wide vectors
/// and fused multiply-add, between which the program chooses as it starts. Everything that it calls
/// and that is defined in a header becomes part of it. Results agree but for rounding.
/// Not under sanitizers: the choice would call them before they have started.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) &&                             \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__) && defined(__OPTIMIZE__)
#define LW_WIDE [[gnu::target_clones("default", "arch=x86-64-v3"), gnu::flatten]]
#else
#define LW_WIDE
#endif
