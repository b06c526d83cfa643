// SPDX-License-Identifier: GPL-3.0-or-later
// The weeks and the worst passages of the log in words.
#pragma once

#include "practice/figures/week_figures.h"
#include "practice/figures/worst_passages.h"

#include <QString>
#include <QVariantList>

#include <vector>

namespace piolo::models {

/// "This week: 2 h 5 min, 64 runs, 78% clean · Last week: …"; a week without practice is left out.
[[nodiscard]] QString weekWords(const practice::TwoWeeks& weeks);
/// Maps of passage (32 digits), title, why ("9 of 20 clean, most misses in bar 42") and spoken.
[[nodiscard]] QVariantList worstMaps(const Notebook& notebook,
                                     const std::vector<practice::WorstPassage>& all);

} // namespace piolo::models
