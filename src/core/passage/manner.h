// SPDX-License-Identifier: GPL-3.0-or-later
// How a passage is played: articulation, rhythm variant, fingering.
#pragma once

#include "core/base/fields.h"
#include "core/base/value_names.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// Each has a best of its own.
enum class Articulation : std::uint8_t {
    written,      ///< as written in the part
    slurred,      ///< every note slurred
    tongued,      ///< every note tongued
    staccato,     ///< every note tongued and short
    twoAndTwo,    ///< slur two, tongue two
    threeAndOne,  ///< slur three, tongue one
    oneAndThree,  ///< tongue one, slur three
    doubleTongued ///< every note, double-tongued
};
inline constexpr std::size_t articulationCount = 8;

/// The usual rhythm variants of even notes.
enum class Rhythm : std::uint8_t {
    written,  ///< as written in the part
    dotted,   ///< alternately long and short
    reversed, ///< alternately short and long
    groups    ///< a number of fast notes, then a rest to think
};

struct Manner {
    static constexpr std::int32_t leastGroup = 2;
    static constexpr std::int32_t mostGroup = 8;
    static constexpr std::size_t longestFingering = 500; ///< in bytes of UTF-8

    Articulation articulation = Articulation::written;
    Rhythm rhythm = Rhythm::written;
    std::int32_t group = 4; ///< number of notes in a group, for Rhythm::groups
    std::string fingering;  ///< the player's own words, at most longestFingering
    bool operator==(const Manner&) const = default;

    /// True if both are played alike, whatever their fingerings: the streak then continues.
    [[nodiscard]] bool soundsLike(const Manner& other) const noexcept {
        return articulation == other.articulation && rhythm == other.rhythm &&
               (rhythm != Rhythm::groups || group == other.group);
    }
};

/// The names used in the journal: "written", "slurred", …, "doubleTongued".
[[nodiscard]] std::string_view nameOf(Articulation articulation) noexcept;
[[nodiscard]] std::optional<Articulation> articulationNamed(std::string_view name) noexcept;
/// "written", "dotted", "reversed", "groups".
[[nodiscard]] std::string_view nameOf(Rhythm rhythm) noexcept;
[[nodiscard]] std::optional<Rhythm> rhythmNamed(std::string_view name) noexcept;

template <>
inline constexpr std::array<std::string_view, articulationCount> valueNames<Articulation>{
    "written", "slurred", "tongued", "staccato", "twoAndTwo", "threeAndOne", "oneAndThree", "doubleTongued"};

template <>
inline constexpr std::array<std::string_view, 4> valueNames<Rhythm>{"written", "dotted", "reversed",
                                                                    "groups"};

template <typename Fields>
void describe(Fields& in, Manner& manner) {
    in.field("articulation", manner.articulation);
    in.field("rhythm", manner.rhythm);
    unlessUsual(in, "group", manner.group, Manner{}.group, Range{Manner::leastGroup, Manner::mostGroup});
    unlessUsual(in, "fingering", manner.fingering, {}, Longest{Manner::longestFingering});
}

} // namespace piolo
