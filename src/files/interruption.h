// SPDX-License-Identifier: GPL-3.0-or-later
// Holds back SIGINT, SIGTERM and SIGHUP while a file is written, so that nothing half-written stays behind.
#pragma once

#include <array>
#include <csignal>

namespace piolo::files {

/// One at a time, on the main thread. The destructor puts the old handling back and then lets a signal that
/// came take its usual effect.
class Interruption {
public:
    Interruption();
    ~Interruption();
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;

    /// A signal came: stop, tidy up and leave.
    [[nodiscard]] static bool came() noexcept;

private:
    static constexpr std::array signals{SIGINT, SIGTERM, SIGHUP};
    std::array<struct sigaction, signals.size()> before_{};
};

} // namespace piolo::files
