// SPDX-License-Identifier: GPL-3.0-or-later
// How a run ended.
#pragma once

#include "core/base/value_names.h"

#include <cstdint>

namespace piolo {

/// How a run ended. `voided`: logged, but changes nothing.
enum class Mark : std::uint8_t { clean, missed, voided };

template <>
inline constexpr std::array<std::string_view, 3> valueNames<Mark>{"clean", "missed", "void"};

} // namespace piolo
