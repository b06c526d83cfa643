// SPDX-License-Identifier: GPL-3.0-or-later
// Zip archives made byte by byte, so that their headers can lie. Stored entries, as in PKWARE's APPNOTE 6.3.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace piolo::test {

struct PackedFile {
    std::string name;
    std::string bytes;
    std::uint32_t claimed = 0; ///< the size in the header; 0: the true size
};

/// An archive of these files.
[[nodiscard]] std::string packed(const std::vector<PackedFile>& files);
/// A container.xml that names `path`.
[[nodiscard]] std::string containerFor(const std::string& path);

} // namespace piolo::test
