// SPDX-License-Identifier: GPL-3.0-or-later
// What the click sounds like: voice, and level and mute for each layer.
#pragma once

#include "engine/click/voice.h"

#include <array>
#include <cstdint>

namespace piolo::engine {

/// The kinds of pulse, which differ in pitch and level, and what sounds besides pulses: cues and the notes of
/// a playback.
enum class Layer : std::uint8_t { downbeat, group, beat, subdivision, countIn, cue, playback };
inline constexpr int layerCount = 7;

/// Linear gains 0…1; a muted layer keeps its level for when it is unmuted.
struct Mix {
    Voice voice = Voice::wood;
    float level = 0.35F; ///< overall level; sessions start low
    std::array<float, layerCount> layerLevel{1.0F, 1.0F, 1.0F, 1.0F, 1.0F, 1.0F, 1.0F};
    std::array<bool, layerCount> muted{};
    bool operator==(const Mix&) const = default;

    /// The gain of a layer: 0…1, and 0 if it is muted. Real-time-safe.
    [[nodiscard]] float gainOf(Layer layer) const noexcept;
};

} // namespace piolo::engine
