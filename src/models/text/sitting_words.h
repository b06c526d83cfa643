// SPDX-License-Identifier: GPL-3.0-or-later
// What happened in a sitting, in words.
#pragma once

#include "practice/figures/sitting_figures.h"

#include <QString>

namespace piolo::models {

/// "3 runs: 2 clean, 1 missed in bar 42"; "" if nothing counted.
[[nodiscard]] QString sittingWords(const practice::SittingFigures& figures);

} // namespace piolo::models
