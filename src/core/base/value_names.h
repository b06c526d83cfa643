// SPDX-License-Identifier: GPL-3.0-or-later
// Names for the values of an enum, each at the index of its value.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace piolo {

template <typename Value, std::size_t Count>
std::optional<Value> named(const std::array<std::string_view, Count>& names, std::string_view name) noexcept {
    for (std::size_t i = 0; i < Count; ++i)
        if (names[i] == name) return static_cast<Value>(i);
    return std::nullopt;
}

template <std::size_t Count, typename Value>
std::string_view at(const std::array<std::string_view, Count>& names, Value value) noexcept {
    const auto place = static_cast<std::size_t>(value);
    return place < Count ? names[place] : std::string_view{};
}

} // namespace piolo
