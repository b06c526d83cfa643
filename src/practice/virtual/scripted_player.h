// SPDX-License-Identifier: GPL-3.0-or-later
// A player who follows a script: receives the engine's events and decides when to press the key.
#pragma once

#include "engine/queue/event.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

namespace piolo::practice {

/// The script has one letter per run: 'c' clean, 'm' a miss pressed inside the run, 'l' a miss pressed in the
/// breath after a run that ended clean.
class ScriptedPlayer {
public:
    ScriptedPlayer(std::string script, std::int32_t rate);

    /// Receives an event. Returns the sample at which the key is pressed, if it is.
    std::optional<std::uint64_t> hear(const engine::Event& event);
    /// True once all runs of the script have ended.
    [[nodiscard]] bool isDone() const { return done_; }

private:
    [[nodiscard]] std::uint64_t millis(std::uint64_t count) const;
    std::optional<std::uint64_t> endOf(const engine::Event& event);

    std::string script_;
    std::int32_t rate_;
    std::size_t next_ = 0; ///< the script's letter for the current run
    bool pressed_ = false;
    bool late_ = false; ///< pressed in the breath, not confirmed by the engine yet
    bool done_ = false;
};

} // namespace piolo::practice
