// SPDX-License-Identifier: GPL-3.0-or-later
// A 64-bit checksum of content, computed as fast as memory is read.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace piolo::files {

/// A change within any eight bytes at a multiple of eight always changes the sum, any other change almost
/// certainly. It detects damage, not intent. The same bytes give the same sum however they are split.
class ContentSum {
public:
    void add(std::string_view bytes) noexcept;
    [[nodiscard]] std::uint64_t value() const noexcept;

private:
    static constexpr std::size_t lanes = 4;
    static constexpr std::size_t stripe = lanes * sizeof(std::uint64_t);

    void mix(const char* bytes) noexcept;

    std::array<std::uint64_t, lanes> lanes_{1, 2, 3, 4};
    std::array<char, stripe> begun_{}; ///< of an incomplete stripe
    std::uint64_t length_ = 0;
};

[[nodiscard]] std::uint64_t contentSum(std::string_view bytes) noexcept;

} // namespace piolo::files
