// SPDX-License-Identifier: GPL-3.0-or-later
// The voices of the click, all of our own synthesis: the only table.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace piolo::engine {

/// `impulse` is one sample per pulse, for measurement.
enum class Voice : std::uint8_t { impulse, wood, metal, reed, dry };

/// A partial of a tone: its pitch and gain relative to the tone's.
struct Partial {
    double ratio;
    double gain;
};

/// The partials of a tone, which decay together.
struct Recipe {
    double beatHertz;    ///< the pitch of a beat; the other strokes are multiples of it
    double decaySeconds; ///< time to decay to 1/e
    double lengthSeconds;
    std::span<const Partial> partials;
};

// Far enough apart that a saxophone's line never masks all of them (docs/sound.md has the measurement).
inline constexpr std::array woodPartials{Partial{1.0, 1.0}, Partial{1.95, 0.35}, Partial{2.45, 0.6}};
inline constexpr std::array metalPartials{Partial{1.0, 1.0}, Partial{1.5037, 0.8}, Partial{1.78, 0.4},
                                          Partial{2.31, 0.35}};
inline constexpr std::array reedPartials{Partial{1.0, 1.0}, Partial{2.0, 0.75}, Partial{3.0, 0.55},
                                         Partial{4.0, 0.3}};
// Neighbouring partials that start in phase and drift apart within a millisecond: a tick with hardly any
// pitch. It ends before they are in phase again, which would sound like a second tick.
inline constexpr std::array dryPartials{Partial{1.0, 1.0}, Partial{1.31, 0.75}, Partial{1.46, 0.8},
                                        Partial{1.6, 0.55}};

/// Plain values; any thread may read them.
struct VoiceInfo {
    Voice voice;
    std::string_view name; ///< in the machine's settings and after `--voice`
    Recipe recipe;         ///< empty: a single sample
};

/// In the order of Voice.
inline constexpr std::array voiceTable{
    VoiceInfo{Voice::impulse, "impulse", {}},
    VoiceInfo{Voice::wood, "wood", {1350.0, 0.0085, 0.045, woodPartials}},
    VoiceInfo{Voice::metal, "metal", {1500.0, 0.011, 0.055, metalPartials}},
    VoiceInfo{Voice::reed, "reed", {1050.0, 0.010, 0.045, reedPartials}},
    VoiceInfo{Voice::dry, "dry", {2200.0, 0.003, 0.018, dryPartials}},
};

/// Real-time-safe, like all functions below.
[[nodiscard]] constexpr const VoiceInfo& infoOf(Voice voice) noexcept {
    return voiceTable[static_cast<std::size_t>(voice)];
}

static_assert(std::ranges::all_of(voiceTable,
                                  [](const VoiceInfo& info) { return &infoOf(info.voice) == &info; }),
              "the table has the order of Voice");

inline constexpr auto voices = [] {
    std::array<Voice, voiceTable.size()> all{};
    std::ranges::transform(voiceTable, all.begin(), &VoiceInfo::voice);
    return all;
}();

[[nodiscard]] constexpr std::string_view nameOf(Voice voice) noexcept { return infoOf(voice).name; }
[[nodiscard]] constexpr bool isForMeasurement(Voice voice) noexcept {
    return infoOf(voice).recipe.partials.empty();
}

[[nodiscard]] constexpr std::optional<Voice> voiceNamed(std::string_view name) noexcept {
    const auto* const found = std::ranges::find(voiceTable, name, &VoiceInfo::name);
    return found == voiceTable.end() ? std::nullopt : std::optional(found->voice);
}

} // namespace piolo::engine
