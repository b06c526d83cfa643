// SPDX-License-Identifier: GPL-3.0-or-later
// The passage file: pieces and passages in one JSON document. docs/passage-file.md has its keys.
#pragma once

#include "core/base/result.h"
#include "core/passage/passage_set.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace piolo::journal {

/// How a passage file's name ends.
inline constexpr std::string_view passageFileEnding = ".piolo.json";
/// The version of the format written here; higher ones are refused.
inline constexpr int passageFileVersion = 1;
inline constexpr std::size_t largestPassageFile = std::size_t{16} * 1024 * 1024;
/// At most so many pieces, and so many passages.
inline constexpr std::size_t mostInPassageFile = 10'000;
/// A name or an instrument has at most so many characters (code points): its fact then fits a journal line.
inline constexpr std::size_t longestName = 4096;

/// True when `path` ends as a passage file does, in any case of letters.
[[nodiscard]] bool isPassageFile(std::string_view path) noexcept;

/// Reads a whole document, whatever the bytes are; does not throw. `file` goes into the fault, with the line
/// on which the piece or passage begins. Unknown keys are passed over. Faults: notAPassageFile,
/// passageKeyMissing, passageValue, newerPassageFile, idTwice, pieceNotInFile, passageFileTooLarge.
Result<PassageSet> readPassages(std::string_view bytes, const std::string& file);
/// The same of a file, of which no more is read than a passage file may hold. Fault also cannotRead.
Result<PassageSet> readPassageFile(const std::string& path);

/// The document: UTF-8, one piece or passage a line, a newline at the end; the same set gives the same bytes.
[[nodiscard]] std::string passageFileText(const PassageSet& set);
/// Puts it there, whole or not at all; what could not be read back is not written. Faults: those of
/// readPassages(), cannotWrite, diskFull.
Done writePassageFile(const std::string& path, const PassageSet& set);

} // namespace piolo::journal
