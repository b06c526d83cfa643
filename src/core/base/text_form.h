// SPDX-License-Identifier: GPL-3.0-or-later
// Values that are one text in files.
#pragma once

#include <concepts>
#include <optional>
#include <string>
#include <string_view>

namespace piolo {

/// Specialised beside each type that is one text in files.
///     static std::string text(const Value&);
///     static std::optional<Value> parse(std::string_view);
template <typename Value>
struct TextForm;

template <typename Value>
concept HasTextForm = requires(const Value& value, std::string_view text) {
    { TextForm<Value>::text(value) } -> std::same_as<std::string>;
    { TextForm<Value>::parse(text) } -> std::same_as<std::optional<Value>>;
};

} // namespace piolo
