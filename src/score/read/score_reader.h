// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a score from MusicXML.
#pragma once

#include "core/base/result.h"
#include "score/read/score.h"

#include <string>
#include <string_view>
#include <vector>

namespace piolo::score {

/// The score and everything wrong with it. If there are faults, do not use the score.
struct Reading {
    Score score;
    std::vector<Fault> faults;
};

/// Accepts any bytes; does not throw, except when out of memory. Faults carry `file` and the line of the
/// element: scoreTooLarge, scoreEncoding, brokenXml, ownEntities, notAScore, scoreByBars, scoreElement,
/// scoreValue.
[[nodiscard]] Reading readMusicXml(std::string_view bytes, const std::string& file);

} // namespace piolo::score
