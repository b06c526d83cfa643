// SPDX-License-Identifier: GPL-3.0-or-later
// How a click is written in a MIDI file.
#pragma once

#include "engine/click/mix.h"

#include <cstdint>

namespace piolo::practice {

struct MidiStrike {
    std::uint8_t key;
    std::uint8_t velocity;
};

/// On the percussion channel, common practice: 75 claves, 76 and 77 high and low wood block.
[[nodiscard]] MidiStrike midiStrikeOf(engine::Layer layer);

} // namespace piolo::practice
