// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdio>

namespace piolo::bench {

/// Runs the work and prints `amount` and the nanoseconds it took.
template <typename Work>
void timed(unsigned long long amount, Work work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    const std::chrono::nanoseconds took = std::chrono::steady_clock::now() - begin;
    std::printf("%llu %lld\n", amount, static_cast<long long>(took.count()));
}

} // namespace piolo::bench
