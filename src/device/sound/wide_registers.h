// SPDX-License-Identifier: GPL-3.0-or-later
// The wide halves of the processor's vector registers.
#pragma once

namespace piolo::device {

/// Empties them, so that what follows on this thread runs at full speed: on processors with AVX-512 the hash
/// of strings in Qt 6.4 leaves them filled, and floating-point code compiled for SSE2 then takes many times
/// as long. New threads inherit them from the thread that starts them. Does nothing on other processors.
/// Real-time-safe.
inline void clearWideRegisters() noexcept {
#if defined(__x86_64__) && !defined(__AVX__)
    if (__builtin_cpu_supports("avx") != 0) asm volatile("vzeroupper");
#endif
}

} // namespace piolo::device
