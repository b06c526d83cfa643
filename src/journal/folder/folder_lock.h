// SPDX-License-Identifier: GPL-3.0-or-later
// Ensures a single writer for each practice folder and device.
#pragma once

#include "core/base/result.h"
#include "files/descriptor.h"
#include "journal/folder/ports.h"

#include <string>
#include <utility>

namespace piolo::journal {

/// Holds a lock file in the state directory for as long as this object exists. The system releases it when
/// the program ends, however it ends.
class FolderLock {
public:
    /// Faults: folderInUse if another process holds the lock, noLocks if the disk has none: then the folder
    /// may be read. Also cannotMakeFolder and cannotWrite.
    static Result<FolderLock> take(const std::string& folder, const std::string& device,
                                   const std::string& stateDir, LockCall lock = systemLock());
    /// HASH-DEVICE, the folder's name outside itself; HASH is the 64-bit FNV-1a hash of the folder's path
    /// with symbolic links resolved.
    [[nodiscard]] static std::string name(const std::string& folder, const std::string& device);
    /// STATEDIR/locks/HASH-DEVICE.lock.
    [[nodiscard]] static std::string path(const std::string& folder, const std::string& device,
                                          const std::string& stateDir);

private:
    explicit FolderLock(files::Descriptor file) : file_(std::move(file)) {}
    files::Descriptor file_;
};

} // namespace piolo::journal
