// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/write_trouble.h"

#include "files/file_fault.h"
#include <cerrno>
#include <filesystem>

namespace piolo::journal {

Attempt append(AppendFile* file, const std::string& text) {
    if (!file) return {errno};
    const long taken = file->write(text);
    if (taken < 0) return {errno};
    // A short write to a regular file means that the disk or a quota is full.
    if (static_cast<std::size_t>(taken) < text.size()) return {ENOSPC};
    return {file->sync() == 0 ? 0 : errno, true};
}

Fault writeTrouble(const std::string& path, int error) {
    if (error == noRegularFile) return {FaultNumber::notARegularFile, {path, 0}, {}};
    if (error != folderMissing) return files::writeFault(path, error);
    const auto folder = std::filesystem::path(path).parent_path().parent_path();
    return {FaultNumber::folderGone, {folder.string(), 0}, {}};
}

} // namespace piolo::journal
