// SPDX-License-Identifier: GPL-3.0-or-later
// Files of one process, gone at its end.
#pragma once

#include <string>
#include <string_view>

namespace piolo::fuzz {

/// The path of NAME in a folder of this process, holding these bytes; folders above it are made.
std::string scratchFile(const std::string& name, std::string_view bytes);
/// The folder itself.
std::string scratchFolder();

} // namespace piolo::fuzz
