// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a score from MusicXML.
#pragma once

#include "core/base/result.h"
#include "score/read/score.h"

#include <string>
#include <string_view>
#include <vector>

namespace piolo::score {

/// What was read, and everything that is wrong with it. With faults the score is not to be used.
struct Reading {
    Score score;
    std::vector<Fault> faults;
};

/// Whatever the bytes are; does not throw (but for want of memory). `file` goes into the faults, with the
/// line of the element. Faults: scoreTooLarge, scoreEncoding, brokenXml, ownEntities, notAScore, scoreByBars,
/// scoreElement, scoreValue.
[[nodiscard]] Reading readMusicXml(std::string_view bytes, const std::string& file);

} // namespace piolo::score
