// SPDX-License-Identifier: GPL-3.0-or-later
// The untranslated sentences of the numbered faults.
#pragma once

#include "core/base/fault.h"

#include <span>

namespace piolo::practice {

/// A number and its sentence: "what; what to do". %1 … %9 stand for the fault's arguments; text in square
/// brackets is left out if its argument is missing.
struct FaultSentence {
    FaultNumber number{};
    const char* pattern = nullptr;
};

/// All sentences in order of number.
[[nodiscard]] std::span<const FaultSentence> faultSentences() noexcept;
/// The pattern of one number; "" if it has none.
[[nodiscard]] const char* sentencePattern(FaultNumber number) noexcept;

} // namespace piolo::practice
