// SPDX-License-Identifier: GPL-3.0-or-later
// The passage file: pieces and passages in one JSON document. docs/passage-file.md lists its keys.
#pragma once

#include "core/base/result.h"
#include "core/passage/passage_set.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace piolo::journal {

/// The ending of a passage file's name.
inline constexpr std::string_view passageFileEnding = ".piolo.json";
/// The format version written here; higher ones are refused.
inline constexpr int passageFileVersion = 1;
inline constexpr std::size_t largestPassageFile = std::size_t{16} * 1024 * 1024;
/// The most pieces, and the most passages.
inline constexpr std::size_t mostInPassageFile = 10'000;
/// The most characters (code points) of a name or an instrument, so that its fact fits in a journal line.
inline constexpr std::size_t longestName = 4096;

/// True if `path` ends like a passage file, in any case.
[[nodiscard]] bool isPassageFile(std::string_view path) noexcept;

/// Reads a complete document; accepts any bytes and does not throw. Faults carry `file` and the line on which
/// the piece or passage begins. Unknown keys are ignored. Faults: notAPassageFile, passageKeyMissing,
/// passageValue, newerPassageFile, idTwice, pieceNotInFile, passageFileTooLarge.
Result<PassageSet> readPassages(std::string_view bytes, const std::string& file);
/// Reads a file, but no more of it than a passage file may have. Faults: also cannotRead.
Result<PassageSet> readPassageFile(const std::string& path);

/// The document: UTF-8, one piece or passage per line, ending with a newline. The same set gives the same
/// bytes.
[[nodiscard]] std::string passageFileText(const PassageSet& set);
/// Writes the file, whole or not at all; refuses to write what could not be read back. Faults: those of
/// readPassages(), cannotWrite, diskFull.
Done writePassageFile(const std::string& path, const PassageSet& set);

} // namespace piolo::journal
