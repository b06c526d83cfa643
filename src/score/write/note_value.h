// SPDX-License-Identifier: GPL-3.0-or-later
// Note values and dots with their MusicXML names.
#pragma once

#include "core/time/fraction.h"

#include <array>
#include <optional>
#include <string_view>

namespace piolo::score {

struct NoteValue {
    std::string_view name;
    Fraction length;
};

/// note-type-value, MusicXML 4.0; from the shortest to the longest.
inline constexpr std::array noteValues{
    NoteValue{"1024th", {1, 1024}}, NoteValue{"512th", {1, 512}}, NoteValue{"256th", {1, 256}},
    NoteValue{"128th", {1, 128}},   NoteValue{"64th", {1, 64}},   NoteValue{"32nd", {1, 32}},
    NoteValue{"16th", {1, 16}},     NoteValue{"eighth", {1, 8}},  NoteValue{"quarter", {1, 4}},
    NoteValue{"half", {1, 2}},      NoteValue{"whole", {1, 1}},   NoteValue{"breve", {2, 1}},
    NoteValue{"long", {4, 1}},      NoteValue{"maxima", {8, 1}}};

/// How a length is written.
struct NoteShape {
    std::string_view type; ///< the name of a NoteValue
    int dots = 0;
    bool operator==(const NoteShape&) const = default;
};

/// The length of a note with dots: with n dots it is 2 - 1/2^n times as long. Nothing for more than four
/// dots.
[[nodiscard]] std::optional<Fraction> dotted(Fraction value, long dots) noexcept;
/// The single note value of that length, with at most two dots, if there is one.
[[nodiscard]] std::optional<NoteShape> shapeOf(Fraction length) noexcept;

} // namespace piolo::score
