// SPDX-License-Identifier: GPL-3.0-or-later
// An exact tempo: thousandths of a beat per minute, in the passage's own beat unit.
#pragma once

#include "core/base/result.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// 10.000 to 400.000 BPM in whole thousandths. Every Tempo is in range: there is no way to create another.
class Tempo {
public:
    static constexpr std::int32_t least = 10'000;
    static constexpr std::int32_t most = 400'000;

    /// Nothing if out of range.
    static constexpr std::optional<Tempo> fromThousandths(std::int64_t thousandths) noexcept {
        if (thousandths < least || thousandths > most) return std::nullopt;
        return Tempo(static_cast<std::int32_t>(thousandths));
    }
    /// The nearest Tempo in range.
    static constexpr Tempo clampedThousandths(std::int64_t thousandths) noexcept {
        if (thousandths < least) return Tempo(least);
        if (thousandths > most) return Tempo(most);
        return Tempo(static_cast<std::int32_t>(thousandths));
    }
    /// Whole beats per minute, clamped to the range: for constants.
    static constexpr Tempo bpm(std::int32_t whole) noexcept {
        return clampedThousandths(std::int64_t{whole} * 1000);
    }
    /// Reads "137", "72.5" or "72.125": digits, at most three decimal places, '.' as the decimal point, in
    /// range. Otherwise fault badTempo with the text as its argument and an empty location.
    static Result<Tempo> parse(std::string_view text);

    [[nodiscard]] constexpr std::int32_t thousandths() const noexcept { return thousandths_; }
    /// The shortest decimal: "84", "72.5".
    [[nodiscard]] std::string text() const;

    // NOLINTNEXTLINE(modernize-use-nullptr): no pointer
    constexpr auto operator<=>(const Tempo&) const noexcept = default;

private:
    explicit constexpr Tempo(std::int32_t thousandths) noexcept : thousandths_(thousandths) {}
    std::int32_t thousandths_;
};

} // namespace piolo
