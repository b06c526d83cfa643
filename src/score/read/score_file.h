// SPDX-License-Identifier: GPL-3.0-or-later
// A score in a file: MusicXML, packed or not.
#pragma once

#include "score/read/score_reader.h"

#include <string>
#include <string_view>

namespace piolo::score {

/// True when `path` ends in .musicxml, .xml or .mxl, in any case of letters.
[[nodiscard]] bool isScoreFile(std::string_view path) noexcept;
/// Packed or not, whatever the file is called.
[[nodiscard]] Reading readScore(std::string_view bytes, const std::string& file);
/// Of a file, of which no more is read than a score may hold. Faults: those of readMusicXml() and
/// unpackedScore(), cannotRead.
[[nodiscard]] Reading readScoreFile(const std::string& path);

} // namespace piolo::score
