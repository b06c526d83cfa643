// SPDX-License-Identifier: GPL-3.0-or-later
// Tells when a turn is over.
#pragma once

#include "engine/drill/turn.h"
#include "engine/queue/renderer.h"

#include <cstdint>

namespace piolo::engine {

/// Counts the runs of a turn, and its playing time without pauses. Real-time-safe.
class TurnWatch {
public:
    /// The first count-in begins at `sample`.
    void begin(const Turn& turn, std::uint64_t sample, SampleRate rate) noexcept;
    void pause(std::uint64_t sample) noexcept;
    /// After a pause, and when the rate changes.
    void resume(std::uint64_t sample, SampleRate rate) noexcept;
    /// A run that counts ended at `sample`.
    void countRun(std::uint64_t sample) noexcept;
    /// True if the turn would be over with a run that ends at `sample`.
    [[nodiscard]] bool endsWith(std::uint64_t sample) const noexcept;
    /// True from the end of the turn's last run until another turn begins.
    [[nodiscard]] bool isOver() const noexcept { return over_; }

private:
    [[nodiscard]] std::uint64_t millis(std::uint64_t sample) const noexcept;

    Turn turn_;
    SampleRate rate_;
    std::uint64_t since_ = 0;  // the sample at which it began, or was last resumed
    std::uint64_t before_ = 0; // milliseconds before that
    std::int32_t runs_ = 0;
    bool counts_ = false;
    bool over_ = false;
};

} // namespace piolo::engine
