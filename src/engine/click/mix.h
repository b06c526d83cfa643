// SPDX-License-Identifier: GPL-3.0-or-later
// What the click sounds like: voice, and level and mute per layer.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace piolo::engine {

/// Click voices of our own synthesis. `impulse`: one sample a pulse, for measurement.
enum class Voice : std::uint8_t { impulse, wood, metal, reed, dry };
inline constexpr std::array voices{Voice::impulse, Voice::wood, Voice::metal, Voice::reed, Voice::dry};

[[nodiscard]] std::string_view nameOf(Voice voice) noexcept;
[[nodiscard]] std::optional<Voice> voiceNamed(std::string_view name) noexcept;

/// What a pulse is, told apart by pitch and level; and what sounds beside the pulses: short signals, and the
/// notes of a playback.
enum class Layer : std::uint8_t { downbeat, group, beat, subdivision, countIn, cue, playback };
inline constexpr int layerCount = 7;

/// Linear gains 0…1; a muted layer keeps its level for later.
struct Mix {
    Voice voice = Voice::wood;
    float level = 0.35F; ///< of the whole; sessions start low
    std::array<float, layerCount> layerLevel{1.0F, 1.0F, 1.0F, 1.0F, 1.0F, 1.0F, 1.0F};
    std::array<bool, layerCount> muted{};
    bool operator==(const Mix&) const = default;

    /// What a layer's sound is multiplied by: 0…1, 0 when it is muted. Real-time-safe.
    [[nodiscard]] float gainOf(Layer layer) const noexcept;
};

} // namespace piolo::engine
