// SPDX-License-Identifier: GPL-3.0-or-later
// What a run was played for, in words.
#pragma once

#include "core/history/notebook.h"

#include <QString>

namespace piolo::models {

/// "run", "try", "without the click", …, "tempo set": the kind in a word.
[[nodiscard]] QString kindWord(Entry::Kind kind);
/// "a try", "without the click", …: the kind of a run that moves nothing, in front of those words.
[[nodiscard]] QString apartWord(Entry::Kind kind);
/// "a try: moves nothing", for the run that is played now; "" for one that moves the rule.
[[nodiscard]] QString apartLine(RunKind kind);

} // namespace piolo::models
