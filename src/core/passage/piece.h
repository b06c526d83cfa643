// SPDX-License-Identifier: GPL-3.0-or-later
// A piece of music, to which passages belong.
#pragma once

#include "core/base/id.h"
#include "core/passage/piece_music.h"
#include "core/time/date.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

namespace piolo {

struct Piece {
    static constexpr std::int32_t mostSemitones = 36;
    static constexpr std::int32_t mostBars = 9999;
    static constexpr std::size_t longestNotes = 2000; ///< bytes of UTF-8

    Id id;
    std::string name;
    std::string instrument; ///< as the player writes it: "Clarinet in B♭"
    std::optional<Date> due;
    std::string composer{};
    std::int32_t transposition = 0; ///< semitones from the written to the sounding note, -36…36
    std::int32_t bars = 0;          ///< 0: not known
    PieceMusic music{};
    std::string notes{}; ///< the player's own words, at most longestNotes
    bool operator==(const Piece&) const = default;
};

} // namespace piolo
