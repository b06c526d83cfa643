// SPDX-License-Identifier: GPL-3.0-or-later
// The compressed form of a score (.mxl): a zip archive whose META-INF/container.xml names the score inside
// it.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace piolo::score {

/// True if the bytes begin like a zip archive.
[[nodiscard]] bool isArchive(std::string_view bytes) noexcept;
/// The XML of the score. Writes nothing to disk and unpacks no more than a score may have. Faults, with
/// `file`: brokenArchive, archivePath, scoreTooLarge, and those of the container's XML.
[[nodiscard]] Result<std::string> unpackedScore(std::string_view bytes, const std::string& file);

} // namespace piolo::score
