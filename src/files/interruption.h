// SPDX-License-Identifier: GPL-3.0-or-later
// Defers SIGINT, SIGTERM and SIGHUP while a file is written, so that no partial file is left behind.
#pragma once

#include <array>
#include <csignal>

namespace piolo::files {

/// One instance at a time, on the main thread. The destructor restores the previous handlers and then raises
/// a signal that arrived meanwhile.
class Interruption {
public:
    Interruption();
    ~Interruption();
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;

    /// A signal arrived: stop writing, clean up and return.
    [[nodiscard]] static bool came() noexcept;

private:
    static constexpr std::array deferred{SIGINT, SIGTERM, SIGHUP};
    std::array<struct sigaction, deferred.size()> before_{};
};

} // namespace piolo::files
