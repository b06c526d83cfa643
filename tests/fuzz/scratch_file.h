// SPDX-License-Identifier: GPL-3.0-or-later
// Temporary files of one process, removed when it ends.
#pragma once

#include <string>
#include <string_view>

namespace piolo::fuzz {

/// The path of the file `name` in a folder of this process, containing these bytes; parent folders are
/// created.
std::string scratchFile(const std::string& name, std::string_view bytes);
/// That folder.
std::string scratchFolder();

} // namespace piolo::fuzz
