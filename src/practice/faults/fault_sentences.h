// SPDX-License-Identifier: GPL-3.0-or-later
// The untranslated sentences of the numbered faults.
#pragma once

#include "core/base/fault.h"

#include <span>

namespace piolo::practice {

/// One number and its words: "what; what to do". %1 … %9 stand for the fault's arguments; a stretch in square
/// brackets is left out when its argument is missing.
struct FaultSentence {
    FaultNumber number{};
    const char* pattern = nullptr;
};

/// All of them, in the order of their numbers.
[[nodiscard]] std::span<const FaultSentence> faultSentences() noexcept;
/// The pattern of one number; "" for a number without one.
[[nodiscard]] const char* sentencePattern(FaultNumber number) noexcept;

} // namespace piolo::practice
