// SPDX-License-Identifier: GPL-3.0-or-later
// The twelve keys: how each is spelled, and in what order they are gone through.
#pragma once

#include "core/scales/scale.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo {

/// Pitch classes, 0 for C to 11 for B.
inline constexpr int keyCount = 12;

/// The names under which a scale of that kind can be written from that note, the usual one first: the one
/// with fewer accidentals, of two with the same number the flat one. The second is there where it is written
/// with at most seven signs too: D flat and C sharp, G flat and F sharp, B and C flat in major.
[[nodiscard]] std::vector<Tonic> spellingsOf(int pitchClass, ScaleKind kind);

/// Which keys the player wants by their second name: a bit for each pitch class.
class SpellingChoice {
public:
    static constexpr std::uint16_t most = (1U << keyCount) - 1;

    SpellingChoice() = default;
    explicit constexpr SpellingChoice(std::uint16_t bits) noexcept : bits_(bits & most) {}
    [[nodiscard]] constexpr std::uint16_t bits() const noexcept { return bits_; }
    /// The name of the key in force; the usual one where there is only that.
    [[nodiscard]] Tonic tonic(int pitchClass, ScaleKind kind) const;
    void turn(int pitchClass) noexcept { bits_ = static_cast<std::uint16_t>(bits_ ^ (1U << pitchClass)); }
    bool operator==(const SpellingChoice&) const = default;

private:
    std::uint16_t bits_ = 0;
};

enum class KeyOrder : std::uint8_t {
    fourths,   ///< C F B flat …
    fifths,    ///< C G D …
    semitones, ///< C D flat D …
    drawn      ///< by lot
};
inline constexpr std::size_t keyOrderCount = 4;

/// The pitch classes in that order, from C; the lot is drawn anew by another seed. The same seed gives the
/// same order everywhere.
[[nodiscard]] std::array<int, keyCount> keysInOrder(KeyOrder order, std::uint32_t seed);

[[nodiscard]] std::string_view nameOf(KeyOrder order) noexcept;
[[nodiscard]] std::optional<KeyOrder> keyOrderNamed(std::string_view name) noexcept;

} // namespace piolo
