// SPDX-License-Identifier: GPL-3.0-or-later
// The purpose of a run, in words.
#pragma once

#include "core/history/notebook.h"

#include <QString>

namespace piolo::models {

/// "run", "try", "without the click", …, "tempo set": the kind in words.
[[nodiscard]] QString kindWord(Entry::Kind kind);
/// "a try", "without the click", …: the kind of a run that does not change the standing, as the beginning of
/// that phrase.
[[nodiscard]] QString apartWord(Entry::Kind kind);
/// "a try: changes nothing", for the current run; "" for one that affects the rule.
[[nodiscard]] QString apartLine(RunKind kind);

} // namespace piolo::models
