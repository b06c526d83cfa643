// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/line_sum.h"

#include "journal/lines/crc32.h"

#include <array>

namespace piolo::journal {

namespace {

constexpr std::string_view opening = R"(,"sum":")";
constexpr std::string_view closing = R"("})";
constexpr std::size_t digits = 8;

std::array<char, digits> textOf(std::uint32_t sum) noexcept {
    constexpr std::string_view hex = "0123456789abcdef";
    std::array<char, digits> text{};
    for (std::size_t i = 0; i < digits; ++i) text[i] = hex[(sum >> (4 * (digits - 1 - i))) & 0xFU];
    return text;
}

} // namespace

std::string withSum(std::string line) {
    line.pop_back();
    const auto sum = textOf(crc32(line));
    return line.append(opening).append(sum.data(), digits).append(closing);
}

SummedLine sumOf(std::string_view line) noexcept {
    constexpr std::size_t length = opening.size() + digits + closing.size();
    if (line.size() <= length || !line.ends_with(closing)) return {};
    const auto before = line.substr(0, line.size() - length);
    const auto after = line.substr(before.size());
    if (!after.starts_with(opening)) return {};
    const auto sum = textOf(crc32(before));
    const bool right = after.substr(opening.size(), digits) == std::string_view(sum.data(), digits);
    return {right ? SumState::right : SumState::wrong, before};
}

} // namespace piolo::journal
