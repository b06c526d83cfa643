// SPDX-License-Identifier: GPL-3.0-or-later
// Which pulses of a run click, and in which layer. Used by the drill and by written tracks.
#pragma once

#include "core/passage/click_pattern.h"
#include "engine/click/mix.h"

#include <array>
#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// How a pulse clicks.
struct Click {
    Layer layer = Layer::beat; ///< set even if the pulse does not sound
    bool sounds = true;
};

/// The settings of a passage's click pattern as a plain value. Random choices depend only on the seed, the
/// run, the bar and the beat, so the same run always sounds the same. Real-time-safe.
struct ClickChoice {
    ClickOn on = ClickOn::beats;
    std::int32_t offbeat = 1; ///< the pulse of a beat that is its off-beat
    std::array<Accent, ClickPattern::mostAccents> accents{};
    std::int32_t accented = 0; ///< how many beats have an accent of their own
    std::int32_t barsOn = 1;
    std::int32_t barsOff = 0;
    std::int32_t silentBars = 0;
    std::int32_t leftOutBeats = 0;
    std::int32_t seed = 1;

    /// Not real-time-safe.
    static ClickChoice of(const ClickPattern& pattern, BeatUnit beat) noexcept;
    /// Limits what clicking divides by and counts with: at most 32 accents, bars on and off within their
    /// ranges. Any chance and any seed are valid.
    [[nodiscard]] ClickChoice inRange() const noexcept;

    /// The click of pulse `part` of `beat` (both counted from 0) in `bar` (counted from 0; a pick-up is bar
    /// -1) of run `run` (counted from 1). `groupStarts`: as in Meter.
    [[nodiscard]] Click at(std::uint64_t run, std::int64_t bar, std::int32_t beat, std::int32_t part,
                           std::uint32_t groupStarts) const noexcept;
    /// The layer of the landing note, which always sounds.
    [[nodiscard]] Layer landing() const noexcept;

private:
    [[nodiscard]] Accent accentOf(std::int32_t beat, std::uint32_t groupStarts) const noexcept;
    [[nodiscard]] bool isHere(std::int32_t beat, std::int32_t part) const noexcept;
    [[nodiscard]] bool barSounds(std::uint64_t run, std::int64_t bar) const noexcept;
    [[nodiscard]] bool isLeftOut(std::uint64_t run, std::int64_t bar, std::int32_t beat) const noexcept;
};
static_assert(std::is_trivially_copyable_v<ClickChoice>);

} // namespace piolo::engine
