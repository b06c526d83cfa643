// SPDX-License-Identifier: GPL-3.0-or-later
// The note after which a key is named.
#pragma once

#include "core/base/text_form.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// A letter and at most one accidental: C flat to B sharp.
struct Tonic {
    char step = 'C';       ///< 'A' to 'G'
    std::int8_t alter = 0; ///< in semitones: -1 flat, 0, 1 sharp
    constexpr bool operator==(const Tonic&) const noexcept = default;
};

/// Semitones above C, 0…11.
[[nodiscard]] int pitchClass(Tonic tonic) noexcept;
/// "Eb", "F#", "C".
[[nodiscard]] std::string textOf(Tonic tonic);
/// "E flat", "F sharp", "C".
[[nodiscard]] std::string spoken(Tonic tonic);
/// Reads "Eb", "E flat", "F#", "F sharp", "C" and "C natural", with the letter in either case.
[[nodiscard]] std::optional<Tonic> tonicNamed(std::string_view text) noexcept;

/// As textOf() writes it: what is read is written the same.
template <>
struct TextForm<Tonic> {
    static std::string text(const Tonic& value) { return textOf(value); }
    static std::optional<Tonic> parse(std::string_view text) {
        const auto tonic = tonicNamed(text);
        return tonic && textOf(*tonic) == text ? tonic : std::nullopt;
    }
};

} // namespace piolo
