// SPDX-License-Identifier: GPL-3.0-or-later
// What was taken back, as a sentence.
#pragma once

#include "practice/log/taken_back.h"

#include <QString>

namespace piolo::models {

/// "Taken back: clean run at 92", "Taken back: miss at 92, bar 2".
[[nodiscard]] QString takenBackWords(const practice::TakenBack& taken);

} // namespace piolo::models
