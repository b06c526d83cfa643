// SPDX-License-Identifier: GPL-3.0-or-later
// The packed form of a score (.mxl): a zip archive whose META-INF/container.xml names the score in it.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace piolo::score {

/// True when the bytes begin as a zip archive does.
[[nodiscard]] bool isArchive(std::string_view bytes) noexcept;
/// The XML of the score. Nothing is written anywhere, and no more is unpacked than a score may have. Faults,
/// with `file`: brokenArchive, archivePath, scoreTooLarge, and those of the container's XML.
[[nodiscard]] Result<std::string> unpackedScore(std::string_view bytes, const std::string& file);

} // namespace piolo::score
