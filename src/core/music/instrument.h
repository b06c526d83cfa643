// SPDX-License-Identifier: GPL-3.0-or-later
// The wind instruments for which scales are written: family, clef, transposition, range.
#pragma once

#include "core/music/clef.h"
#include "core/music/note.h"
#include "core/scales/scale.h"

#include <cstdint>
#include <span>
#include <string_view>

namespace piolo {

/// The lowest and the highest playable note, as written.
struct NoteRange {
    WrittenPitch lowest;
    WrittenPitch highest;
    bool operator==(const NoteRange&) const = default;
};

/// The interval from the written note to the sounding one.
struct Transposition {
    int semitones = 0;
    int letters = 0;
};

/// As a wind band is seated.
enum class InstrumentFamily : std::uint8_t {
    flutes,
    doubleReeds,
    clarinets,
    saxophones,
    highBrass,
    lowBrass
};
inline constexpr std::size_t instrumentFamilyCount = 6;

struct Instrument {
    std::string_view name; ///< "alto saxophone"
    InstrumentFamily family = InstrumentFamily::flutes;
    Clef clef = Clef::treble;
    Transposition transposition;
    NoteRange range; ///< the usual range; players differ: docs/scales.md has each one with its source
};

/// In score order.
[[nodiscard]] std::span<const Instrument> instruments() noexcept;
/// Null if there is no instrument with that name.
[[nodiscard]] const Instrument* instrumentNamed(std::string_view name) noexcept;

/// The sounding tonic of a scale of that kind that is written on `written`; spelled with the neighbouring
/// letter if that key has fewer accidentals.
[[nodiscard]] Tonic concertOf(Tonic written, ScaleKind kind, Transposition transposition) noexcept;

} // namespace piolo
