// SPDX-License-Identifier: GPL-3.0-or-later
// A score file: MusicXML, compressed or not.
#pragma once

#include "score/read/score_reader.h"

#include <string>
#include <string_view>

namespace piolo::score {

/// True if `path` ends in .musicxml, .xml or .mxl, in any case.
[[nodiscard]] bool isScoreFile(std::string_view path) noexcept;
/// Reads MusicXML, compressed or not, whatever the file is called.
[[nodiscard]] Reading readScore(std::string_view bytes, const std::string& file);
/// Reads a file, but no more bytes than a score may have. Faults: cannotRead and those of readMusicXml() and
/// unpackedScore().
[[nodiscard]] Reading readScoreFile(const std::string& path);

} // namespace piolo::score
