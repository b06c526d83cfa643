// SPDX-License-Identifier: GPL-3.0-or-later
// What a practice folder amounted to when it was read, kept in the machine's cache for a fast start. It may
// be deleted at any time, and is used only if there is no doubt about it: docs/journal.md.
#pragma once

#include "journal/folder/known_folder.h"

#include <optional>
#include <stop_token>
#include <string>

namespace piolo::journal {

/// From this many facts that must be read line by line, a new checkpoint is worthwhile.
inline constexpr std::size_t worthACheckpoint = 5000;

/// Its file: one for each folder and device.
[[nodiscard]] std::string checkpointFile(const std::string& folder, const std::string& device,
                                         const std::string& cacheDir);
/// Nothing if there is none, if another build or device wrote it, or if a single bit of it has changed.
[[nodiscard]] std::optional<KnownFolder> loadCheckpoint(const std::string& file, const std::string& device);
/// Reads the folder and writes its checkpoint, whole or not at all. False if that fails, is not possible, or
/// is stopped on request: then the old one stays. Any thread; takes as long as reading the folder.
bool writeCheckpoint(const std::string& file, const std::string& folder, const std::string& device,
                     const std::stop_token& stop = {});

} // namespace piolo::journal
