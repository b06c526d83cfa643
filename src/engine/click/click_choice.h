// SPDX-License-Identifier: GPL-3.0-or-later
// Which pulses of a run click, and as what. The drill and written tracks both ask here.
#pragma once

#include "core/passage/click_pattern.h"
#include "engine/click/mix.h"

#include <array>
#include <cstdint>
#include <type_traits>

namespace piolo::engine {

/// How a pulse clicks.
struct Click {
    Layer layer = Layer::beat; ///< also of a pulse that does not sound
    bool sounds = true;
};

/// The choices of a passage's click pattern as a plain value. What is left to chance depends on the seed, the
/// run, the bar and the beat alone, so the same run always sounds the same. Real-time-safe.
struct ClickChoice {
    ClickOn on = ClickOn::beats;
    std::int32_t offbeat = 1; ///< the pulse of a beat that is its off-beat
    std::array<Accent, ClickPattern::mostAccents> accents{};
    std::int32_t accented = 0; ///< so many beats have an accent of their own
    std::int32_t barsOn = 1;
    std::int32_t barsOff = 0;
    std::int32_t silentBars = 0;
    std::int32_t leftOutBeats = 0;
    std::int32_t seed = 1;

    /// Not real-time-safe.
    static ClickChoice of(const ClickPattern& pattern, BeatUnit beat) noexcept;
    /// With at most 32 accents, and bars on and off inside their ranges: what clicking divides by and counts
    /// with. Chances and seed are good whatever they are.
    [[nodiscard]] ClickChoice inRange() const noexcept;

    /// The pulse `part` of `beat`, both from 0, in `bar` of the run (from 0; a pick-up is bar -1) that is
    /// `run`, from 1. `groupStarts`: as in Meter.
    [[nodiscard]] Click at(std::uint64_t run, std::int64_t bar, std::int32_t beat, std::int32_t part,
                           std::uint32_t groupStarts) const noexcept;
    /// The landing note, which always sounds.
    [[nodiscard]] Layer landing() const noexcept;

private:
    [[nodiscard]] Accent accentOf(std::int32_t beat, std::uint32_t groupStarts) const noexcept;
    [[nodiscard]] bool isHere(std::int32_t beat, std::int32_t part) const noexcept;
    [[nodiscard]] bool barSounds(std::uint64_t run, std::int64_t bar) const noexcept;
    [[nodiscard]] bool isLeftOut(std::uint64_t run, std::int64_t bar, std::int32_t beat) const noexcept;
};
static_assert(std::is_trivially_copyable_v<ClickChoice>);

} // namespace piolo::engine
