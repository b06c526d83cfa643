// SPDX-License-Identifier: GPL-3.0-or-later
// A tripwire for code that must not wait: while one exists, it counts everything that its thread asks of
// memory, locks, logs, exceptions and the system. Linked into a test program, it intercepts the C library.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>

namespace piolo::tripwire {

enum class Trip : std::uint8_t {
    memory,     ///< malloc and related functions; operator new and delete use them
    lock,       ///< mutexes, conditions, semaphores, guards of local statics; whether taken or not
    log,        ///< stdio, even if it only fills a buffer
    exception,  ///< a throw
    systemCall, ///< any call into the kernel; only the first is counted
};
inline constexpr std::size_t tripKinds = 5;

/// How often each wire was tripped.
struct Trips {
    std::array<std::uint64_t, tripKinds> counts{};
    long firstCall = -1; ///< the number of the first system call, or -1

    [[nodiscard]] std::uint64_t of(Trip trip) const noexcept {
        return counts.at(static_cast<std::size_t>(trip));
    }
    bool operator==(const Trips&) const = default;
};

/// "memory 2, lock 0, log 0, exception 0, system call 0"
[[nodiscard]] std::string textOf(const Trips& trips);

/// At most one per thread at a time; other threads are not watched. Allocates no memory.
class Tripwire {
public:
    Tripwire() noexcept;
    ~Tripwire();
    Tripwire(const Tripwire&) = delete;
    Tripwire& operator=(const Tripwire&) = delete;
    /// Ends the watch.
    Trips cut() noexcept;
};

/// The trips that `work` causes.
template <typename Work>
Trips tripsOf(Work&& work) {
    Tripwire wire;
    std::forward<Work>(work)();
    return wire.cut();
}

/// For the wires themselves: records one trip of this thread.
void note(Trip trip) noexcept;

} // namespace piolo::tripwire
