// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/write_trouble.h"

#include "files/file_fault.h"
#include "journal/folder/ports.h"

#include <filesystem>

namespace piolo::journal {

Fault writeTrouble(const std::string& path, int error) {
    if (error == noRegularFile) return {FaultNumber::notARegularFile, {path, 0}, {}};
    if (error != folderMissing) return files::writeFault(path, error);
    const auto folder = std::filesystem::path(path).parent_path().parent_path();
    return {FaultNumber::folderGone, {folder.string(), 0}, {}};
}

} // namespace piolo::journal
