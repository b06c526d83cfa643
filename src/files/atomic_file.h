// SPDX-License-Identifier: GPL-3.0-or-later
// A file that appears whole or not at all.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <memory>
#include <span>
#include <string>

namespace piolo::files {

/// Written to a temporary file beside the final name, then renamed over it. If destroyed before commit(), it
/// removes the temporary file and leaves the old file untouched. What a program that was killed left behind
/// of the same file is removed by the next one: the temporary file is locked while it is written.
class AtomicFile {
public:
    /// Fault cannotWrite.
    static Result<AtomicFile> create(std::string path);
    AtomicFile(AtomicFile&&) noexcept;
    AtomicFile& operator=(AtomicFile&&) noexcept;
    ~AtomicFile();

    /// Appends. Faults: cannotWrite, diskFull.
    Done write(std::span<const std::byte> bytes);
    /// Syncs the file, renames it and syncs its folder. Faults: as write().
    Done commit();

private:
    struct Body;
    explicit AtomicFile(std::unique_ptr<Body> body);
    std::unique_ptr<Body> body_;
};

/// Writes the whole file at once, replacing an old one. Faults: as AtomicFile's.
Done replaceFile(const std::string& path, std::span<const std::byte> bytes);

} // namespace piolo::files
