// SPDX-License-Identifier: GPL-3.0-or-later
// What a step of the rule is counted in.
#pragma once

#include "core/base/value_names.h"

#include <cstdint>

namespace piolo {

enum class StepKind : std::uint8_t { bpm, notches };

template <>
inline constexpr std::array<std::string_view, 2> valueNames<StepKind>{"bpm", "notches"};

} // namespace piolo
