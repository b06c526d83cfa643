// SPDX-License-Identifier: GPL-3.0-or-later
// The player's choices for scales: the instrument, names and order of keys, and what is shown.
#pragma once

#include "core/base/fields.h"
#include "core/music/note.h"
#include "core/music/pitch_text.h"
#include "core/scales/key_order.h"

#include <cstdint>
#include <optional>
#include <string>

namespace piolo {

/// Which scales the grid shows.
struct ScaleView {
    ScaleKind kind = ScaleKind::major;
    ScaleRange range = ScaleRange::twoOctaves;
    ScalePattern pattern = ScalePattern::inOrder;
    bool operator==(const ScaleView&) const = default;
};

/// Stored in the practice folder as part of the practice settings.
struct ScaleSettings {
    static constexpr std::int32_t mostSeed = 999'999'999;

    std::string instrument;               ///< one of instruments(); "": none was chosen
    std::optional<WrittenPitch> lowest{}; ///< the player's own range; nothing: the instrument's usual one
    std::optional<WrittenPitch> highest{};
    SpellingChoice spelling{};
    KeyOrder order = KeyOrder::fourths;
    std::int32_t seed = 0; ///< 0…mostSeed, for KeyOrder::drawn
    ScaleView view{};
    bool operator==(const ScaleSettings&) const = default;
};

template <typename Fields>
void describe(Fields& in, ScaleSettings& settings) {
    unlessUsual(in, "instrument", settings.instrument, {}, Longest{Scale::longestInstrument});
    ifKnown(in, "lowest", settings.lowest);
    ifKnown(in, "highest", settings.highest);
    std::int32_t spelling = settings.spelling.bits();
    in.field("spelling", spelling, Range{0, SpellingChoice::most});
    settings.spelling = SpellingChoice(static_cast<std::uint16_t>(spelling));
    in.field("order", settings.order);
    in.field("seed", settings.seed, Range{0, ScaleSettings::mostSeed});
    in.field("kind", settings.view.kind);
    in.field("range", settings.view.range);
    in.field("pattern", settings.view.pattern);
}

} // namespace piolo
