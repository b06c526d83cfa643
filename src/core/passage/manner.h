// SPDX-License-Identifier: GPL-3.0-or-later
// How a passage is played: articulation, rhythm variant, fingering.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// Bests are kept apart by it.
enum class Articulation : std::uint8_t {
    written,      ///< as the part says
    slurred,      ///< every note slurred
    tongued,      ///< every note tongued
    staccato,     ///< every note tongued and short
    twoAndTwo,    ///< slur two, tongue two
    threeAndOne,  ///< slur three, tongue one
    oneAndThree,  ///< tongue one, slur three
    doubleTongued ///< every note, double-tongued
};
inline constexpr std::size_t articulationCount = 8;

/// The usual ways to bend the rhythm of even notes.
enum class Rhythm : std::uint8_t {
    written,  ///< as the part says
    dotted,   ///< long and short in turn
    reversed, ///< short and long in turn
    groups    ///< so many notes at speed, then a rest to think
};

struct Manner {
    static constexpr std::int32_t leastGroup = 2;
    static constexpr std::int32_t mostGroup = 8;
    static constexpr std::size_t longestFingering = 500; ///< bytes of UTF-8

    Articulation articulation = Articulation::written;
    Rhythm rhythm = Rhythm::written;
    std::int32_t group = 4; ///< notes of a group, for Rhythm::groups
    std::string fingering;  ///< the player's own words, at most longestFingering
    bool operator==(const Manner&) const = default;

    /// True when both are played alike, whatever their fingerings say: a streak goes on.
    [[nodiscard]] bool soundsLike(const Manner& other) const noexcept {
        return articulation == other.articulation && rhythm == other.rhythm &&
               (rhythm != Rhythm::groups || group == other.group);
    }
};

/// The words of the journal: "written", "slurred", …, "doubleTongued".
[[nodiscard]] std::string_view nameOf(Articulation articulation) noexcept;
[[nodiscard]] std::optional<Articulation> articulationNamed(std::string_view name) noexcept;
/// "written", "dotted", "reversed", "groups".
[[nodiscard]] std::string_view nameOf(Rhythm rhythm) noexcept;
[[nodiscard]] std::optional<Rhythm> rhythmNamed(std::string_view name) noexcept;

} // namespace piolo
