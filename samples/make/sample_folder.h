// SPDX-License-Identifier: GPL-3.0-or-later
// The season as a practice folder on disk.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>

namespace piolo::samples {

/// One file of the folder.
struct SampleFile {
    std::string path; ///< relative to the folder: "journal/<device>-2026.jsonl"
    std::string bytes;
};

[[nodiscard]] SampleFile sampleFile(std::uint64_t seed);
/// Writes the sample into `folder`, which it creates. Faults: cannotMakeFolder, cannotWrite, diskFull.
Done writeSample(const std::string& folder, std::uint64_t seed);
/// True if the folder contains it byte for byte. Fault: cannotRead.
Result<bool> sampleIsAsMade(const std::string& folder, std::uint64_t seed);

} // namespace piolo::samples
