// SPDX-License-Identifier: GPL-3.0-or-later
// The names of an enum's values in files and commands, each at the index of its value.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace piolo {

/// Specialised beside each enum whose values have names. An empty name is never read or written.
template <typename Value>
inline constexpr std::array<std::string_view, 0> valueNames{};

/// Of a table that has one row for each value of an enum, in its order.
template <typename Row, std::size_t Count>
[[nodiscard]] constexpr std::array<std::string_view, Count> columnOf(const std::array<Row, Count>& table,
                                                                     std::string_view Row::*name) noexcept {
    std::array<std::string_view, Count> names{};
    for (std::size_t i = 0; i < Count; ++i) names[i] = table[i].*name;
    return names;
}

template <typename Value>
concept HasValueNames = !valueNames<Value>.empty();

/// Empty for a value without a name.
template <HasValueNames Value>
[[nodiscard]] constexpr std::string_view valueName(Value value) noexcept {
    const auto place = static_cast<std::size_t>(value);
    return place < valueNames<Value>.size() ? valueNames<Value>[place] : std::string_view{};
}

template <HasValueNames Value>
[[nodiscard]] constexpr std::optional<Value> valueNamed(std::string_view name) noexcept {
    for (std::size_t i = 0; i < valueNames<Value>.size(); ++i)
        if (valueNames<Value>[i] == name && !name.empty()) return static_cast<Value>(i);
    return std::nullopt;
}

} // namespace piolo
