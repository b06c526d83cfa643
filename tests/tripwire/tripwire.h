// SPDX-License-Identifier: GPL-3.0-or-later
// A tripwire for code that must not wait: while one lives, everything its thread asks of memory, locks, logs,
// exceptions and the system is counted. Linked into a test program, it stands before the C library.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>

namespace piolo::tripwire {

enum class Trip : std::uint8_t {
    memory,     ///< malloc and its kin; operator new and delete go through them
    lock,       ///< mutexes, conditions, semaphores, guards of local statics; taken or not
    log,        ///< stdio, also when it only fills a buffer
    exception,  ///< a throw
    systemCall, ///< any call into the kernel; the first is counted, those after it are not
};
inline constexpr std::size_t tripKinds = 5;

/// How often each wire was tripped.
struct Trips {
    std::array<std::uint64_t, tripKinds> counts{};
    long firstCall = -1; ///< the number of the first system call; -1: none

    [[nodiscard]] std::uint64_t of(Trip trip) const noexcept {
        return counts.at(static_cast<std::size_t>(trip));
    }
    bool operator==(const Trips&) const = default;
};

/// "memory 2, lock 0, log 0, exception 0, system call 0"
[[nodiscard]] std::string textOf(const Trips& trips);

/// One at a time on a thread; other threads are not looked at. Does not take memory.
class Tripwire {
public:
    Tripwire() noexcept;
    ~Tripwire();
    Tripwire(const Tripwire&) = delete;
    Tripwire& operator=(const Tripwire&) = delete;
    /// Ends the watch.
    Trips cut() noexcept;
};

/// What `work` trips.
template <typename Work>
Trips tripsOf(Work&& work) {
    Tripwire wire;
    std::forward<Work>(work)();
    return wire.cut();
}

/// For the wires themselves: one trip of this thread.
void note(Trip trip) noexcept;

} // namespace piolo::tripwire
