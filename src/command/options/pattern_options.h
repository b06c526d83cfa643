// SPDX-License-Identifier: GPL-3.0-or-later
// The options shared by click and track for where and how the click sounds.
#pragma once

#include "command/options/click_options.h"
#include "command/options/option_reader.h"
#include "core/passage/click_pattern.h"

#include <cstdint>

namespace piolo::command {

/// The options that readClickPattern() reads.
[[nodiscard]] OptionSpecs patternSpecs();
/// Reads --click, --accents, --swing, --bars-on, --bars-off, --silent-bars, --left-out, --seed, --breath and
/// --breath-below for a run of `bars` bars. Faults are stored in the reader.
[[nodiscard]] ClickPattern readClickPattern(OptionReader& in, const ClickOptions& click, std::int64_t bars);

} // namespace piolo::command
