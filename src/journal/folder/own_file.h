// SPDX-License-Identifier: GPL-3.0-or-later
// File names inside a practice folder.
#pragma once

#include "core/time/timestamp.h"

#include <string>
#include <string_view>

namespace piolo::journal {

/// FOLDER/journal.
[[nodiscard]] std::string journalFolder(const std::string& folder);
/// FOLDER/journal/DEVICE-YEAR.jsonl with the year of that date.
[[nodiscard]] std::string ownFile(const std::string& folder, std::string_view device, Date date);
/// True if the last part of `path` is the name of a file to which only `device` appends.
[[nodiscard]] bool isOwnFile(std::string_view path, std::string_view device);

} // namespace piolo::journal
