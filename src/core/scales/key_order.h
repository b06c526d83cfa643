// SPDX-License-Identifier: GPL-3.0-or-later
// The twelve keys: how each is spelled, and the orders in which they are practised.
#pragma once

#include "core/base/value_names.h"
#include "core/scales/scale.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace piolo {

/// Pitch classes, 0 for C to 11 for B.
inline constexpr int keyCount = 12;

/// The names with which a scale of that kind can be written from that note, the usual one first: the one with
/// fewer accidentals or, if equal, the flat one. The second one is included only if it, too, needs at most
/// seven accidentals: D flat and C sharp, G flat and F sharp, B and C flat in major.
[[nodiscard]] std::vector<Tonic> spellingsOf(int pitchClass, ScaleKind kind);

/// The keys for which the player prefers the second name: one bit for each pitch class.
class SpellingChoice {
public:
    static constexpr std::uint16_t most = (1U << keyCount) - 1;

    SpellingChoice() = default;
    explicit constexpr SpellingChoice(std::uint16_t bits) noexcept : bits_(bits & most) {}
    [[nodiscard]] constexpr std::uint16_t bits() const noexcept { return bits_; }
    /// The chosen name of the key; the usual one if there is no other.
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
    drawn      ///< in random order
};
inline constexpr std::size_t keyOrderCount = 4;

/// The pitch classes in that order, starting at C; `seed` determines the random order. The same seed gives
/// the same order everywhere.
[[nodiscard]] std::array<int, keyCount> keysInOrder(KeyOrder order, std::uint32_t seed);

[[nodiscard]] std::string_view nameOf(KeyOrder order) noexcept;
[[nodiscard]] std::optional<KeyOrder> keyOrderNamed(std::string_view name) noexcept;

template <>
inline constexpr std::array<std::string_view, keyOrderCount> valueNames<KeyOrder>{"fourths", "fifths",
                                                                                  "semitones", "drawn"};

} // namespace piolo
